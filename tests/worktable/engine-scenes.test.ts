import { beforeAll, describe, expect, test } from 'vitest';
import { firstKept } from '../support/kept-piece.js';
import { makerAt } from '../support/engines/maker.js';
import { openedIn } from '../support/engines/opened.js';
import type { Maker } from '../support/engines/maker.js';
import type { ServedPage } from '../support/serve-page.js';

// What hands do, in Gecko and WebKit as in Blink: a stroke of the brush, the purse in its frame, and work that goes on
// after the page was opened anew. Blink does the same and more in steps, work, keyboard and touch.

const of = (selector: string) => `document.querySelector(${JSON.stringify(selector)})`;
const laid = `Number(${of('.laid p')}?.innerText.replace(/\\D/g, '') ?? 0)`;
const run = `${of('.at-work .tap.stringing')}?.dataset.run`;

describe.each(['firefox', 'webkit'] as const)('%s', (name) => {
  const opened = openedIn(name);
  let served: ServedPage;
  let maker: Maker;
  beforeAll(() => void ({ maker, served } = opened()));

  test('a stroke of the brush is one step, and keys lay beads as well', async () => {
    await maker.tap('[data-step="brush"]');
    await maker.tap('.card [data-take]:nth-of-type(5)');
    const [x, y] = await maker.page.evaluate<[number, number]>(`(() => {
      const box = ${of('.panel canvas')}.getBoundingClientRect();
      return [box.left + box.width / 2, box.top + box.height / 2];
    })()`);
    await maker.page.drag(Array.from({ length: 13 }, (_, n) => [x - 60 + 10 * n, y - 80] as const));
    await maker.until(`${laid} > 5`, 'the stroke lies on the panel');
    const many = await maker.page.evaluate<number>(laid);
    await maker.page.key('z', 'Control');
    await maker.until(`${laid} === 0`, 'one undo takes the stroke off');
    await maker.page.key('y', 'Control');
    await maker.until(`${laid} === ${many}`, 'and it lies there again');
    // By keyboard, right after a button was pressed.
    await maker.tap('.card [data-take]:nth-of-type(2)');
    for (const key of ['ArrowRight', 'ArrowUp', 'ArrowUp', 'Space']) await maker.page.key(key);
    await maker.until(`${laid} === ${many + 1}`, 'Space lays a bead');
    expect(await maker.page.evaluate(`${of('.panel .lit')}.innerText`)).toMatch(
      /^Round 3, stitch \d, wedge 1: .* by hand$/,
    );
    await maker.settled();
    expect(await maker.complaints()).toEqual([]);
  });

  test('the panel hangs in a frame, and its measures are told', async () => {
    await maker.tap('[data-step="purse"]');
    await maker.tap('[data-action="frame-half-round"]');
    await maker.until(of('.card .facts'), 'it is told how the panel sits');
    await maker.tap('[data-action="fit-frame"]');
    await maker.settled();
    await maker.tap('[data-action="purse-inside"]');
    await maker.until(`${of('[data-action="purse-inside"]')}.ariaPressed === 'true'`, 'it is open');
    expect(await maker.page.evaluate(`${of('.card .facts')}.children.length`)).toBeGreaterThan(3);
    // Something is drawn: metal and lining have other colours than the ground.
    const colours = await maker.page.evaluate<number>(`(() => {
      const canvas = ${of('.purse canvas')};
      const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
      const all = new Set();
      for (let p = 0; p < data.length; p += 4) if (data[p + 3] === 255) all.add(data[p] >> 4 << 8 | data[p + 1] & 240 | data[p + 2] >> 4);
      return all.size;
    })()`);
    expect(colours).toBeGreaterThan(12);
    expect(await maker.complaints()).toEqual([]);
  });

  test('work goes on from the same bead after the page is opened anew', async () => {
    await maker.tap('[data-step="work"]');
    await maker.tap('.card [data-action="string"]');
    await maker.until(run, 'a run is shown');
    const on = async (act: () => Promise<void>) => {
      const sum = `${of('.at-work .sum')}.innerText`;
      const before = await maker.page.evaluate<string>(sum);
      await act();
      await maker.until(`${sum} !== ${JSON.stringify(before)}`, 'the next run is shown');
    };
    for (let n = 0; n < 4; n++) await on(() => maker.tap('.at-work button.tap'));
    await on(() => maker.page.key('Space'));
    await on(() => maker.tap('[data-action="work-back"]'));
    const stopped = await maker.page.evaluate<string>(run);
    const sum = await maker.page.evaluate<string>(`${of('.at-work .sum')}.innerText`);
    const strung = Number(/· ([\d,]+) of/.exec(sum)![1].replace(',', ''));
    if (name === 'webkit') {
      // What its driver opens is a private window. The page says so, and a file takes the work along.
      expect(await maker.page.evaluate(`${of('.keep-trouble')}.innerText`)).toMatch(
        /keeps nothing/,
      );
      const file = await maker.saved('.keep-trouble [data-action="save-piece"]');
      expect(await maker.complaints()).toEqual([]);
      maker = await makerAt(maker.page, served.address);
      await maker.settled();
      await maker.drop('kingfisher.rondure.zip', file, 'application/zip');
    } else {
      await maker.until(kept(strung), 'it is kept');
      expect(await maker.complaints()).toEqual([]);
      maker = await makerAt(maker.page, served.address);
    }
    await maker.until(run, 'the run is shown again');
    expect(await maker.page.evaluate(run)).toBe(stopped);
    expect(await maker.page.evaluate(`${of('.at-work .sum')}.innerText`)).toBe(sum);
    await on(() => maker.page.key('Space'));
    await maker.page.key('Escape');
    await maker.until(of('.card [data-action="crochet"]'), 'the table is back');
    await maker.tap('.card [data-action="crochet"]');
    await maker.until(of('.tap.crocheting'), 'the round at hand is shown');
    expect(await maker.complaints()).toEqual([]);
  });
});

/** Whether the browser has kept that so many beads are on the first length. */
const kept = (beads: number) =>
  `(${firstKept.toString()})().then((piece) => piece?.work?.panels['0:1']?.strung[0] === ${beads})`;

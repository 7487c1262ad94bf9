import { expect, test } from 'vitest';
import { addRows, addRowsTogether } from '../src/booklet/flow-blocks.js';
import { Flow } from '../src/booklet/flow.js';
import type { Block } from '../src/booklet/flow-page.js';
import { lookOf } from '../src/booklet/look.js';
import { roundName } from '../src/booklet/facts.js';
import { boxMm } from '../src/booklet/table.js';
import { stretchesOf } from '../src/booklet/parts/work.js';
import { languages } from '../src/words/index.js';
import { laidOut, onePanel } from './support/booklets.js';
import { PageReach } from './support/page-reach.js';
import { fonts } from './support/panel-sheet.js';
import type { Polyline } from '../src/core/pages/surface/surface.js';

/** Rows of its list of rounds are short: none goes on over pages. */
const plain = {
  ...onePanel,
  panels: onePanel.panels.map((panel) => ({
    ...panel,
    rounds: panel.rounds.map((marks) => 'A'.repeat(marks.length)),
  })),
};

test.each(languages)(
  'in %s a box that says stop stands below the last round before it',
  async (language) => {
    let stops = 0;
    for (const lengthBeads of [420, 600, 735, 900]) {
      for (const large of [false, true]) {
        const pattern = { ...plain, thread: { lengthBeads } };
        const { facts, flow, look } = await laidOut(pattern, [language], { large });
        const { stop } = facts.words.booklet.work;
        const ends = stretchesOf(facts, 0).map(({ last }) => roundName(facts, last));
        let next = 0;
        for (const { drawn, ruled } of flow.pages) {
          const page = new PageReach(look.widthMm, look.heightMm);
          if (ruled) for (const { draw } of drawn) draw(page);
          const texts = page.texts.map((text) => text.trim());
          texts.forEach((text, n) => {
            if (text !== stop) return;
            // A row of the list of rounds: its name, the work in lines, the beads, the total.
            expect(texts.slice(0, n), `${stop}, ${ends[next]}`).toContain(ends[next]);
            next++;
          });
        }
        expect(next).toBe(ends.length - 1);
        stops += next;
      }
    }
    expect(stops).toBeGreaterThan(6);
  },
);

const look = lookOf('a4', { ...fonts, text: fonts });

/** Steps 38 mm wide, as many of each group as its name says, and where they are put. */
function steps(names: readonly string[]) {
  const put: { name: string; left: number; top: number; again: boolean }[] = [];
  const blocks = names.flatMap((group) =>
    Array.from({ length: Number(group.slice(1)) }, (_, n): Block => {
      const name = `${group}-${n + 1}`;
      const block = (again: boolean): Block => ({
        widthMm: 38,
        heightMm: 30,
        overMm: 0,
        group,
        put: (_page, left, top) => void put.push({ name, left, top, again }),
      });
      return n === 0 ? block(false) : { ...block(false), again: () => block(true) };
    }),
  );
  return { blocks, put };
}

function flowWith(usedMm: number): Flow {
  const flow = new Flow(look, ['en-GB'], String);
  flow.part({ heading: 'Part', where: 'Part' });
  flow.y += usedMm;
  return flow;
}

test('steps that take more than a row begin at the left of one', () => {
  const { blocks, put } = steps(['a3', 'b5', 'c1']);
  addRows(flowWith(0), blocks);
  const [a1, , , b1, , , , b5, c1] = put;
  expect(b1.left).toBe(look.left);
  expect(b1.top).toBeGreaterThan(a1.top);
  // The last of them stands below the others, and what follows beside it, with a head of its own.
  expect(b5).toMatchObject({ left: look.left, again: false });
  expect(c1).toMatchObject({ top: b5.top, again: false });
});

test('where a page has no room for that, the question stands again over the next row', () => {
  const { blocks, put } = steps(['a3', 'b5', 'c4']);
  const flow = flowWith(0);
  flow.y = look.bottom - 100;
  addRowsTogether(flow, () => blocks);
  const [a1, , , b1, b2] = put;
  expect(b1.top).toBe(a1.top);
  expect(b2).toMatchObject({ left: look.left, again: true });
});

/** Counts squares of one size. */
class Boxes extends PageReach {
  sideMm = 0;
  count = 0;

  override strokePath(lines: readonly Polyline[]): void {
    for (const line of lines) {
      const [left, top, right, , , bottom, ...more] = Array.from(line);
      const wide = right - left;
      const isSquare = more.length === 2 && Math.abs(wide - (bottom - top)) < 0.01;
      if (isSquare && Math.abs(wide - this.sideMm) < 0.01) this.count++;
    }
  }
}

test('each repeat of a part in brackets has a box for each panel, however large the print', async () => {
  const rounds = onePanel.panels[0].rounds.map((_, n) => `${'A'.repeat(n)}B`.repeat(7));
  const repeated = { ...onePanel, panels: [{ ...onePanel.panels[0], rounds }] };
  for (const large of [false, true]) {
    for (const panels of [1, 2]) {
      const pattern = {
        ...repeated,
        panels: Array.from({ length: panels }, () => repeated.panels[0]),
      };
      const { flow, look } = await laidOut(pattern, ['en-GB'], { large });
      let boxes = 0;
      for (const { drawn } of flow.pages.filter(({ ruled }) => ruled)) {
        const page = new Boxes(look.widthMm, look.heightMm);
        page.sideMm = boxMm(look);
        for (const { draw } of drawn) draw(page);
        boxes += page.count;
      }
      // Round 1 is a line, the others repeat, and every round that is worked has its box; 2 panels either way.
      const repeats = rounds.filter((_, n) => n > 0).length * 7;
      expect(boxes).toBe(2 * (repeats + 1 + rounds.length));
    }
  }
});

import { describe, expect, test } from 'vitest';
import { Flow } from '../src/booklet/flow.js';
import { addLevelled } from '../src/booklet/level.js';
import { lookOf } from '../src/booklet/look.js';
import { drawTable } from '../src/booklet/table.js';
import type { TableCell } from '../src/booklet/table.js';
import { languages } from '../src/words/index.js';
import { laidOut, onePanel, purse } from './support/booklets.js';
import { PageReach } from './support/page-reach.js';
import { fonts } from './support/panel-sheet.js';

const editions = { usual: {}, large: { large: true }, grey: { grey: true } };
const cases = languages.flatMap((language) =>
  Object.entries(editions).flatMap(([name, edition]) =>
    (['a4', 'letter'] as const).map((paper) => ({ language, name, edition, paper })),
  ),
);

// Charts and the lining fill pages of their own, drawn as a whole: those have no rule over the foot.
test.each(cases)('$language, $name, $paper: no page is under half full', async (one) => {
  for (const pattern of [onePanel, purse]) {
    const { look, flow } = await laidOut(pattern, [one.language], one.edition, one.paper);
    const set = flow.pages.filter(({ ruled }) => ruled);
    expect(set.length).toBeGreaterThan(6);
    for (const { where, drawn } of set) {
      const page = new PageReach(look.widthMm, look.heightMm);
      for (const { draw } of drawn) draw(page);
      const fill = (page.bottom - look.top) / (look.bottom - look.top);
      expect(fill, `${where}, page ${flow.pages.findIndex((p) => p.drawn === drawn) + 1}`).toBeGreaterThan(0.5); // prettier-ignore
      expect(fill, where).toBeLessThan(1.02);
    }
  }
});

describe('pages made lower', () => {
  const look = lookOf('a4', { ...fonts, text: fonts });
  const lineMm = 6;
  /** Paragraphs of one line each on the pages of a part. */
  const setLines = (flow: Flow, many: number) => {
    flow.part({ heading: 'Part', where: 'Part' });
    for (let n = 0; n < many; n++) {
      if (!flow.fits(lineMm)) flow.next();
      flow.y += lineMm;
    }
  };
  const linesOn = ({ pages }: Flow) =>
    pages.map(({ reachMm, topMm }) => Math.round((reachMm - topMm) / lineMm));

  test('a last page with a line or two takes some of the page before', () => {
    const plain = new Flow(look, ['en-GB'], String);
    setLines(plain, 90);
    const [full, , rest] = linesOn(plain);
    expect(rest).toBeLessThan(0.3 * full);
    const levelled = new Flow(look, ['en-GB'], String);
    addLevelled(levelled, () => setLines(levelled, 90));
    const found = linesOn(levelled);
    expect(found).toHaveLength(3);
    expect(found.reduce((sum, one) => sum + one)).toBe(90);
    expect(Math.min(...found)).toBeGreaterThan(0.45 * full);
    // What comes after them has its whole height again.
    expect(levelled.bottom).toBe(look.bottom);
  });

  test('a page that is half full stays as it is, and so does one alone', () => {
    for (const many of [12, 70]) {
      const flows = [0, 1].map(() => new Flow(look, ['en-GB'], String));
      setLines(flows[0], many);
      addLevelled(flows[1], () => setLines(flows[1], many));
      expect(linesOn(flows[1])).toEqual(linesOn(flows[0]));
    }
  });
});

test('the sum of a table is never parted from two rows above it', () => {
  const look = lookOf('a4', { ...fonts, text: fonts });
  const columns = [{ head: 'Bead', widthMm: 60 }];
  const rows = Array.from({ length: 7 }, (_, n): TableCell[] => [
    { lines: [`row ${n}`], style: look.body },
  ]);
  let parted = 0;
  for (let from = 0; from < 60; from++) {
    const flow = new Flow(look, ['en-GB'], String);
    flow.part({ heading: 'Part', where: 'Part' });
    flow.y = look.bottom - from;
    drawTable(flow, columns, rows, { sum: true });
    const texts = flow.pages.map(({ drawn }) => {
      const page = new PageReach(look.widthMm, look.heightMm);
      for (const { draw } of drawn) draw(page);
      return page.texts.filter((text) => text.startsWith('row'));
    });
    if (texts.filter((page) => page.length > 0).length > 1) parted++;
    expect(texts.at(-1)!.slice(-3), `${from} mm`).toEqual(['row 4', 'row 5', 'row 6']);
  }
  expect(parted).toBeGreaterThan(5);
});

test.each(languages)('in %s the sum of the beads stands below two of them', async (language) => {
  for (const edition of Object.values(editions)) {
    const { look, flow, facts } = await laidOut(onePanel, [language], edition);
    const total = facts.words.booklet.materials.total;
    const last = onePanel.beads.slice(-2).map(({ name }) => name);
    const pages = flow.pages.map(({ drawn, ruled }) => {
      const page = new PageReach(look.widthMm, look.heightMm);
      if (ruled) for (const { draw } of drawn) draw(page);
      return page.texts.map((text) => text.trim());
    });
    const page = pages.find((texts) => texts.join(' ').includes(total))!;
    for (const name of last) expect(page.some((text) => text.startsWith(name))).toBe(true);
  }
});

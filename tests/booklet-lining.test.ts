import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { planLining } from '../src/core/purse/lining/plan.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { panelSheet } from './support/panel-sheet.js';
import { readPdf } from './support/read-pdf.js';
import { inProcess } from './support/run.js';

const folder = mkdtempSync(join(tmpdir(), 'rondure-true-size-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each([
  ['usual', []],
  ['large print on Letter', ['--large', '--paper', 'letter']],
  ['grey, in Japanese', ['--print', 'grey', '--language', 'ja']],
  ['two languages', ['--language', 'uk,fr']],
])('the lining template in a booklet is at true size: %s', async (name, argv) => {
  const { pattern } = panelSheet({ wedges: 7, rounds: 16 }, 3);
  const from = join(folder, 'pattern.json');
  const out = join(folder, `${name}.pdf`);
  writeFileSync(from, patternText(pattern));
  expect(await inProcess('booklet', from, '-o', out, ...argv)).toMatchObject({ code: 0, err: '' });
  const { pages } = await readPdf(readFileSync(out));
  const squares = (side: number) =>
    pages.flatMap(({ paths }) =>
      paths.filter(
        ({ box: [left, top, right, bottom], kind }) =>
          kind === 'stroke' &&
          Math.abs(right - left - side) < 0.02 &&
          Math.abs(bottom - top - side) < 0.02,
      ),
    );
  // One of 50 mm and one of 2 inches (25.4 mm each) in every language.
  const languages = name === 'two languages' ? 2 : 1;
  // One more stands beside the contents.
  expect(squares(50)).toHaveLength(languages + 1);
  expect(squares(50.8)).toHaveLength(languages);
  const { cutAcrossMm, seamAcrossMm } = planLining(pattern, { panel: 0 });
  for (const [across, dashed] of [
    [cutAcrossMm, false],
    [seamAcrossMm, true],
  ] as const) {
    const lines = pages.flatMap(({ paths }) =>
      paths.filter(
        (path) => path.kind === 'stroke' && path.dashed === dashed && widest(path.points) > 60,
      ),
    );
    const near = lines.filter(({ points }) => Math.abs(widest(points) - across) < 0.1);
    expect(near, `${across} mm`).toHaveLength(languages);
  }
});

/** Longest distance between two points of an outline. */
function widest(points: readonly (readonly [number, number])[]): number {
  let most = 0;
  for (const [n, [x, y]] of points.entries())
    for (const [ox, oy] of points.slice(n + 1)) most = Math.max(most, Math.hypot(x - ox, y - oy));
  return most;
}

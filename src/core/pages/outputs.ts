import { chartPaper, chartSvg, withPatternInSvg } from './chart/chart.js';
import { wedgesSvg } from './chart/wedges.js';
import { workingSheet } from './chart/working-chart.js';
import { materialsCsv } from './lists/materials-csv.js';
import { roundsText } from './lists/rounds.js';
import { sewingText } from './lists/sewing.js';
import { shoppingText } from './lists/shopping-text.js';
import { stringingCsv, stringingText } from './lists/stringing.js';
import type { OutputFacts } from './output-facts.js';
import { patternKeyword, pngText, withPngScale } from './surface/png-text.js';
import { compareLayout } from './worked/compare.js';
import { beadsOfPanel, paintedBeads, paintedPanel } from './worked/painted.js';
import { workedWidthPx } from './worked/worked.js';
import { panelFile } from '../pattern/panel-file.js';
import { patternText } from '../pattern/serialise.js';
import { sampledWithoutTurn } from '../picture/leaned.js';

/** A text, or the bytes of a picture; none where there is nothing to show or nothing to draw it with. */
export type Output = string | Promise<Uint8Array> | undefined;

/**
 * One file of a pattern: the command line's folder, the names that may be replaced in it, the page's
 * zip, README's table and the lists of tests are all made of this list, or compared with it.
 */
export interface OutputFile {
  /** As the first panel has it; the second puts `back-` before it. */
  readonly name: string;
  /** One for each panel, one for a pattern, or one where there are two panels. */
  readonly of: 'panel' | 'pattern' | 'two panels';
  /**
   * Other threads go on with it for a while once it is drawn: it is begun before the others, those
   * that take longest first.
   */
  readonly begun?: 1 | 2 | 3;
  /** Told before it is made, where it takes a while. */
  readonly step?: 'rendering';
  make(facts: OutputFacts): Output;
}

/** Width of chart.png: A4 at 300 dots an inch, larger paper at as many dots as this leaves. */
const chartWidthPx = (paperMm: number): number => Math.min(4960, Math.round(paperMm * 11.811));

/** Every file of a pattern, in the order in which they are made; those of a panel together. */
export const outputs: readonly OutputFile[] = [
  { name: 'pattern.json', of: 'pattern', make: ({ pattern }) => patternText(pattern) },
  {
    name: 'chart.svg',
    of: 'panel',
    make: ({ chart, json }) => withPatternInSvg(chart(), json()),
  },
  {
    name: 'chart.png',
    of: 'panel',
    begun: 1,
    make({ sheet, chart, json, tools }) {
      const paper = chartPaper(sheet());
      const widthPx = chartWidthPx(paper.widthMm);
      const drawn = tools.chart?.({ sheet: sheet(), paper, svg: chart, widthPx });
      // Packed while another thread draws.
      const text = drawn && pngText(patternKeyword, json());
      return drawn?.then((png) => text!.into(withPngScale(png, widthPx / paper.widthMm)));
    },
  },
  {
    name: 'working-chart.svg',
    of: 'panel',
    make: ({ sheet }) => chartSvg(workingSheet(sheet()), chartPaper(sheet())),
  },
  { name: 'wedges.svg', of: 'panel', make: ({ sheet }) => wedgesSvg(sheet()) },
  {
    name: 'rounds.txt',
    of: 'panel',
    make: ({ pattern, panel, words }) => roundsText(pattern, panel, words),
  },
  {
    name: 'stringing.txt',
    of: 'panel',
    make: ({ pattern, panel, words }) => stringingText(pattern, panel, words),
  },
  {
    name: 'stringing.csv',
    of: 'panel',
    make: ({ pattern, panel }) => stringingCsv(pattern, panel),
  },
  {
    name: 'worked.png',
    of: 'panel',
    begun: 2,
    step: 'rendering',
    make({ pattern, panel, sheet, tools }) {
      const painted = paintedPanel(pattern, panel, sheet().geometry, workedWidthPx(pattern.shape));
      return tools.png(painted);
    },
  },
  {
    name: 'compare.png',
    of: 'panel',
    begun: 3,
    make({ pattern, panel, sheet, fonts, words, tools }) {
      const without = tools.compare && sampledWithoutTurn(pattern, panel);
      if (!without) return undefined;
      const { geometry } = sheet();
      const { side } = compareLayout.upright;
      const both = [beadsOfPanel(pattern, panel), without.beadOf];
      const [upright, leaned] = paintedBeads(geometry, both, side);
      const input = {
        upright,
        leaned,
        inset: without.picture,
        ...(pattern.panels.length > 1 && { panel: pattern.panels[panel].name }),
      };
      return tools.compare?.(input, fonts, words);
    },
  },
  { name: 'materials.csv', of: 'pattern', make: ({ pattern }) => materialsCsv(pattern) },
  {
    name: 'shopping.txt',
    of: 'pattern',
    make: ({ pattern, words }) => shoppingText(pattern, words),
  },
  {
    name: 'sewing.txt',
    of: 'two panels',
    make: ({ pattern, words }) => sewingText(pattern, words),
  },
];

/** The names that files of a pattern can have. */
export const outputNames: readonly string[] = outputs.flatMap(({ name, of }) =>
  of === 'panel' ? [panelFile(0, name), panelFile(1, name)] : [name],
);

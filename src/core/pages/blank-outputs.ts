import type { Words } from '../../words/index.js';
import { layPanel } from '../panel/lay.js';
import type { Pattern } from '../pattern/pattern.js';
import { patternText } from '../pattern/serialise.js';
import { blankPage } from './chart/blank-page.js';
import type { BlankPage } from './chart/blank-page.js';
import { blankSvg } from './chart/blank.js';
import { withPatternInSvg } from './chart/chart.js';
import type { Files } from './make-outputs.js';
import type { PanelSheet } from './panel/sheet.js';
import type { Fonts } from './surface/font.js';
import { patternKeyword, withPngScale, withPngText } from './surface/png-text.js';

/** What a place makes the files of a blank with besides texts; what it lacks is left out there. */
export interface BlankTools {
  /** PNG bytes of the page on white, and how many dots a millimetre they are. */
  png?(svg: string, page: BlankPage): Promise<{ png: Uint8Array; dotsPerMm: number }>;
  /** The page as a PDF. */
  pdf?(sheet: PanelSheet): Promise<Uint8Array>;
}

interface BlankFacts {
  readonly sheet: PanelSheet;
  readonly page: BlankPage;
  readonly json: string;
  readonly tools: BlankTools;
}

/** Every file of a blank chart: the command line's folder and what the page saves are made of it. */
export const blankOutputs = [
  { name: 'blank.json', make: ({ json }: BlankFacts) => json },
  { name: 'blank.pdf', make: ({ sheet, tools }: BlankFacts) => tools.pdf?.(sheet) },
  {
    name: 'blank.svg',
    make: ({ sheet, json }: BlankFacts) => withPatternInSvg(blankSvg(sheet), json),
  },
  {
    name: 'blank.png',
    make: ({ sheet, page, json, tools }: BlankFacts) =>
      tools
        .png?.(blankSvg(sheet), page)
        .then(({ png, dotsPerMm }) =>
          withPngText(withPngScale(png, dotsPerMm), patternKeyword, json),
        ),
  },
] as const;

/** The name of a file of a blank chart. */
export type BlankName = (typeof blankOutputs)[number]['name'];

/** What the files of a blank chart are made with. */
export interface BlankMeans {
  readonly words: Words;
  readonly fonts: Fonts;
  readonly tools: BlankTools;
  /** Which of them are wanted; all when absent. */
  readonly only?: readonly BlankName[];
}

/**
 * The files of a blank chart by name, and the paper that its page is meant for.
 *
 * @throws RondureError `glyph-missing`
 */
export async function makeBlank(
  pattern: Pattern,
  { words, fonts, tools, only }: BlankMeans,
): Promise<{ files: Files; paper: string }> {
  const { startDegrees } = pattern.panels[0];
  const { geometry, footprints } = layPanel(pattern.shape, { startDegrees });
  const page = blankPage(geometry);
  const sheet = { pattern, panel: 0, geometry, footprints, words, fonts };
  const facts = { sheet, page, json: patternText(pattern), tools };
  const files: Files = new Map();
  for (const { name, make } of blankOutputs) {
    const content = only && !only.includes(name) ? undefined : await make(facts);
    if (content !== undefined) files.set(name, content);
  }
  return { files, paper: page.paper };
}

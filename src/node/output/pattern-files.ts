import type { Files } from '../../core/pages/make-outputs.js';
import { makeOutputs } from '../../core/pages/make-outputs.js';
import type { OutputTools } from '../../core/pages/output-facts.js';
import { patternKeyword } from '../../core/pages/surface/png-text.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Words } from '../../words/index.js';
import { bundledFonts } from '../font/fonts.js';
import { comparePng } from './compare-png.js';
import { encodePng, rasteriseSvg } from './rasterise.js';

export { patternKeyword };
export type { Files } from '../../core/pages/make-outputs.js';

/** Everything that pictures are made with: no file is left out. */
const tools: OutputTools = {
  png: encodePng,
  chart: ({ svg, widthPx }) => rasteriseSvg(svg(), widthPx),
  compare: comparePng,
};

/**
 * Every file of a pattern, by name, made from the pattern alone. Those of a second panel begin with
 * `back-`; two panels share the materials, and sewing.txt tells how they are sewn together.
 *
 * @param said told before each slow step, for a line of progress
 */
export async function patternFiles(
  pattern: Pattern,
  words: Words,
  said: (step: 'drawing' | 'rendering') => void = () => {},
): Promise<Files> {
  return makeOutputs(pattern, { words, fonts: await bundledFonts(), tools, said });
}

/**
 * Makes sure that everything which is lettered on the drawings can be drawn.
 *
 * @throws RondureError `glyph-missing`
 */
export async function requireGlyphs({ title, panels, beads }: Pattern): Promise<void> {
  const { regular, bold } = await bundledFonts();
  const texts = [title, ...panels.map(({ name }) => name), ...beads.flatMap((b) => [b.id, b.name])];
  for (const character of new Set(texts.join(''))) {
    regular.glyph(character);
    bold.glyph(character);
  }
}

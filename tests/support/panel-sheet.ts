import { readFileSync } from 'node:fs';
import { loadFonts } from '../../src/core/pages/surface/font.js';
import type { PanelSheet } from '../../src/core/pages/panel/sheet.js';
import { panelFootprints } from '../../src/core/panel/footprints.js';
import { panelGeometry } from '../../src/core/panel/geometry.js';
import { letters } from '../../src/core/pattern/marks.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { completeShape } from '../../src/core/panel/shape.js';
import type { ShapeWish } from '../../src/core/panel/shape.js';
import { en } from '../../src/words/index.js';

const bytes = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../fonts/${name}`, import.meta.url)));

export const fonts = loadFonts(bytes('NotoSans-Regular.ttf'), bytes('NotoSans-Bold.ttf'));

/** Colours from black to white by way of every hue. */
const hexOf = (b: number) => {
  const part = (step: number) => ((b * step) % 256).toString(16).padStart(2, '0');
  return b === 0 ? '#ffffff' : b === 1 ? '#000000' : `#${part(37)}${part(91)}${part(151)}`;
};

/** A made-up panel whose stitch s carries bead (3s + ⌊s/7⌋) mod colours. */
export function panelSheet(
  wish: Omit<ShapeWish, 'beadDiameterMm'>,
  colours: number,
  change: Partial<Pattern> = {},
): PanelSheet {
  const shape = completeShape({ beadDiameterMm: 2.1, ...wish });
  const geometry = panelGeometry(shape);
  let s = 0;
  const rounds = Array.from({ length: shape.rounds }, (_, n) => {
    const marks = Array.from({ length: shape.wedges * (n + 1) }, () => {
      const mark = letters[(3 * s + Math.floor(s / 7)) % colours];
      s++;
      return mark;
    });
    return marks.join('');
  });
  const pattern: Pattern = {
    format: 'rondure-pattern',
    version: 1,
    title: 'Barley moon',
    shape,
    beads: Array.from({ length: colours }, (_, b) => ({
      letter: letters[b],
      id: `op-${b + 1}`,
      name: b % 5 === 3 ? 'a teal lustre with a name far too long for any key' : `bead ${b + 1}`,
      hex: hexOf(b),
    })),
    panels: [{ name: 'front', startDegrees: geometry.startDegrees, rounds }],
    ...change,
  };
  return { pattern, panel: 0, geometry, footprints: panelFootprints(geometry), words: en, fonts };
}

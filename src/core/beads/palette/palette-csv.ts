import type { Bead } from '../bead.js';
import { hexToLab65 } from '../../colour/lab.js';
import { csvText } from '../../csv.js';

/**
 * A palette in the form that `readPalette` reads best: every column, what was filled in as well;
 * L, a, b only where some bead brought its own. Formula-looking cells get an apostrophe.
 */
export function paletteCsv(beads: readonly Bead[]): string {
  const measured = beads.some(({ hex, lab }) => {
    const own = hexToLab65(hex);
    return lab.some((value, axis) => value !== own[axis]);
  });
  const sample = beads.some((bead) => bead.sample);
  const header = ['id', 'name', 'hex', ...(measured ? ['L', 'a', 'b'] : [])];
  const rest = [
    'finish',
    'size',
    'diameterMm',
    'beadsPerGram',
    'grams',
    'count',
    'price',
    'packGrams',
    ...(sample ? ['sample'] : []),
  ];
  const rows = beads.map((bead) => [
    bead.id,
    bead.name,
    bead.hex,
    ...(measured ? bead.lab : []),
    bead.finish,
    bead.size,
    bead.diameterMm,
    bead.beadsPerGram,
    bead.grams,
    bead.count,
    bead.price,
    bead.packGrams,
    ...(sample ? [bead.sample ? 'yes' : ''] : []),
  ]);
  return csvText([...header, ...rest], rows);
}

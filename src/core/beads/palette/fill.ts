import type { Bead } from '../bead.js';
import { defined } from './defined.js';
import type { Row } from './rows.js';
import { defaultSize, findSize, parseSize } from './sizes.js';

/**
 * The size a panel is worked in: the one wished, or the commonest of the palette, or 11/0. Ties go to
 * the size that comes first in the palette.
 */
export function panelSize(rows: readonly Row[], wish: string | undefined): string {
  if (wish !== undefined) {
    const own = rows.find(({ size }) => size === wish.trim());
    return own?.size ?? parseSize(wish);
  }
  const counts = new Map<string, number>();
  for (const { size } of rows) if (size) counts.set(size, (counts.get(size) ?? 0) + 1);
  let best = defaultSize;
  let most = 0;
  for (const [size, count] of counts) {
    if (count > most) [best, most] = [size, count];
  }
  return best;
}

/** Fills what a row leaves open; a row number that is already someone's id is avoided. */
export function withDefaults(rows: readonly Row[], panelSizeName: string): Bead[] {
  const taken = new Set(rows.map(({ id }) => id));
  return rows.map((row, index) => {
    const number = String(index + 1);
    const id = row.id ?? (taken.has(number) ? `row-${number}` : number);
    const size = row.size ?? panelSizeName;
    const known = findSize(size);
    const filled: Bead['filled'][number][] = [];
    if (row.id === undefined) filled.push('id');
    if (row.name === undefined) filled.push('name');
    if (row.size === undefined) filled.push('size');
    if (row.diameterMm === undefined && known) filled.push('diameterMm');
    if (row.beadsPerGram === undefined && known) filled.push('beadsPerGram');
    const { hex, lab, finish, grams, count, price, packGrams, sample } = row;
    return {
      id,
      name: row.name ?? row.id ?? hex,
      hex,
      lab,
      size,
      ...defined({
        finish,
        grams,
        count,
        price,
        packGrams,
        sample,
        diameterMm: row.diameterMm ?? known?.diameterMm,
        beadsPerGram: row.beadsPerGram ?? known?.beadsPerGram,
      }),
      filled,
    };
  });
}

/** The middle one of the beads' diameters, the lower of two. */
export function middleDiameter(beads: readonly Bead[]): number {
  const sorted = beads.flatMap(({ diameterMm }) => diameterMm ?? []).sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)];
}

import { RondureError } from '../../errors.js';

/** What may be chosen from. */
export interface Candidates {
  /** Palette indices: the kept ones first, then the others, each ascending. */
  readonly beads: readonly number[];
  /** How many of them are kept. */
  readonly kept: number;
}

/**
 * Sorts out which beads may be chosen: not those left out, and of several with the very same
 * colour only the first, or the kept ones.
 * @throws RondureError `bead-not-in-palette`, `bead-kept-and-left-out`, `palette-all-left-out`,
 * `palette-too-small-to-keep`, `colours-impossible`
 */
export function sortCandidates(
  palette: Float64Array,
  most: number,
  keep: readonly number[],
  leaveOut: readonly number[],
): Candidates {
  if (!Number.isInteger(most) || most < 1) {
    throw new RondureError('colours-impossible', { got: most });
  }
  const rows = Math.floor(palette.length / 3);
  for (const bead of [...keep, ...leaveOut]) {
    if (!Number.isInteger(bead) || bead < 0 || bead >= rows) {
      throw new RondureError('bead-not-in-palette', { row: bead + 1, rows });
    }
  }
  const kept = [...new Set(keep)].sort((p, q) => p - q);
  const out = new Set(leaveOut);
  for (const bead of kept) {
    if (out.has(bead)) throw new RondureError('bead-kept-and-left-out', { id: `#${bead + 1}` });
  }
  if (kept.length > most) {
    throw new RondureError('palette-too-small-to-keep', { kept: kept.length, most });
  }
  const colour = (bead: number): string => palette.subarray(3 * bead, 3 * bead + 3).join(' ');
  const seen = new Set(kept.map(colour));
  const others: number[] = [];
  for (let bead = 0; bead < rows; bead++) {
    if (out.has(bead) || kept.includes(bead) || seen.has(colour(bead))) continue;
    seen.add(colour(bead));
    others.push(bead);
  }
  if (kept.length + others.length === 0) throw new RondureError('palette-all-left-out', undefined);
  return { beads: [...kept, ...others], kept: kept.length };
}

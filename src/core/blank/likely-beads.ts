import { ciede2000Fast } from '../colour/ciede2000.js';
import type { CellSamples } from './cell-samples.js';
import type { ColourGroup } from './groups.js';
import type { Judgement } from './judge.js';

/** How many beads a maker is asked to choose among. */
const most = 3;

/**
 * The beads that a doubtful cell most likely stands for, palette indices: what it was read as, the
 * other in question, then those of the page that are nearest to its colour.
 */
export function likelyBeads(
  cell: CellSamples | undefined,
  groups: readonly ColourGroup[],
  { bead, other }: Judgement,
): number[] {
  const [L, a, b] = cell?.colour ?? [100, 0, 0];
  const nearest = groups
    .map((group) => ({ bead: group.bead, d: ciede2000Fast(...group.colour, L, a, b) }))
    .sort((p, q) => p.d - q.d || p.bead - q.bead);
  const first = [bead, other].filter((one) => one !== undefined && one >= 0) as number[];
  return [...new Set([...first, ...nearest.map((one) => one.bead)])].slice(0, most);
}

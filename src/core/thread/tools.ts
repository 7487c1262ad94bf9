import type { BeadSize } from '../beads/palette/sizes.js';

/**
 * Hooks by bead size, mm: common practice, no source; 15/0 from memory, and 13/0, 10/0, 6/0 and
 * cylinders set between their neighbours.
 */
const hooks: Readonly<Record<string, readonly [number, number]>> = {
  '15/0': [0.4, 0.6],
  '13/0': [0.5, 0.75],
  '11/0': [0.6, 1.0],
  '11/0 cylinder': [0.5, 0.75],
  '10/0': [0.75, 1.0],
  '8/0': [1.0, 1.25],
  '6/0': [1.25, 1.75],
};

/** Thinnest and thickest hook that is usual for a bead size, millimetres. */
export function hookRangeMm({ name }: Pick<BeadSize, 'name'>): readonly [number, number] {
  return hooks[name];
}

/** Thickness of a beading needle that passes the narrowest holes of a size (from memory). */
export function needleRangeMm({
  holeRangeMm,
}: Pick<BeadSize, 'holeRangeMm'>): readonly [number, number] {
  return [0.3, Math.min(0.45, Math.round(80 * holeRangeMm[0]) / 100)];
}

import { valueFault } from './pattern.js';
import type { ValueFault } from './pattern.js';

const short = (value: number, places = 2) => String(Number(value.toFixed(places)));

/** Why a swatch cannot be taken as it was measured. */
export const swatchErrors = {
  impossible: (f: {
    option: string;
    got: number;
    least: number;
    most: number;
    unit: 'mm' | 'stitches';
    beadMm: number;
    rounds?: number;
    stitches?: number;
  }) => {
    const made =
      f.rounds !== undefined
        ? `${f.rounds} rounds of`
        : f.stitches !== undefined
          ? `${short(f.stitches)} stitches of`
          : '50';
    // Rounded inward, so that both numbers are ones that will do.
    const unit = f.most < 20 || f.least < 10 ? 10 : 1;
    const least = Math.ceil(f.least * unit - 1e-9) / unit;
    const most = Math.floor(f.most * unit + 1e-9) / unit;
    return `${f.option} cannot be ${short(f.got)} ${f.unit}: with ${made} beads of ${short(f.beadMm)} mm it is ${least} to ${most}. Measure it again, and check --rounds, --wedges and --size.`;
  },
  turn: (f: {
    gotDegrees: number;
    lean: number;
    from: number;
    to: number;
    leastDegrees: number;
    mostDegrees: number;
    otherWay: boolean;
  }) => {
    const way = (degrees: number) =>
      `${Math.abs(degrees).toFixed(1)}° ${degrees < 0 ? 'against' : 'with'} the work`;
    const hint = f.otherWay
      ? ` Is it ${Math.abs(f.gotDegrees).toFixed(1)}° ${f.gotDegrees < 0 ? 'with' : 'against'} the work?`
      : ' Mark the first stitch of the same wedge in every round, and measure again.';
    return `--turn ${way(f.gotDegrees)} from round ${f.from} to ${f.to} would be a lean of ${f.lean.toFixed(2)}, and a lean is -1 to 1 (usually 0 to 0.5): from ${way(f.leastDegrees)} to ${way(f.mostDegrees)}.${hint}`;
  },
  photoFew: (f: { rims: number }) =>
    `The points of the photograph do not show how the stitches turn${f.rims > 0 ? ' (all lie on one round)' : ''}: point at the first stitch of a wedge on the last round and at least on one round further in.`,
  photoLine:
    'The points of the photograph do not settle how the panel lies: spread the rim points around the panel, no three of them in a line, and check the order of the wedges.',
  photoLean: (f: { lean: number }) =>
    `The points of the photograph would be a lean of ${f.lean.toFixed(2)}, and a lean is -1 to 1 (usually 0 to 0.5): check which round and wedge each point is, and --hand and --beads-face; the photograph must show the bead face.`,
  nothing:
    'Nothing is measured: give --across with --rounds, --rim-stitches, --turn, --thread-mm or --fifty-beads; rondure swatch --guide prints how.',
  notOurs: (f: { where: string }) =>
    `${f.where} is not a measured swatch: give the swatch.json that rondure swatch wrote.`,
  tooNew: (f: { where: string; version: number; known: number }) =>
    `${f.where} was written by a newer Rondure (swatch version ${f.version}, this one reads up to ${f.known}): update Rondure.`,
  invalid: (f: { where: string; path: string; problem: ValueFault }) =>
    `${f.where} is not a sound swatch: ${f.path ? `${f.path}: ` : ''}${valueFault(f.problem)}. Make it again with rondure swatch.`,
};

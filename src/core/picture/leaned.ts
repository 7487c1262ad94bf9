import { bare, labOf } from '../beads/bead.js';
import type { BeadOfStitch } from '../beads/bead.js';
import { nearestBead } from '../beads/choice/choose.js';
import { finishBeads } from '../beads/finish-choice.js';
import { linearToLab65 } from '../colour/lab.js';
import { bareUnderFrame } from '../purse/frame/plan.js';
import { layPanel } from '../panel/lay.js';
import type { Pattern } from '../pattern/pattern.js';
import type { PatternBead } from '../beads/bead.js';
import type { Picture } from './picture.js';
import { sampleStitches } from './sampling/sample-stitches.js';
import { pictureFromPng } from './thumbnail.js';
import { keepLines } from './lines/keep-lines.js';
import { drain } from '../steps.js';
import { liftTone } from './tone/lift.js';

/** The maker's other beads are not known: a palette mostly reaches from black to white. */
const blackToWhite = [10, 97].map((L) => ({ lab: [L, 0, 0] as const }));

/**
 * What a panel would look like if its chart were drawn without lean: the picture sampled as if
 * turn were 0, lifted, kept and tidied as the pattern was, so that nothing but lean tells the two
 * apart. Shown at the real centres it comes out twisted.
 *
 * @returns bead of each stitch in working order, undefined where bare; and the picture it was
 *   sampled from. Undefined when the pattern keeps no picture, or a damaged one.
 */
export function sampledWithoutTurn(
  pattern: Pattern,
  panel: number,
): { beadOf: (PatternBead | undefined)[]; picture: Picture } | undefined {
  const { picture: entry, startDegrees } = pattern.panels[panel];
  if (!entry) return undefined;
  const picture = pictureFromPng(entry.thumbnail);
  if (!picture) return undefined;
  const lay = layPanel(pattern.shape, { startDegrees, withoutTurn: true });
  const { art, paper, background = '#ffffff', place, width } = entry;
  const laid = { picture, uprightWidth: width, place };
  const ink = pattern.wish?.inkPercent;
  const darkCover = ink === undefined ? undefined : ink / 100;
  const sparing = (pattern.wish?.edges ?? 0) > 0;
  const how = { art, paper, darkCover, background, sparing };
  const means = sampleStitches(lay, laid, how);
  const sampled = pattern.wish?.edges ? drain(keepLines(means, lay, laid, how)) : means;
  const beads = pattern.beads.map((bead) => ({ ...bead, lab: labOf(bead) }));
  const colours = liftTone(sampled, blackToWhite, pattern.wish?.lift ?? 0);
  if (pattern.frame) {
    const upright = layPanel(pattern.shape, { startDegrees }).geometry;
    bareUnderFrame(pattern.frame, upright).forEach((one, s) => (colours.bare[s] ||= one));
  }
  const palette = new Float64Array(beads.flatMap(({ lab }) => lab));
  const nearest: BeadOfStitch = Int16Array.from({ length: lay.geometry.count }, (_, s) => {
    if (colours.bare[s] || beads.length === 0) return bare;
    const [r, g, b] = colours.linear.subarray(3 * s, 3 * s + 3);
    return nearestBead(palette, ...linearToLab65(r, g, b));
  });
  const { tidy = 0, dither = 0, edges = 0 } = pattern.wish ?? {};
  const chosen = [...beads.keys()];
  const repeat = place.repeat === true && !pattern.frame;
  const { beadOf: finished } =
    beads.length === 0 || !nearest.some((bead) => bead >= 0)
      ? { beadOf: nearest }
      : drain(
          finishBeads(
            { tidy, dither, edges },
            { ...lay, colours, repeat },
            { beadOf: nearest, palette, chosen },
          ),
        );
  const beadOf = Array.from(finished, (bead) => (bead < 0 ? undefined : pattern.beads[bead]));
  return { beadOf, picture };
}

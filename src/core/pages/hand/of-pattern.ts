import { hexToLab65, lab65ToHex } from '../../colour/lab.js';
import { bareMark, undecidedMark } from '../../pattern/marks.js';
import type { Pattern } from '../../pattern/pattern.js';
import { tailCmOf } from '../../thread/need.js';
import { bareRoundsOf } from '../../purse/frame/plan.js';
import type { HandSaid } from '../../../words/pages/english/hands.js';
import type { Fonts } from '../surface/font.js';
import type { HandFacts, StitchWay } from './facts.js';
import type { Tints } from './pen.js';

/** L of the beads in drawings; thread is 20 lighter, so that they stand apart in grey too. */
const beadLightness = 70;
const mostChroma = 34;
const threadTint = '#f2e2bd';
const greyTints: Tints = { bead: '#ababab', thread: '#e3e3e3' };

/** What the drawings of a pattern depend on; `grey` for a printer without colour. */
export function handFactsOf(
  pattern: Pick<Pattern, 'shape' | 'beads' | 'panels' | 'frame'>,
  fonts: Fonts,
  { grey = false }: { grey?: boolean } = {},
): HandFacts {
  const { shape, panels, frame } = pattern;
  const [front, back = front] = panels;
  return {
    shape,
    stitch: stitchWayOf(shape),
    starts: { front: front.startDegrees, back: back.startDegrees },
    names: { front: front.name, back: back.name },
    frame,
    fonts,
    tints: grey ? greyTints : { bead: beadTint(pattern), thread: threadTint },
  };
}

/** How the stitch is worked: as said, else by what gives such a lean (common practice, no source). */
export function stitchWayOf({
  stitch,
  lean,
}: Pick<Pattern['shape'], 'stitch' | 'lean'>): StitchWay {
  return stitch ?? (lean > 0.375 ? 'both-loops' : 'bead-side-loop');
}

/** What the sentences beside the drawings depend on. */
export function handSaidOf({
  shape,
  panels,
  frame,
  thread,
}: Pick<Pattern, 'shape' | 'panels' | 'frame' | 'thread'>): HandSaid {
  const [front, back = front] = panels;
  return {
    beadsFace: shape.beadsFace,
    construction: shape.construction,
    way: stitchWayOf(shape),
    wedges: shape.wedges,
    fixing: frame?.fixing ?? 'sewn',
    bare: frame !== undefined && bareRoundsOf(frame, shape) > 0,
    tailCm: tailCmOf(thread),
    front: front.name,
    back: back.name,
  };
}

/** The hue that colours a pattern most, at one lightness; a pattern in greys stays grey. */
function beadTint({ beads, panels }: Pick<Pattern, 'beads' | 'panels'>): string {
  const counts = new Map<string, number>();
  for (const mark of panels.flatMap(({ rounds }) => rounds).join('')) {
    if (mark !== bareMark && mark !== undecidedMark) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  }
  let [best, most] = [[0, 0], 0];
  for (const { letter, hex } of beads) {
    const [, a, b] = hexToLab65(hex);
    const weight = Math.hypot(a, b) * Math.sqrt(counts.get(letter) ?? 0);
    if (weight > most) [best, most] = [[a, b], weight];
  }
  const chroma = Math.hypot(...best);
  const share = chroma > mostChroma ? mostChroma / chroma : 1;
  return lab65ToHex(beadLightness, best[0] * share, best[1] * share);
}

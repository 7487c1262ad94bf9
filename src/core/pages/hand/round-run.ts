import { layPanel } from '../../panel/lay.js';
import { stitchesBefore } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';
import { remembered } from '../../remember.js';
import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import { ink } from './pen.js';
import type { Pen } from './pen.js';

const rounds = 4;
const middle: Spot = [25.4, 22.6];

/** Whoever works with the right hand sees the work run anticlockwise, whichever face lies up. */
const asSeen = remembered((shape: Shape): Shape => ({
  ...shape,
  rounds,
  hand: 'right',
  beadsFace: 'toward',
}));

/** How the rounds run, from the panel's own geometry, as the worker sees them. */
function run(pen: Pen, { shape }: HandFacts): void {
  const seen = asSeen(shape);
  const { centres, count } = layPanel(seen, { startDegrees: 0 }).geometry;
  const far = Math.max(...centres.map(Math.abs));
  const all = Array.from({ length: count }, (_, s): Spot => [
    middle[0] + (20 / far) * centres[2 * s],
    middle[1] + (20 / far) * centres[2 * s + 1],
  ]);
  const roundsOf = Array.from({ length: rounds }, (_, r) =>
    all.slice(stitchesBefore(seen, r + 1), stitchesBefore(seen, r + 2)),
  );
  const lines =
    shape.construction === 'spiral' ? [all] : roundsOf.map((ring) => [...ring, ring[0]]);
  for (const line of lines) pen.thread(smooth(line), { wide: 1.1 });
  for (const spot of all) pen.dot(spot, 1.1, { fill: pen.tints.bead });
  for (const [first] of roundsOf) pen.dot(first, 1.1, { fill: ink });
}

/** How the rounds run, and where each begins. */
export const roundRun: HandDrawing = {
  name: 'round-run',
  ...smallFrame,
  applies: () => true,
  frames: [run],
};

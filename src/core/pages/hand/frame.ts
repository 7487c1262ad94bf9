import { acrossMm } from '../../panel/edge.js';
import { layPanel } from '../../panel/lay.js';
import type { Frame } from '../../purse/frame/measures.js';
import { bellyLine, railLine } from '../../purse/frame/outline.js';
import { planFrame, usualRatio } from '../../purse/frame/plan.js';
import type { FramePlan } from '../../purse/frame/plan.js';
import { largeFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { apart, besides, part } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';

/** The frame of the pattern, or a usual one for a panel of its size. */
export function frameOf({ frame, shape }: HandFacts): Frame {
  if (frame) return frame;
  const widthMm = Math.round(acrossMm(shape) / usualRatio);
  return {
    kind: 'half-round',
    widthMm,
    heightMm: Math.round(widthMm / 2),
    fixing: 'sewn',
    ratio: usualRatio,
    gatherPercent: 0,
  };
}

/** The plan where the panel suits the frame. */
function planOf(facts: HandFacts): FramePlan | undefined {
  const frame = frameOf(facts);
  const { geometry } = layPanel(facts.shape, { startDegrees: facts.starts.front });
  try {
    return planFrame(frame, geometry);
  } catch {
    return undefined;
  }
}

/** One side of the purse in its frame: bare stitches under the rail, holes, where to sew. */
function inFrame(pen: Pen, facts: HandFacts): void {
  const frame = frameOf(facts);
  const plan = planOf(facts);
  if (!plan) return;
  const rail = railLine(frame);
  const belly = bellyLine(apart(rail[0], rail[rail.length - 1]), plan.seam.lengthMm);
  const wide = Math.max(...[...rail, ...belly].map(([x]) => Math.abs(x)));
  const top = Math.min(...rail.map(([, y]) => y));
  const bottom = Math.max(...belly.map(([, y]) => y));
  const scale = Math.min(66 / (2 * wide), 62 / (bottom - top));
  const put = (spots: readonly Spot[]) =>
    spots.map(([x, y]): Spot => [41 + scale * x, 15.5 + scale * (y - top)]);
  const [railAt, bellyAt] = [put(rail), put(belly)];
  const { roundHeightMm } = facts.shape;
  const bareMm = Math.max(2.4, scale * roundHeightMm * plan.bareRounds);
  const [, inner] = besides(railAt, 2 * (1.7 + bareMm));
  pen.shape([...railAt, ...bellyAt], { fill: '#ffffff' });
  pen.shape([...inner, ...bellyAt], { fill: pen.tints.bead });
  // Bare stitches stand between rail and beads.
  const bare = plan.framed[0].stitches;
  for (let n = 0; n < bare; n++) {
    const share = (n + 0.5) / bare;
    pen.line([part(railAt, share, share)[0], part(inner, share, share)[0]]);
  }
  const [outer, under] = besides(railAt, 3.4);
  pen.shape([...outer, ...[...under].reverse()], { fill: '#ffffff', moves: true });
  const spaces = plan.holes?.spaces ?? 0;
  for (let n = 0; n < spaces; n++) {
    const share = (n + 0.5) / spaces;
    pen.dot(part(railAt, share, share)[0], 0.5, { fill: '#1a1a1a' });
  }
  for (const hinge of [railAt[0], railAt[railAt.length - 1]]) {
    pen.dot(hinge, 2.2, { moves: true });
    pen.dot(hinge, 0.7, { fill: '#1a1a1a' });
  }
  const [ring] = besides(railAt, 11);
  for (const [from, to] of [
    [0.46, 0.1],
    [0.54, 0.9],
  ]) {
    const way = part(ring, Math.min(from, to), Math.max(from, to));
    pen.arrow(from > to ? way.reverse() : way);
  }
  // The two balls of the clasp.
  const [, head] = part(railAt, 0.5, 0.5);
  for (const x of [39.3, 42.7]) pen.dot([x, head[1] - 3.6], 1.9);
  pen.number(1, [41, head[1] - 10.6]);
}

/** How a panel is fixed in the frame: from the middle to both hinges. */
export const frameDrawing: HandDrawing = {
  name: 'frame',
  ...largeFrame,
  ofPurse: true,
  applies: (facts) => planOf(facts) !== undefined,
  frames: [inFrame],
};

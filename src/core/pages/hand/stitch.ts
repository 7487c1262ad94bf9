import { hook, loopAt, moved } from './held.js';
import { part, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { roundMm, stitch, stitchMm, top } from './work.js';
import type { Face, TopLook } from './work.js';

/** Middle of the edge of the round below, and the next of its stitches to be worked into. */
const edgeY = 28;
const nextX = 20;
const newY = edgeY - roundMm;
/** Where the loop on the hook leaves the last stitch. */
const last: Spot = [nextX + stitchMm + 2, newY];
/** What differs between beads away and toward: the way of hook and thread is the same, seen from the other face. */
interface Side {
  readonly face: Face;
  /** The loops that the hook goes under: both, or the one on the side of the beads. */
  readonly under: TopLook;
  /** A height on the page, of something that lies on the thread's side of the edge. */
  deep(y: number): number;
}

const sideOf = ({ shape: { beadsFace: face }, stitch: way }: HandFacts): Side => ({
  face,
  under: {
    near: way !== 'bead-side-loop' || face === 'toward',
    far: way !== 'bead-side-loop' || face === 'away',
  },
  deep: (y) => (face === 'away' ? y : edgeY + 0.8 * (edgeY - y)),
});

/** The round below; where the new round stands, it hides the beads behind the old one. */
function below(pen: Pen, { face }: Side, look: TopLook = {}, done = 0): void {
  const places = [-1, 0, 1, 2].map((n) => nextX + n * stitchMm);
  for (const x of places) top(pen, [x - stitchMm / 2, edgeY + roundMm]);
  for (const x of places) {
    const hidden = face === 'away' && x > nextX + 1 - done * stitchMm;
    stitch(pen, [x, edgeY], face, { ...(x === nextX && look), bead: !hidden });
  }
}

/** What is worked of the new round. */
function above(pen: Pen, { face }: Side): void {
  for (const n of [2.5, 1.5]) stitch(pen, [nextX + n * stitchMm, newY], face);
}

/** Of the last stitch; its foot stands in the mouth of that stitch. */
const lastLoop = loopAt(29.5, [last, [last[0] + 1.6, last[1]]]);

/** The loop that was drawn up through the work. */
const drawnUp = ({ deep }: Side) =>
  loopAt(20, [
    [nextX - 1.2, deep(edgeY + 3.4)],
    [nextX + 1.2, deep(edgeY + 3.4)],
  ]);

/** The hook through the stitch, with the last loop round its shaft, and what is on the far side. */
function hookInStitch(
  pen: Pen,
  side: Side,
  thread: readonly Spot[],
  caught: readonly Spot[],
): void {
  const { face, deep, under } = side;
  const loop = smooth([
    [last[0] + 0.6, last[1] - 0.4],
    [25.2, deep(27)],
    [20.8, deep(33.6)],
    [21.8, deep(35.8)],
    [25.2, deep(34.4)],
    [28, deep(28)],
    [last[0] + 1, last[1] + 0.8],
  ]);
  const pierce = () => {
    pen.thread(part(loop, 0, 0.46), moved);
    const tip: Spot = [15.6, deep(edgeY - 9)];
    if (face === 'away') pen.hook(tip, 62, 23.5, { throat: 1 });
    else pen.hook(tip, -62, 23.5, { throat: -1 });
    pen.thread(part(loop, 0.46, 1), moved);
  };
  if (face === 'away') pen.thread(thread, moved);
  below(pen, side, under);
  pierce();
  if (face === 'toward') pen.thread(thread, moved);
  if (caught.length > 0) pen.thread(caught, moved);
  above(pen, side);
  top(pen, [nextX, edgeY], under, under);
}

/** 1: the hook goes under both loops of the next stitch. */
function into(pen: Pen, facts: HandFacts): void {
  const side = sideOf(facts);
  const { face, deep } = side;
  const hand = smooth([last, [20, deep(16)], [10, deep(13.4)], [0.6, deep(12.4)]]);
  hookInStitch(pen, side, hand, []);
  pen.bead([6.4, deep(12.9)], face === 'away' ? 8 : -8, moved);
  pen.arrow([
    [18.4, deep(42.5)],
    [14.6, deep(34.8)],
  ]);
  pen.number(1, [12.6, deep(40)]);
}

/** 2 and 3: the thread over the hook, and drawn through the stitch. */
function fetch(pen: Pen, facts: HandFacts): void {
  const side = sideOf(facts);
  const { face, deep } = side;
  const caught = smooth([
    last,
    [24, deep(19.6)],
    [18.6, deep(22.2)],
    [14, deep(20.6)],
    [7, deep(15)],
    [0.6, deep(12.4)],
  ]);
  hookInStitch(pen, side, part(caught, 0, 0.4), part(caught, 0.4, 1));
  pen.bead([5.2, deep(14)], face === 'away' ? 24 : -24, moved);
  pen.number(2, [11.4, deep(23.4)]);
  pen.arrow([
    [29.4, deep(34)],
    [33.4, deep(41.6)],
  ]);
  pen.number(3, [35.2, deep(36.6)]);
}

/** 4: a bead is slid up to the work. */
function slide(pen: Pen, facts: HandFacts): void {
  const side = sideOf(facts);
  const { face, deep } = side;
  below(pen, side);
  const hand = smooth([
    [nextX - 0.5, deep(edgeY - 1)],
    [16, deep(21.4)],
    [9, deep(18.6)],
    [0.6, deep(17.6)],
  ]);
  pen.thread(hand, moved);
  pen.bead([13.8, deep(20.6)], face === 'away' ? 28 : -28, moved);
  handOver(pen, side);
  const y = face === 'away' ? 13 : 41;
  pen.arrow([
    [6.4, y],
    [9, y + (face === 'away' ? 0.4 : -0.4)],
    [13.4, y + (face === 'away' ? 3 : -2)],
  ]);
  pen.number(4, [3.4, y]);
}

/** The two loops on the hook before the work, where the drawn loop comes out of it. */
function handOver(pen: Pen, side: Side, between?: () => void): void {
  if (side.face === 'away') top(pen, [nextX, edgeY]);
  const loops = [lastLoop, drawnUp(side)];
  for (const [behind] of loops) pen.thread(behind, moved);
  between?.();
  hook(pen);
  for (const [, before] of loops) pen.thread(before, moved);
  if (side.face === 'toward') top(pen, [nextX, edgeY]);
  else pen.hole([nextX, edgeY + 3.6]);
  above(pen, side);
}

/** 5 and 6: the thread over the hook beyond the bead, and drawn through both loops. */
function close(pen: Pen, facts: HandFacts): void {
  const side = sideOf(facts);
  const { face, deep } = side;
  below(pen, side);
  const up = smooth([
    [nextX - 0.5, deep(edgeY - 1)],
    [14.4, deep(20.6)],
    [11.6, 15.6],
    [12, 9.6],
    [13.8, 7.2],
  ]);
  const down = smooth([
    [12, 9.6],
    [13.8, 7.2],
    [15.6, 10],
    [13, 15],
    [7, 17.6],
    [0.6, 18.4],
  ]);
  const off = part(down, 0.12, 1);
  const bead = () => pen.bead([14.2, deep(20.6)], face === 'away' ? 40 : -40, moved);
  if (face === 'away') {
    pen.thread(up, moved);
    bead();
    handOver(pen, side);
    pen.thread(off, moved);
  } else {
    pen.thread(off, moved);
    handOver(pen, side);
    pen.thread(up, moved);
    bead();
    top(pen, [nextX, edgeY]);
  }
  pen.number(5, [6.4, 9.6]);
  pen.arrow([
    [18.4, 4],
    [35.6, 2.4],
  ]);
  pen.number(6, [39.4, 2.5]);
}

/** The stitch is done; its bead sits on its face. */
function done(pen: Pen, facts: HandFacts): void {
  const side = sideOf(facts);
  const { face, deep } = side;
  const mouth: Spot = [nextX + 2, newY];
  const hand = smooth([mouth, [14, deep(17.4)], [7, deep(15.6)], [0.6, deep(15)]]);
  const [behind, before] = loopAt(20.5, [mouth, [mouth[0] + 1.4, mouth[1]]]);
  if (face === 'away') pen.thread(hand, moved);
  below(pen, side, {}, 1);
  if (face === 'toward') pen.thread(hand, moved);
  pen.bead([6, deep(15.4)], face === 'away' ? 8 : -8, moved);
  pen.thread(behind, moved);
  hook(pen);
  pen.thread(before, moved);
  above(pen, side);
  stitch(pen, [nextX + stitchMm / 2, newY], face, { fresh: true });
}

/** How a beaded single crochet is worked, movement by movement. */
export const stitchSteps: HandDrawing = {
  name: 'stitch',
  ...smallFrame,
  applies: ({ stitch }) => stitch !== 'slip',
  frames: [into, fetch, slide, close, done],
};

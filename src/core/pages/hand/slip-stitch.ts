import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { moved } from './held.js';
import { part, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { stitchMm, top } from './work.js';

const edgeY = 29;
const nextX = 20;
/** Slip stitches stand lower than single crochet. */
const rise = 5.4;
const mouth: Spot = [nextX + stitchMm + 2, edgeY - rise];

interface Stage {
  readonly away: boolean;
  /** A height on the page, of something that lies on the thread's side of the edge. */
  deep(y: number): number;
  beadAt(top: Spot): Spot;
  /** The loop that holds the bead. */
  readonly loop: { near: boolean; far: boolean };
}

function stageOf({ shape }: HandFacts): Stage {
  const away = shape.beadsFace === 'away';
  return {
    away,
    deep: (y) => (away ? y : edgeY + 0.72 * (edgeY - y)),
    beadAt: ([x, y]) => (away ? [x - 1, y - 3.6] : [x - 1, y + 3.9]),
    loop: { near: !away, far: away },
  };
}

function stand(pen: Pen, { away, beadAt }: Stage, at: Spot, bead: boolean): void {
  const drawBead = () => pen.bead(beadAt(at), 78, { across: 5.4, long: 4.4 });
  if (bead && away) drawBead();
  top(pen, at);
  if (bead && !away) drawBead();
}

/** The rounds below: tops, each with its bead; that of the next stitch is left out. */
function below(pen: Pen, stage: Stage): void {
  const { away } = stage;
  for (const n of [3, 2, 1, 0, -1]) {
    stand(pen, stage, [nextX + (n - 0.5) * stitchMm, edgeY + rise], !away);
  }
  for (const n of [2, 1, 0, -1]) {
    stand(pen, stage, [nextX + n * stitchMm, edgeY], n < 0 || (!away && n > 0));
  }
}

/** What is worked of the new round. */
function above(pen: Pen, stage: Stage): void {
  for (const n of [2, 1]) stand(pen, stage, [nextX + (n + 0.5) * stitchMm, edgeY - rise], true);
}

/** The hook through the stitch, the bead below tipped over, and the thread in two parts. */
function pierced(pen: Pen, stage: Stage, thread: readonly Spot[], caught: readonly Spot[]): void {
  const { away, deep, loop: under } = stage;
  const loop = smooth([
    [mouth[0] + 0.6, mouth[1] - 0.4],
    [26, deep(29)],
    [21.2, deep(34.4)],
    [22.2, deep(36.6)],
    [25.8, deep(35)],
    [28.6, deep(29.6)],
    [mouth[0] + 1, mouth[1] + 0.8],
  ]);
  const bead = () => pen.bead(tipped(stage), 20, moved);
  if (away) pen.thread(thread, moved);
  below(pen, stage);
  if (away) bead();
  pen.thread(part(loop, 0, 0.46), moved);
  pen.hook([15.6, deep(edgeY - 9)], away ? 62 : -62, 23.5, { throat: away ? 1 : -1 });
  pen.thread(part(loop, 0.46, 1), moved);
  if (!away) pen.thread(thread, moved);
  if (caught.length > 0) pen.thread(caught, moved);
  above(pen, stage);
  top(pen, [nextX, edgeY], under, under);
  if (!away) bead();
}

/** Where the bead below lies once it is tipped to the worked side. */
const tipped = ({ away, beadAt }: Stage): Spot => {
  const [x, y] = beadAt([nextX, edgeY]);
  return [x + 4.6, away ? y - 0.2 : y];
};

/** 1 and 2: the hook under the thread that holds the bead below; that bead to the worked side. */
function into(pen: Pen, facts: HandFacts): void {
  const stage = stageOf(facts);
  const { away, deep } = stage;
  const far = away ? 11 : 14.4;
  const hand = smooth([mouth, [22, deep(13.6)], [10, deep(far)], [0.6, deep(far + 0.4)]]);
  pierced(pen, stage, hand, []);
  pen.bead([6, deep(far + 0.1)], 0, moved);
  pen.arrow([
    [18.4, deep(42.5)],
    [14.8, deep(36)],
  ]);
  pen.number(1, [12.6, deep(41)]);
  const [x, y] = tipped(stage);
  const side = away ? 1 : -1;
  pen.arrow(
    smooth([
      [x - 4.4, y - side * 4.6],
      [x - 1, y - side * 5.8],
      [x + 3, y - side * 4.6],
    ]),
  );
  pen.number(2, [x - 7, y - side * 6]);
}

/** 3: a bead is slid up to the work, beyond the bead below. */
function slide(pen: Pen, facts: HandFacts): void {
  const stage = stageOf(facts);
  const { away, deep } = stage;
  const hand = smooth([mouth, [25.4, deep(18)], [12, deep(13.4)], [0.6, deep(11.4)]]);
  pierced(pen, stage, hand, []);
  pen.bead([24.2, deep(17.4)], away ? 24 : -24, moved);
  const y = away ? 7.4 : 41.4;
  pen.arrow([
    [8, y],
    [17.4, y + (away ? 4 : -3)],
  ]);
  pen.number(3, [5, y]);
}

/** 4 and 5: the thread over the hook beyond the bead, and through stitch and loop at once. */
function close(pen: Pen, facts: HandFacts): void {
  const stage = stageOf(facts);
  const { away, deep } = stage;
  const caught = smooth([
    mouth,
    [25.4, deep(18.4)],
    [20.6, deep(21.4)],
    [16.6, deep(22.8)],
    [12, deep(19.4)],
    [6, deep(14)],
    [0.6, deep(11.4)],
  ]);
  pierced(pen, stage, part(caught, 0, 0.42), part(caught, 0.42, 1));
  pen.bead([25, deep(18.2)], away ? -30 : 30, moved);
  pen.number(4, [10.4, deep(23.4)]);
  pen.arrow([
    [29.4, deep(36)],
    [33, deep(42.4)],
  ]);
  pen.number(5, [34.8, deep(37.4)]);
}

/** How a beaded slip stitch is worked, movement by movement. */
export const slipStitch: HandDrawing = {
  name: 'slip-stitch',
  ...smallFrame,
  applies: ({ stitch }) => stitch === 'slip',
  frames: [into, slide, close],
};

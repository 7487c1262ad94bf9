import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { hook, loopAt, moved } from './held.js';
import { part, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { beadOf, legs, roundMm, row, stitch, stitchMm, top } from './work.js';

const edgeY = 28;
const nextX = 20;
const newY = edgeY - roundMm;
/** The old thread is white, the new one tinted. */
const old = { moves: true, fill: '#ffffff' } as const;

/** The last stitch of a length is closed with the new one. */
function closeWithNew(pen: Pen, { shape: { beadsFace: face } }: HandFacts): void {
  const away = face === 'away';
  const deep = (y: number) => (away ? y : edgeY + 0.8 * (edgeY - y));
  const last: Spot = [nextX + stitchMm + 2, newY];
  const loops = [
    loopAt(29.5, [last, [last[0] + 1.6, last[1]]]),
    loopAt(20, [
      [nextX - 1.2, deep(edgeY + 3.4)],
      [nextX + 1.2, deep(edgeY + 3.4)],
    ]),
  ];
  const tail = smooth([
    [nextX - 0.5, deep(edgeY - 1)],
    [14, deep(20.6)],
    [8, deep(21.6)],
    [2.4, deep(25)],
  ]);
  const bead = () => pen.bead([14, deep(20.8)], away ? 24 : -24, moved);
  const fresh = smooth([
    [1, 20.4],
    [8, 19],
    [11.4, 14],
    [11.8, 9.8],
    [13.6, 7.2],
    [15.4, 9.6],
    [13.4, 13],
    [7, 14.6],
    [0.6, 12.4],
  ]);
  const first = away ? 0.46 : 0.48;
  row(pen, { face, y: edgeY, fromX: nextX - stitchMm, many: 4, hiddenFrom: nextX + 1 });
  if (away) {
    pen.thread(tail, { ...old, cut: 'end' });
    bead();
    top(pen, [nextX, edgeY]);
  }
  pen.thread(part(fresh, 0, first), { ...moved, cut: 'start' });
  for (const [behind] of loops) pen.thread(behind, old);
  hook(pen);
  for (const [, before] of loops) pen.thread(before, old);
  pen.thread(part(fresh, first, 1), moved);
  pen.bead([4.4, 13.7], 14, moved);
  if (away) pen.hole([nextX, edgeY + 3.6]);
  else {
    pen.thread(tail, { ...old, cut: 'end' });
    bead();
    top(pen, [nextX, edgeY]);
  }
  for (const n of [2.5, 1.5]) stitch(pen, [nextX + n * stitchMm, newY], face);
  pen.number(1, [6.4, 7.4]);
  pen.arrow([
    [18.4, 4],
    [35.6, 2.4],
  ]);
  pen.number(2, [39.4, 2.5]);
}

/** Both tails lie on the edge, and the next stitches are worked over them. */
function overTails(pen: Pen, { shape: { beadsFace: face } }: HandFacts): void {
  const y = edgeY + 2;
  row(pen, { face, y, fromX: nextX - stitchMm, many: 4, hiddenFrom: nextX - stitchMm + 1 });
  const heads = [nextX + stitchMm / 2, nextX - stitchMm / 2];
  pen.thread(
    smooth([
      [24.6, y - 1.5],
      [18, y - 1.4],
      [8, y - 1.8],
      [1.4, y - 3.4],
    ]),
    { ...old, cut: 'end' },
  );
  pen.thread(
    smooth([
      [24.6, y + 0.7],
      [18, y + 0.8],
      [8, y + 0.4],
      [1.4, y - 0.4],
    ]),
    { ...moved, cut: 'end' },
  );
  for (const n of [2.5, 1.5]) stitch(pen, [nextX + n * stitchMm, y - roundMm], face);
  heads.forEach((x) => {
    const at: Spot = [x, y - roundMm];
    if (face === 'away') pen.bead(beadOf(at, face), 84, moved);
    legs(pen, [x - stitchMm / 2, y + 1.6], [x, at[1] + 1.4], true);
    if (face === 'toward') pen.bead(beadOf(at, face), 84, moved);
    top(pen, at, { near: true, far: true });
  });
  pen.number(3, [4.6, y - 8]);
}

/** How a new length is joined on. */
export const newLength: HandDrawing = {
  name: 'new-length',
  ...smallFrame,
  applies: ({ stitch }) => stitch !== 'slip',
  frames: [closeWithNew, overTails],
};

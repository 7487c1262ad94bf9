import { smallFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { moved } from './held.js';
import { part, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';
import { roundMm, row, stitch, stitchMm, tinted, top } from './work.js';

const edgeY = 27;
/** Of the first stitch of the round. */
const firstX = 15;
const both = { near: true, far: true };

/** The slip stitch that closes a round: the hook under both loops of its first stitch. */
function slip(pen: Pen, { shape: { beadsFace: face } }: HandFacts): void {
  const away = face === 'away';
  const deep = (y: number) => (away ? y : edgeY + 0.8 * (edgeY - y));
  const mouth: Spot = [firstX + 15.6, edgeY];
  const loop = smooth([
    [mouth[0], mouth[1] - 0.4],
    [24, deep(28.6)],
    [16.6, deep(32.4)],
    [17.4, deep(34.6)],
    [21, deep(33.6)],
    [25.4, deep(30)],
    [mouth[0] + 0.6, mouth[1] + 0.8],
  ]);
  const thread = smooth([
    mouth,
    [21, deep(21.4)],
    [13.4, deep(21.2)],
    [8, deep(17)],
    [0.6, deep(14)],
  ]);
  const pierce = () => {
    pen.thread(part(loop, 0, 0.5), moved);
    pen.hook([firstX - 4.6, deep(edgeY - 9)], away ? 62 : -62, 23, { throat: away ? 1 : -1 });
    pen.thread(part(loop, 0.5, 1), moved);
  };
  if (away) pen.thread(part(thread, 0, 0.5), moved);
  row(pen, { face, y: edgeY, fromX: firstX - stitchMm, many: 2, look: { 1: both } });
  pierce();
  row(pen, { face, y: edgeY, fromX: firstX + 2 * stitchMm, many: 2 });
  pen.thread(part(thread, away ? 0.5 : 0, 1), moved);
  top(pen, [firstX, edgeY], both);
  pen.bead([4, deep(15)], away ? 20 : -20, moved);
  pen.number(1, [8, deep(22.6)]);
  pen.arrow([
    [25.4, deep(34.6)],
    [29, deep(41.4)],
  ]);
  pen.number(2, [31, deep(36.4)]);
}

/** One chain to step up, and the first stitch of the next round into that same first stitch. */
function stepUp(pen: Pen, { shape: { beadsFace: face } }: HandFacts): void {
  const y = edgeY + 2;
  row(pen, {
    face,
    y,
    fromX: firstX - stitchMm,
    many: 5,
    look: { 1: both },
    hiddenFrom: firstX + stitchMm,
  });
  const chain: Spot = [firstX + stitchMm * 1.15, y - 1];
  for (const side of [-1, 1]) {
    pen.leaf(chain, [chain[0] + side * 1.5 - 1, chain[1] - 7.4], { wide: 2.2, ...tinted(pen) });
  }
  stitch(pen, [firstX + 0.1 * stitchMm, y - roundMm], face, { fresh: true, lean: 0.1 * stitchMm });
  pen.number(3, [chain[0] + 4.4, chain[1] - 5]);
  pen.number(4, [firstX + 1, y - roundMm - (face === 'away' ? 10 : 6)]);
}

/** How a round is joined, where rounds are. */
export const roundEnd: HandDrawing = {
  name: 'round-end',
  ...smallFrame,
  applies: ({ shape }) => shape.construction === 'joined',
  frames: [slip, stepUp],
};

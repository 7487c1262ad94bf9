import { layPanel } from '../../panel/lay.js';
import { meetingStitch } from '../../panel/meet.js';
import { stitchesBefore, stitchesInRound } from '../../panel/shape.js';
import { stretchIn } from '../../purse/frame/plan.js';
import { largeFrame } from './facts.js';
import type { HandDrawing, HandFacts } from './facts.js';
import type { Spot } from '../../lines.js';
import type { Pen } from './pen.js';

const middle: Spot = [41, 41];
/** How far from the middle the rim of the front reaches, and that of the back inside it. */
const frontMm = 34;
const backMm = 25.8;

/** Two stitches of the last rounds that meet; numbers from 1, places on the drawing. */
export interface DrawnPair {
  readonly front: number;
  readonly back: number;
  readonly frontAt: Spot;
  readonly backAt: Spot;
  /** Whether both lie outside the frame and are sewn. */
  readonly sewn: boolean;
}

/** The pairs of the rims, the front seen from outside and the back from within, both upright. */
export function drawnPairs(facts: HandFacts): DrawnPair[] {
  const { shape, starts, frame } = facts;
  const front = rimPlaces(facts, starts.front, 1, frontMm);
  const back = rimPlaces(facts, starts.back, -1, backMm);
  return front.places.map((frontAt, i) => {
    const j = meetingStitch(shape, starts, i);
    return {
      front: i + 1,
      back: j + 1,
      frontAt,
      backAt: back.places[j],
      sewn: frame === undefined ? !usualOpening(frontAt) : !front.holds(i) && !back.holds(j),
    };
  });
}

/** Without a frame: a little less than half of the rim stays open (common practice, no source). */
const usualOpening = ([x, y]: Spot): boolean =>
  Math.abs(Math.atan2(x - middle[0], middle[1] - y)) < 0.45 * Math.PI;

function rimPlaces(
  { shape, frame }: HandFacts,
  startDegrees: number,
  side: 1 | -1,
  reachMm: number,
) {
  const { geometry } = layPanel(shape, { startDegrees });
  const first = stitchesBefore(shape, shape.rounds);
  const many = stitchesInRound(shape, shape.rounds);
  const { centres } = geometry;
  const rim = centres.subarray(2 * first);
  const far = Array.from({ length: many }, (_, i) => Math.hypot(rim[2 * i], rim[2 * i + 1]));
  const scale = reachMm / Math.max(...far);
  const stretch = frame && stretchIn(frame, geometry);
  return {
    places: Array.from({ length: many }, (_, i): Spot => {
      const [x, y] = rim.subarray(2 * i, 2 * i + 2);
      return [middle[0] + side * scale * x, middle[1] + scale * y];
    }),
    holds: (i: number) => stretch?.holds(first + i) ?? false,
  };
}

/** The rims of both panels and which of their stitches meet. */
function rims(pen: Pen, facts: HandFacts): void {
  const pairs = drawnPairs(facts);
  for (const { frontAt, backAt, sewn } of pairs) if (sewn) pen.line([frontAt, backAt]);
  for (const { frontAt, backAt, sewn } of pairs) {
    // Black and white, so that print without colours tells them apart.
    const fill = sewn ? '#1a1a1a' : '#ffffff';
    pen.dot(frontAt, 0.62, { fill });
    pen.dot(backAt, 0.5, { fill });
  }
  for (const pair of numbered(pairs)) {
    pen.line([pair.frontAt, pair.backAt], { moves: true });
    pen.text(String(pair.front), away(pair.frontAt, 4), 8);
    pen.text(String(pair.back), away(pair.backAt, -4), 8);
  }
  pen.text(facts.names.back, middle, 9, 2 * backMm - 22);
  // In the corner, clear of the number at 6 o'clock.
  pen.text(facts.names.front, [13, largeFrame.heightMm - 2.5], 9, 24);
}

/** The first and last pair of the seam, and those at the hours between that are not beside them. */
function numbered(pairs: readonly DrawnPair[]): DrawnPair[] {
  const ends = pairs.filter(
    ({ sewn }, i) => sewn && !(pairs.at(i - 1)!.sewn && pairs[(i + 1) % pairs.length].sewn),
  );
  const clear = (one: DrawnPair) =>
    ends.every(
      (end) => Math.hypot(one.frontAt[0] - end.frontAt[0], one.frontAt[1] - end.frontAt[1]) > 6,
    );
  return [...ends, ...atHours(pairs).filter((one) => one.sewn && clear(one))];
}

const away = ([x, y]: Spot, mm: number): Spot => {
  const long = Math.hypot(x - middle[0], y - middle[1]);
  return [x + ((x - middle[0]) / long) * mm, y + ((y - middle[1]) / long) * mm];
};

/** The pairs nearest to the hours of a clock. */
function atHours(pairs: readonly DrawnPair[]): DrawnPair[] {
  return Array.from({ length: 12 }, (_, hour) => {
    const angle = (hour * Math.PI) / 6;
    const along = ({ frontAt: [x, y] }: DrawnPair) =>
      (Math.sin(angle) * (x - middle[0]) - Math.cos(angle) * (y - middle[1])) /
      Math.hypot(x - middle[0], y - middle[1]);
    return pairs.reduce((best, one) => (along(one) > along(best) + 1e-9 ? one : best));
  });
}

/** Which stitches of the two rims meet. */
export const seam: HandDrawing = {
  name: 'seam',
  ...largeFrame,
  ofPurse: true,
  applies: () => true,
  frames: [rims],
};

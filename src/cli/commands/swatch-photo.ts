import { basename } from 'node:path';
import { RondureError } from '../../core/errors.js';
import type { Warning } from '../../core/errors.js';
import type { Point } from '../../core/homography.js';
import { solvePhoto } from '../../core/swatch/photo.js';
import type { PhotoPoint } from '../../core/swatch/photo.js';
import { leastOf, mostOf, requireMeasure } from '../../core/swatch/plausible.js';
import type { SwatchMeasured } from '../../core/swatch/swatch.js';
import type { SwatchWish } from '../../core/swatch/solve.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { readPicture } from '../../node/read/read-picture.js';
import type { OptionExpected } from '../../words/en/expected.js';
import type { SwatchOptions } from '../options/swatch-options.js';

/** What was pointed at, as `--points` has it. */
interface Pointed {
  centre: Point;
  points: PhotoPoint[];
  ruler: Point[];
}

/**
 * Measures a swatch on its photograph.
 *
 * Throws what `readBytes`, `readPicture` and `solvePhoto` throw, `option-value` for the points.
 */
export async function photoOf(
  options: SwatchOptions,
  wish: SwatchWish,
): Promise<{
  photo: NonNullable<SwatchWish['photo']>;
  measured: Pick<SwatchMeasured, 'photo'>;
  warnings: Warning[];
}> {
  const { photo: file = '', points: text = '', pixels, rulerLength } = options;
  const { rounds, wedges } = wish.worked;
  const pointed = pointsIn(text, rounds, wedges);
  const { width, height } = await readPicture(await readBytes(file), file);
  const all = [
    pointed.centre,
    ...pointed.points.map(({ x, y }): Point => [x, y]),
    ...pointed.ruler,
  ];
  for (const [x, y] of all) {
    if (x <= width && y <= height) continue;
    refuse(`${x},${y}`, { kind: 'inside-photograph', width, height });
  }
  if ((rulerLength !== undefined) !== (pointed.ruler.length === 2)) {
    throw new RondureError('usage', { problem: { kind: 'ruler-half-given' } });
  }
  const [from, to] = pointed.ruler;
  const found = solvePhoto({
    worked: wish.worked,
    centre: pointed.centre,
    points: pointed.points,
    pixels,
    ...(rulerLength !== undefined && {
      ruler: { from, to, mm: rulerLength, offMm: options.ruler },
    }),
  });
  const { lean, roundHeightMm, perspective, offPixels, warnings } = found;
  if (roundHeightMm && rulerLength !== undefined) {
    const { beadMm } = wish.measured;
    const perMm = rulerLength / roundHeightMm.value;
    const [least, most] = [leastOf.stitch * beadMm * perMm, mostOf.stitch * beadMm * perMm];
    requireMeasure('--ruler-length', rulerLength, { least, most, unit: 'mm', beadMm, rounds });
  }
  const points = pointed.points.length + 1;
  const name = basename(file).slice(0, 200) || '-';
  return {
    photo: { lean, ...(roundHeightMm && { roundHeightMm }) },
    measured: { photo: { file: name, points, perspective, offPixels } },
    warnings,
  };
}

/** `centre=512,480; rim1=512,60; 5/1=700,300; ruler=40,900; ruler=840,900` */
function pointsIn(text: string, rounds: number, wedges: number): Pointed {
  const found: Pointed = { centre: [0, 0], points: [], ruler: [] };
  let centres = 0;
  const items = text.split(';').map((item) => item.trim());
  for (const item of items.filter((one) => one !== '')) {
    const number = String.raw`(\d{1,6}(?:\.\d{1,6})?)`;
    const parts = new RegExp(
      String.raw`^(centre|center|ruler|rim ?(\d{1,2})|(\d{1,2}) ?/ ?(\d{1,2})) ?= ?${number} ?, ?${number}$`,
      'i',
    ).exec(item);
    if (!parts) return refuse(item, { kind: 'points' });
    const [, name, rim, round, wedge] = parts;
    const [x, y] = [Number(parts[5]), Number(parts[6])];
    if (rim === undefined && round === undefined) {
      if (name.toLowerCase() === 'ruler') found.ruler.push([x, y]);
      else {
        found.centre = [x, y];
        centres++;
      }
      continue;
    }
    const point = { round: Number(round ?? rounds), wedge: Number(wedge ?? rim), x, y };
    const known = point.round >= 1 && point.round <= rounds;
    if (!known || point.wedge < 1 || point.wedge > wedges) {
      return refuse(item, { kind: 'stitch-of-swatch', rounds, wedges });
    }
    const twice = ({ round, wedge }: PhotoPoint) => round === point.round && wedge === point.wedge;
    if (found.points.some(twice)) return refuse(item, { kind: 'each-stitch-once' });
    found.points.push(point);
  }
  if (centres !== 1) return refuse(text, { kind: 'points' });
  return found;
}

function refuse(got: string, expected: OptionExpected): never {
  const shown = got.replace(/\s+/g, ' ').slice(0, 60);
  throw new RondureError('option-value', { option: '--points', got: shown, expected });
}

import type { Steps } from '../../steps.js';

/** A light field of a picture, row by row. */
export interface Field {
  readonly width: number;
  readonly height: number;
  /** L* of each pixel. */
  readonly light: Float32Array;
}

/** Pixels along the crest of a line, and how much it stands out from both sides. */
export interface RidgeLine {
  readonly pixels: readonly number[];
  /** Mean L* by which it is lighter (or darker) than both of its sides. */
  readonly strength: number;
  readonly lighter: boolean;
}

/** Across directions, pixels: from right round to nearly left. */
const directions = [
  [1, 0],
  [0.924, 0.383],
  [0.707, 0.707],
  [0.383, 0.924],
  [0, 1],
  [-0.383, 0.924],
  [-0.707, 0.707],
  [-0.924, 0.383],
] as const;
/** Rows that are looked at in one step. */
const rowsAStep = 64;
/**
 * L* by which a crest stands out: to go on, and to begin (hysteresis as J. Canny's, IEEE PAMI 8(6),
 * 1986). A drawing's flat colours have no noise, so that less is a line.
 */
const crestOf = { photo: [4, 8], drawing: [2.5, 3] } as const;

/**
 * Finds lines that are lighter, or darker, than what lies on both of their sides, and thinner than
 * `reach`: a border between two areas is none, since it is lighter than one side only.
 *
 * @param reach how far on both sides the sides are looked at, pixels
 */
export function* ridgeLines(
  { width, height, light }: Field,
  reach: number,
  art: 'photo' | 'drawing' = 'photo',
): Steps<RidgeLine[]> {
  yield { stage: 'colours' };
  const [goesOn, begins] = crestOf[art];
  const soft = yield* softened(light, width, height);
  const lines: RidgeLine[] = [];
  for (const sign of [1, -1]) {
    const crest = yield* crests(soft, width, height, { reach, sign, goesOn });
    for (const pixels of joined(crest, width, height, begins)) {
      const strength = pixels.reduce((sum, p) => sum + crest[p], 0) / pixels.length;
      lines.push({ pixels, strength, lighter: sign > 0 });
    }
    yield { stage: 'colours' };
  }
  return lines;
}

/** How much each pixel stands out as the crest of a line; 0 where it is none. */
function* crests(
  light: Float32Array,
  width: number,
  height: number,
  { reach, sign, goesOn }: { reach: number; sign: number; goesOn: number },
): Steps<Float32Array> {
  const crest = new Float32Array(light.length);
  const steps = directions.map(([x, y]) => {
    const far = [Math.round(reach * x), Math.round(reach * y)];
    const near = [Math.round(x), Math.round(y)];
    return { far: far[1] * width + far[0], near: near[1] * width + near[0] };
  });
  const margin = Math.ceil(reach) + 1;
  for (let y = margin; y < height - margin; y++) {
    if (y % rowsAStep === 0) yield { stage: 'colours' };
    for (let x = margin; x < width - margin; x++) {
      const p = y * width + x;
      const here = sign * light[p];
      let best = 0;
      for (const { far, near } of steps) {
        if (here < sign * light[p - near] || here <= sign * light[p + near]) continue;
        const out = here - Math.max(sign * light[p - far], sign * light[p + far]);
        if (out > best) best = out;
      }
      if (best >= goesOn) crest[p] = best;
    }
  }
  return crest;
}

/** Crest pixels that touch, where one of them at least stands out clearly. */
function joined(crest: Float32Array, width: number, height: number, begins: number): number[][] {
  const met = new Uint8Array(crest.length);
  const lines: number[][] = [];
  for (let first = 0; first < crest.length; first++) {
    if (met[first] || crest[first] < begins) continue;
    const line = [first];
    met[first] = 1;
    for (const p of line) {
      const x = p % width;
      const y = (p - x) / width;
      for (let dy = y > 0 ? -1 : 0; dy <= (y + 1 < height ? 1 : 0); dy++) {
        for (let dx = x > 0 ? -1 : 0; dx <= (x + 1 < width ? 1 : 0); dx++) {
          const q = p + dy * width + dx;
          if (met[q] || crest[q] === 0) continue;
          met[q] = 1;
          line.push(q);
        }
      }
    }
    lines.push(line);
  }
  return lines;
}

/** Means with weights 1 2 1 both ways. */
function* softened(values: Float32Array, width: number, height: number): Steps<Float32Array> {
  const across = new Float32Array(values.length);
  const soft = new Float32Array(values.length);
  const rowAcross = (y: number): void => {
    const [first, last] = [y * width, y * width + width - 1];
    for (let p = first; p <= last; p++) {
      const [left, right] = [p > first ? p - 1 : p, p < last ? p + 1 : p];
      across[p] = (values[left] + 2 * values[p] + values[right]) / 4;
    }
  };
  const rowDown = (y: number): void => {
    const [up, down] = [y > 0 ? -width : 0, y + 1 < height ? width : 0];
    for (let p = y * width; p < y * width + width; p++) {
      soft[p] = (across[p + up] + 2 * across[p] + across[p + down]) / 4;
    }
  };
  for (const row of [rowAcross, rowDown]) {
    for (let y = 0; y < height; y++) {
      if (y % rowsAStep === 0) yield { stage: 'colours' };
      row(y);
    }
  }
  return soft;
}

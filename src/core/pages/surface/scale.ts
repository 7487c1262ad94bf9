import { linearToSrgb8, srgbToLinear } from '../../colour/srgb.js';
import type { Picture } from '../../picture/picture.js';
import { isOpaque } from '../../picture/picture.js';

const steps = 4095;
const codeOfLight = Uint8Array.from({ length: steps + 1 }, (_, step) =>
  linearToSrgb8(step / steps),
);

/** For each new pixel along one side: the first old pixel it covers, and the share of each. */
interface Shares {
  readonly first: Int32Array;
  readonly shares: readonly Float64Array[];
}

/**
 * A picture at another size, each new pixel the mean (in linear light) of the old ones below it.
 * Where it is transparent the white page shows.
 *
 * @returns an opaque picture
 */
export function scaledOnWhite(picture: Picture, width: number, height: number): Picture {
  if (picture.width === width && picture.height === height && isOpaque(picture.data)) {
    return picture;
  }
  const across = sharesOf(picture.width, width);
  const down = sharesOf(picture.height, height);
  const rows = new Map<number, Float64Array>();
  const data = new Uint8ClampedArray(4 * width * height);
  const sums = new Float64Array(3 * width);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    const shares = down.shares[y];
    for (let k = 0; k < shares.length; k++) {
      const row = narrowed(down.first[y] + k);
      for (let p = 0; p < sums.length; p++) sums[p] += shares[k] * row[p];
    }
    for (const kept of rows.keys()) if (kept < down.first[y]) rows.delete(kept);
    for (let x = 0; x < width; x++) {
      const at = 4 * (y * width + x);
      for (let c = 0; c < 3; c++)
        data[at + c] = codeOfLight[Math.min(steps, (sums[3 * x + c] * steps + 0.5) | 0)];
      data[at + 3] = 255;
    }
  }
  return { width, height, data };

  function narrowed(y: number): Float64Array {
    const known = rows.get(y);
    if (known) return known;
    const row = new Float64Array(3 * width);
    const { data: from, width: oldWidth } = picture;
    for (let x = 0; x < width; x++) {
      const shares = across.shares[x];
      let at = 4 * (y * oldWidth + across.first[x]);
      let red = 0;
      let green = 0;
      let blue = 0;
      let page = 0;
      for (let k = 0; k < shares.length; k++, at += 4) {
        const share = (shares[k] * from[at + 3]) / 255;
        red += share * srgbToLinear[from[at]];
        green += share * srgbToLinear[from[at + 1]];
        blue += share * srgbToLinear[from[at + 2]];
        page += shares[k] - share;
      }
      row[3 * x] = red + page;
      row[3 * x + 1] = green + page;
      row[3 * x + 2] = blue + page;
    }
    rows.set(y, row);
    return row;
  }
}

function sharesOf(old: number, wanted: number): Shares {
  const first = new Int32Array(wanted);
  const ratio = old / wanted;
  const shares = Array.from(first, (_, p) => {
    const from = p * ratio;
    const to = Math.min(old, from + ratio);
    first[p] = Math.min(old - 1, Math.floor(from));
    const count = Math.max(1, Math.ceil(to - 1e-9) - first[p]);
    const parts = Float64Array.from({ length: count }, (_, k) =>
      Math.max(0, Math.min(to, first[p] + k + 1) - Math.max(from, first[p] + k)),
    );
    const sum = parts.reduce((a, b) => a + b, 0);
    return sum > 0 ? parts.map((part) => part / sum) : Float64Array.of(1);
  });
  return { first, shares };
}

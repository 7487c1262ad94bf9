/** Paper under even light gives 1 in every channel; less than this in one of them is no paper. */
const paperLeast = 0.82;
/** A dark part that covers so much of one side of the picture is the table, not a heap. */
const tableShare = 0.45;

/**
 * Which pixels are not paper (1), table at the picture's edge left out.
 *
 * @param even light of each pixel over that of the paper, 3 values a pixel
 */
export function beadMask(even: Float64Array, width: number, height: number): Uint8Array {
  const mask = new Uint8Array(width * height);
  for (let at = 0; at < mask.length; at++) {
    const least = Math.min(even[3 * at], even[3 * at + 1], even[3 * at + 2]);
    mask[at] = least < paperLeast ? 1 : 0;
  }
  removeTable(mask, width, height);
  return mask;
}

function removeTable(mask: Uint8Array, width: number, height: number): void {
  const seen = new Uint8Array(mask.length);
  const edge: number[] = [];
  for (let x = 0; x < width; x++) edge.push(x, (height - 1) * width + x);
  for (let y = 0; y < height; y++) edge.push(y * width, y * width + width - 1);
  for (const start of edge) {
    if (!mask[start] || seen[start]) continue;
    const part = flood(mask, seen, width, height, start);
    let [top, bottom, left, right] = [0, 0, 0, 0];
    for (const at of part) {
      const x = at % width;
      if (at < width) top++;
      if (at >= mask.length - width) bottom++;
      if (x === 0) left++;
      if (x === width - 1) right++;
    }
    const share = Math.max(Math.max(top, bottom) / width, Math.max(left, right) / height);
    if (share > tableShare) for (const at of part) mask[at] = 0;
  }
}

/** Every pixel of the part that holds `start`, by sides. */
function flood(
  mask: Uint8Array,
  seen: Uint8Array,
  width: number,
  height: number,
  start: number,
): number[] {
  const part = [start];
  seen[start] = 1;
  for (let next = 0; next < part.length; next++) {
    const at = part[next];
    const x = at % width;
    const around = [
      x > 0 ? at - 1 : -1,
      x < width - 1 ? at + 1 : -1,
      at - width,
      at < width * (height - 1) ? at + width : -1,
    ];
    for (const other of around) {
      if (other < 0 || seen[other] || !mask[other]) continue;
      seen[other] = 1;
      part.push(other);
    }
  }
  return part;
}

/** Takes away every pixel that has paper within `reach` pixels, along rows and columns. */
export function eroded(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  let from = mask;
  for (const step of [1, width]) {
    const to = new Uint8Array(from.length);
    const length = step === 1 ? width : height;
    const lines = step === 1 ? height : width;
    for (let line = 0; line < lines; line++) {
      const first = step === 1 ? line * width : line;
      let run = 0;
      for (let n = 0; n < length; n++) {
        run = from[first + n * step] ? run + 1 : 0;
        if (run > 2 * reach) to[first + (n - reach) * step] = 1;
      }
    }
    from = to;
  }
  return from;
}

/** Adds every pixel that has a bead within `reach` pixels, along rows and columns. */
export function dilated(
  mask: Uint8Array,
  width: number,
  height: number,
  reach: number,
): Uint8Array {
  let from = mask;
  for (const step of [1, width]) {
    const to = new Uint8Array(from.length);
    const length = step === 1 ? width : height;
    const lines = step === 1 ? height : width;
    for (let line = 0; line < lines; line++) {
      const first = step === 1 ? line * width : line;
      let until = -1;
      for (let n = 0; n < length + reach; n++) {
        if (n < length && from[first + n * step]) until = n + 2 * reach;
        const at = n - reach;
        if (at >= 0 && n <= until) to[first + at * step] = 1;
      }
    }
    from = to;
  }
  return from;
}

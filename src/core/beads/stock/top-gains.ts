/** Adds up gains of groups, as far as a limited number of stitches goes, largest gains first. */
export interface TopGains {
  clear(): void;
  /** Only gains above 0 count. */
  add(gain: number, stitches: number): void;
  /** The sum for at most `limit` stitches; the gains are used up. */
  sum(limit: number): number;
}

/** Makes room for `most` groups once, for many sums. */
export function topGains(most: number): TopGains {
  const gains = new Float64Array(most);
  const sizes = new Int32Array(most);
  let count = 0;
  let total = 0;
  let stitches = 0;
  return {
    clear() {
      count = total = stitches = 0;
    },
    add(gain, size) {
      gains[count] = gain;
      sizes[count++] = size;
      total += gain * size;
      stitches += size;
    },
    sum: (limit) => (stitches <= limit ? total : largest(gains, sizes, count, limit)),
  };
}

/** Quickselect with sizes: the first `limit` stitches in falling order of gain. */
function largest(gains: Float64Array, sizes: Int32Array, count: number, limit: number): number {
  const swap = (p: number, q: number) => {
    const [gain, size] = [gains[p], sizes[p]];
    gains[p] = gains[q];
    sizes[p] = sizes[q];
    gains[q] = gain;
    sizes[q] = size;
  };
  let [low, high] = [0, count];
  let left = limit;
  let sum = 0;
  while (low < high && left > 0) {
    const middle = gains[(low + high) >> 1];
    const [p, q] = [gains[low], gains[high - 1]];
    const pivot = Math.max(Math.min(p, q), Math.min(Math.max(p, q), middle));
    // low .. above - 1 lie above the pivot, above .. at - 1 on it, below .. high - 1 under it.
    let above = low;
    let below = high;
    let sumAbove = 0;
    let sizeAbove = 0;
    let sizeOn = 0;
    for (let at = low; at < below;) {
      if (gains[at] > pivot) {
        sumAbove += gains[at] * sizes[at];
        sizeAbove += sizes[at];
        swap(at++, above++);
      } else if (gains[at] < pivot) {
        swap(at, --below);
      } else sizeOn += sizes[at++];
    }
    if (sizeAbove >= left) {
      high = above;
      continue;
    }
    sum += sumAbove;
    left -= sizeAbove;
    sum += pivot * Math.min(left, sizeOn);
    left -= Math.min(left, sizeOn);
    low = below;
  }
  return sum;
}

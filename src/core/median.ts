/** The middle of values by size; of an even number of them the mean of the two in the middle. */
export function median(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/** One of the values: the middle by size, of an even number of them the upper one. */
export function upperMedian(values: ArrayLike<number>): number {
  return Float64Array.from(values).sort()[values.length >> 1];
}

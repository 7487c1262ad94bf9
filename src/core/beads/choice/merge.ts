/** Stitches of one colour count as one place with more weight, which makes drawings quick. */
export interface Places {
  /** L, a, b of each distinct colour, in order of first appearance; length 3·count. */
  readonly lab: Float64Array;
  /** Summed weight of each place; length count. */
  readonly weight: Float64Array;
  /** Place of each stitch; length n. */
  readonly placeOf: Int32Array;
  readonly count: number;
}

/** Merges equal colours (the very same numbers); `lab` 3·n, `weights` n. */
export function mergeEqual(lab: Float64Array, weights: Float64Array): Places {
  const n = weights.length;
  let slots = 16;
  while (slots < 2 * n) slots *= 2;
  const placeInSlot = new Int32Array(slots).fill(-1);
  const placeOf = new Int32Array(n);
  const merged = new Float64Array(3 * n);
  const weight = new Float64Array(n);
  let count = 0;
  for (let i = 0; i < n; i++) {
    const [L, a, b] = [lab[3 * i], lab[3 * i + 1], lab[3 * i + 2]];
    let slot = slotOf(L, a, b) & (slots - 1);
    let place = placeInSlot[slot];
    while (
      place >= 0 &&
      (merged[3 * place] !== L || merged[3 * place + 1] !== a || merged[3 * place + 2] !== b)
    ) {
      slot = (slot + 1) & (slots - 1);
      place = placeInSlot[slot];
    }
    if (place < 0) {
      place = count++;
      placeInSlot[slot] = place;
      merged.set([L, a, b], 3 * place);
    }
    weight[place] += weights[i];
    placeOf[i] = place;
  }
  return { lab: merged.slice(0, 3 * count), weight: weight.slice(0, count), placeOf, count };
}

/** Mixes the millionths of three numbers into 32 bits. */
function slotOf(L: number, a: number, b: number): number {
  let hash = Math.imul(Math.round(L * 1e6), 0x9e3779b1);
  hash = Math.imul(hash ^ (hash >>> 15) ^ Math.round(a * 1e6), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13) ^ Math.round(b * 1e6), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}

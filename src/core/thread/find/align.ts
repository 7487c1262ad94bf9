/** One slip: what the list wants at a place, and what is there. */
export interface Edit {
  /** put in a missing bead; take out one too many; another colour; two neighbours swapped. */
  readonly kind: 'missing' | 'extra' | 'other' | 'swap';
  /** Beads of the list, and on the thread, before it. */
  readonly wantedAt: number;
  readonly gotAt: number;
  readonly wanted: string;
  readonly got: string;
}

/**
 * The fewest edits that make `got` into `wanted` (optimal string alignment), in order. Only a band
 * of cells around the diagonal is filled, twice as wide each time it is too narrow, so that work
 * grows with the number of slips and not with the square of the beads.
 *
 * @param options.most edits above which nothing is returned
 * @param options.freeEnd what `wanted` has left at its end costs nothing
 * @returns the edits, and how many beads of `wanted` they cover; undefined when there are more
 */
export function alignBeads(
  wanted: string,
  got: string,
  options: { most: number; freeEnd: boolean },
): { edits: Edit[]; wanted: number } | undefined {
  for (let band = 4; ; band *= 2) {
    const width = Math.min(band, options.most);
    const found = alignInBand(wanted, got, width, options.freeEnd);
    // Inside a band of this width no cheaper way can lie outside it.
    if (found && found.edits.length <= width) return found;
    if (width >= options.most) return undefined;
  }
}

enum Step {
  Same,
  Missing,
  Extra,
  Other,
  Swap,
}

function alignInBand(wanted: string, got: string, band: number, freeEnd: boolean) {
  const [n, m] = [wanted.length, got.length];
  if (!freeEnd && Math.abs(n - m) > band) return undefined;
  if (freeEnd && m - n > band) return undefined;
  const wide = 2 * band + 1;
  const far = 0x3fffffff;
  /** Row j of `got`, column i - j + band of `wanted`. */
  const cost = [new Int32Array(wide), new Int32Array(wide), new Int32Array(wide)];
  const steps = new Uint8Array((m + 1) * wide);
  let ended = { cost: far, at: -1 };
  for (let j = 0; j <= m; j++) {
    const [row, above, twoAbove] = [cost[j % 3], cost[(j + 2) % 3], cost[(j + 1) % 3]];
    for (let c = 0; c < wide; c++) {
      const i = j + c - band;
      row[c] = far;
      if (i < 0 || i > n) continue;
      if (i === 0 && j === 0) {
        row[c] = 0;
        continue;
      }
      let best = far;
      let step = Step.Same;
      if (i > 0 && j > 0) {
        const equal = wanted[i - 1] === got[j - 1];
        best = above[c] + (equal ? 0 : 1);
        step = equal ? Step.Same : Step.Other;
      }
      if (i > 1 && j > 1 && wanted[i - 1] === got[j - 2] && wanted[i - 2] === got[j - 1]) {
        const swapped = twoAbove[c] + 1;
        if (wanted[i - 1] !== wanted[i - 2] && swapped < best) {
          best = swapped;
          step = Step.Swap;
        }
      }
      if (c > 0 && row[c - 1] + 1 < best) {
        best = row[c - 1] + 1;
        step = Step.Missing;
      }
      if (j > 0 && c + 1 < wide && above[c + 1] + 1 < best) {
        best = above[c + 1] + 1;
        step = Step.Extra;
      }
      row[c] = Math.min(best, far);
      steps[j * wide + c] = step;
    }
    if (j < m) continue;
    for (let c = 0; c < wide; c++) {
      const i = m + c - band;
      if (i < 0 || i > n || (!freeEnd && i !== n)) continue;
      // Of equal ends the one with as many beads as were strung, or the nearest to it.
      const nearer = Math.abs(i - m) < Math.abs(ended.at - m);
      if (row[c] < ended.cost || (row[c] === ended.cost && nearer)) ended = { cost: row[c], at: i };
    }
  }
  if (ended.cost >= far) return undefined;
  return { edits: traced(wanted, got, steps, band, ended.at), wanted: ended.at };
}

function traced(wanted: string, got: string, steps: Uint8Array, band: number, end: number): Edit[] {
  const wide = 2 * band + 1;
  const edits: Edit[] = [];
  let [i, j] = [end, got.length];
  while (i > 0 || j > 0) {
    const step: Step = steps[j * wide + (i - j + band)];
    const [di, dj] =
      step === Step.Missing
        ? [1, 0]
        : step === Step.Extra
          ? [0, 1]
          : step === Step.Swap
            ? [2, 2]
            : [1, 1];
    i -= di;
    j -= dj;
    if (step === Step.Same) continue;
    const kind = (['missing', 'extra', 'other', 'swap'] as const)[step - 1];
    edits.push({
      kind,
      wantedAt: i,
      gotAt: j,
      wanted: wanted.slice(i, i + di),
      got: got.slice(j, j + dj),
    });
  }
  return edits.reverse();
}

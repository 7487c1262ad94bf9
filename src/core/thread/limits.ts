/** What may be asked for of a thread; `keptThread` says what a file may hold. */
export const threadLimits = {
  lengthBeads: { least: 1, most: 100_000 },
  lengthM: { least: 0.05, most: 50 },
  perStitchMm: { least: 2, most: 500 },
  diameterMm: { least: 0.05, most: 5 },
  tex: { least: 1, most: 2000 },
  reservePercent: { least: 0, most: 200 },
  spoolM: { least: 1, most: 100_000 },
  spoolPrice: { least: 0, most: 1_000_000 },
  hookMm: { least: 0.3, most: 25 },
} as const;

/** The most that a file may hold: wider, for what was measured or written by another hand. */
export const keptThread = {
  diameterMm: 5,
  tex: 10_000,
  perStitchMm: 1000,
  beadLengthMm: 50,
  reservePercent: 1000,
  tailMm: 10_000,
  spoolMm: 100_000_000,
  hookMm: 25,
} as const;

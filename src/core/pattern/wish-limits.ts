/** Smallest and largest numbers that a pattern can be asked for with; `wished.ts` says what they are. */
export const wishLimits = {
  colours: { least: 1, most: 24 },
  inkPercent: { least: 1, most: 100 },
  detail: { least: 0, most: 1 },
  edges: { least: 0, most: 1 },
  lift: { least: 0, most: 1 },
  tidyPercent: { least: 0, most: 100 },
  dither: { least: 0, most: 1 },
  zoom: { least: 0.01, most: 100 },
  /** Each way. */
  shiftMm: { least: -1000, most: 1000 },
  degrees: { least: -3600, most: 3600 },
  /** Under a frame. */
  bareRounds: { least: 0, most: 20 },
} as const;

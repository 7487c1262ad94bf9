/** Smallest and largest numbers the shape may hold; the options and the schemas use the same. */
export const shapeLimits = {
  wedges: { least: 3, most: 12 },
  rounds: { least: 2, most: 80 },
  lean: { least: -1, most: 1 },
  /** Width and height of a stitch, and diameter of a bead; a file may hold less. */
  stitchMm: { least: 0.1, most: 50 },
} as const;

/**
 * A picture as pixels: upright, sRGB, rows from the top, 4 bytes a pixel (red, green, blue, alpha,
 * not premultiplied); length 4·width·height.
 */
export interface Picture {
  /** Pixels, 1 or more. */
  readonly width: number;
  /** Pixels, 1 or more. */
  readonly height: number;
  /** Red, green, blue and alpha from 0 to 255, row by row. */
  readonly data: Uint8Array | Uint8ClampedArray;
}

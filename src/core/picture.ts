/**
 * A picture as pixels: upright, sRGB, rows from the top, 4 bytes a pixel (red, green, blue, alpha,
 * not premultiplied); length 4·width·height.
 */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Uint8ClampedArray;
}

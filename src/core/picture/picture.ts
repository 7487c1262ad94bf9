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

/** Whether no pixel of RGBA data lets anything through. */
export function isOpaque(data: Picture['data']): boolean {
  for (let p = 3; p < data.length; p += 4) if (data[p] !== 255) return false;
  return true;
}

/** Width and height in pixels, as they are stored. */
export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

import sharp from 'sharp';
import { noise, toCode } from './coloured-page.js';
import type { Rgb } from './coloured-page.js';

/** A camera over a page on a table; angles in degrees, lengths in page heights. */
export interface Camera {
  /** Pixels of the photograph. */
  readonly width: number;
  readonly height: number;
  /** How far the page leans away, about its horizontal and its vertical middle line. */
  readonly pitch: number;
  readonly yaw: number;
  /** How the page is turned in the picture, clockwise. */
  readonly roll: number;
  readonly distance: number;
  /** Focal length over the picture's height. */
  readonly focal: number;
  /** Linear light of the table, red, green, blue. */
  readonly table: readonly [number, number, number];
  /** Colour of the light. */
  readonly lamp: readonly [number, number, number];
  /** Fall of light over the picture along x and y, and toward its corners: 0.3 is 30 % darker. */
  readonly fallX: number;
  readonly fallY: number;
  readonly corners: number;
  /** Gaussian blur, standard deviation in pixels; noise in codes; JPEG quality 1 to 100. */
  readonly blur: number;
  readonly grain: number;
  readonly quality: number;
}

/**
 * A JPEG of a page by the pinhole model: every pixel's ray is cut with the plane of the page, in
 * three dimensions, so that nothing here uses the reader's own algebra.
 */
export async function photograph(page: Rgb, camera: Camera): Promise<Uint8Array> {
  const { width, height } = camera;
  const [p, w, r] = [camera.pitch, camera.yaw, camera.roll].map((d) => (d * Math.PI) / 180);
  // Rotation = about z (roll), then y (yaw), then x (pitch); its columns carry the page's axes.
  const rotate = (x: number, y: number): [number, number, number] => {
    const [x1, y1] = [x * Math.cos(r) - y * Math.sin(r), x * Math.sin(r) + y * Math.cos(r)];
    const [x2, z2] = [x1 * Math.cos(w), -x1 * Math.sin(w)];
    return [x2, y1 * Math.cos(p) - z2 * Math.sin(p), y1 * Math.sin(p) + z2 * Math.cos(p)];
  };
  const right = rotate(1, 0);
  const down = rotate(0, 1);
  const normal = [
    right[1] * down[2] - right[2] * down[1],
    right[2] * down[0] - right[0] * down[2],
    right[0] * down[1] - right[1] * down[0],
  ];
  const d = camera.distance;
  const data = Buffer.alloc(3 * width * height);
  for (let v = 0; v < height; v++) {
    for (let u = 0; u < width; u++) {
      const rx = (u + 0.5 - width / 2) / (camera.focal * height);
      const ry = (v + 0.5 - height / 2) / (camera.focal * height);
      const t = (normal[2] * d) / (normal[0] * rx + normal[1] * ry + normal[2]);
      const [hx, hy, hz] = [t * rx, t * ry, t - d];
      const x = (hx * right[0] + hy * right[1] + hz * right[2]) * page.height + page.width / 2;
      const y = (hx * down[0] + hy * down[1] + hz * down[2]) * page.height + page.height / 2;
      const [sx, sy] = [u / width, v / height];
      const fromMiddle = ((sx - 0.5) ** 2 + (sy - 0.5) ** 2) * 2;
      const shade =
        (1 - camera.fallX * sx) * (1 - camera.fallY * sy) * (1 - camera.corners * fromMiddle);
      for (let c = 0; c < 3; c++) {
        const seen = lookUp(page, x, y, c) ?? camera.table[c];
        const code = toCode(seen * shade * camera.lamp[c]);
        data[3 * (v * width + u) + c] = Math.max(0, Math.min(255, Math.round(code)));
      }
    }
  }
  const raw = { raw: { width, height, channels: 3 } } as const;
  const blurred =
    camera.blur >= 0.3 ? await sharp(data, raw).blur(camera.blur).raw().toBuffer() : data;
  for (let n = 0; n < blurred.length; n++) {
    const shift = camera.grain * 2 * (noise(n, 3, 5) + noise(n, 4, 9) - 1);
    blurred[n] = Math.max(0, Math.min(255, Math.round(blurred[n] + shift)));
  }
  return sharp(blurred, raw).jpeg({ quality: camera.quality }).toBuffer();
}

function lookUp({ width, height, light }: Rgb, x: number, y: number, c: number) {
  if (!(x >= 0 && y >= 0 && x < width && y < height)) return undefined;
  const left = Math.max(0, Math.min(width - 2, Math.floor(x - 0.5)));
  const top = Math.max(0, Math.min(height - 2, Math.floor(y - 0.5)));
  const fx = Math.max(0, Math.min(1, x - 0.5 - left));
  const fy = Math.max(0, Math.min(1, y - 0.5 - top));
  const at = (dx: number, dy: number) => light[3 * ((top + dy) * width + left + dx) + c];
  return (
    (at(0, 0) * (1 - fx) + at(1, 0) * fx) * (1 - fy) + (at(0, 1) * (1 - fx) + at(1, 1) * fx) * fy
  );
}

import { parseHex } from '../../core/colour/hex.js';
import { beadInk, beadShine } from '../../core/pages/worked/bead-light.js';
import type { BeadSpot } from '../../core/pages/worked/bead-light.js';
import { glossOf } from '../../core/pages/worked/gloss.js';
import type { BeadLook } from '../../core/pages/worked/recolour-beads.js';

let lit:
  { of: string; ink: ReturnType<typeof beadInk>; shine: ReturnType<typeof beadShine> } | undefined;

/** How a bead takes the light: worked out once for a heap, not for each of its beads. */
function lightOf({ hex, finish }: BeadLook) {
  const of = `${hex} ${finish ?? ''}`;
  if (lit?.of !== of) {
    const gloss = glossOf(finish);
    const ink = beadInk(parseHex(hex) ?? [128, 128, 128], gloss);
    lit = { of, ink, shine: beadShine(gloss) };
  }
  return lit;
}

/** A transparent ground, RGBA, that beads are painted on one over the other. */
export class BeadGround {
  readonly data: Uint8ClampedArray<ArrayBuffer>;

  constructor(
    readonly width: number,
    readonly height: number,
  ) {
    this.data = new Uint8ClampedArray(4 * width * height);
  }

  /** Darkens the ground below a bead, to the lower right. */
  shadow({ x, y, halfAlong, halfAcross }: BeadSpot): void {
    const radius = (halfAlong + halfAcross) * 0.66;
    const cx = x + radius * 0.18;
    const cy = y + radius * 0.34;
    for (
      let py = Math.max(0, Math.floor(cy - radius));
      py < Math.min(this.height, cy + radius);
      py++
    ) {
      for (
        let px = Math.max(0, Math.floor(cx - radius));
        px < Math.min(this.width, cx + radius);
        px++
      ) {
        const far = ((px + 0.5 - cx) ** 2 + (py + 0.5 - cy) ** 2) / radius ** 2;
        if (far < 1) this.mix(py * this.width + px, 0, 0, 0, 0.5 * (1 - far));
      }
    }
  }

  bead(look: BeadLook, spot: BeadSpot): void {
    const { ink, shine } = lightOf(look);
    shine(this, spot, (at, cover, own, added) => {
      this.mix(at, ink(own, added, 0), ink(own, added, 1), ink(own, added, 2), cover);
    });
  }

  /** Source over, not premultiplied (Compositing and Blending 1, section 9.1.4). */
  private mix(pixel: number, r: number, g: number, b: number, alpha: number): void {
    const at = 4 * pixel;
    const { data } = this;
    const below = (data[at + 3] / 255) * (1 - alpha);
    const all = alpha + below;
    if (all === 0) return;
    data[at] = (r * alpha + data[at] * below) / all;
    data[at + 1] = (g * alpha + data[at + 1] * below) / all;
    data[at + 2] = (b * alpha + data[at + 2] * below) / all;
    data[at + 3] = 255 * all;
  }

  canvas(): HTMLCanvasElement {
    const canvas = document.createElement('canvas');
    canvas.width = this.width;
    canvas.height = this.height;
    canvas.getContext('2d')!.putImageData(new ImageData(this.data, this.width), 0, 0);
    return canvas;
  }
}

const sprites = new Map<string, HTMLCanvasElement>();

/** One bead as it lies on the thread, the hole along the row; kept by its look and size. */
export function beadSprite(look: BeadLook, sizePx: number): HTMLCanvasElement {
  const key = `${look.hex} ${look.finish ?? ''} ${sizePx}`;
  let sprite = sprites.get(key);
  if (!sprite) {
    const ground = new BeadGround(sizePx, sizePx);
    const half = sizePx / 2;
    const spot = {
      x: half,
      y: half,
      halfAlong: half * 0.84,
      halfAcross: half * 0.94,
      alongX: 1,
      alongY: 0,
      dimple: 0.6,
    };
    ground.bead(look, spot);
    sprite = ground.canvas();
    sprites.set(key, sprite);
  }
  return sprite;
}

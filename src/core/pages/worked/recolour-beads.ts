import { parseHex } from '../../colour/hex.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { beadShine, codeOf, inkParts } from './bead-light.js';
import { glossOf, lookOf } from './gloss.js';
import type { Gloss } from './gloss.js';
import type { KeptLight } from './kept-light.js';
import { strandGloss, strandRgb, workedSpots } from './worked.js';

/** What a bead's picture hangs on. */
export interface BeadLook {
  readonly hex: string;
  readonly finish?: string | undefined;
}

/** A worked picture whose beads can be coloured again. */
export interface RecolouredBeads {
  /** RGBA of the square picture, the same bytes as `renderWorked` gives. */
  readonly data: Uint8ClampedArray;
  /**
   * Gives every stitch its bead; only what differs from before is painted.
   *
   * @param beadOf index into `beads` by stitch, or `bare`
   * @param most stitches to paint at most; asked again, it goes on with the rest
   * @returns stitches that were painted
   */
  paint(beadOf: ArrayLike<number>, beads: readonly BeadLook[], most?: number): number;
  /** The pixels that the last painting may have changed. */
  painted(): PaintedBox;
}

/** Whole pixels of a picture. */
export interface PaintedBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Stitches up to which their own box is worth looking for. */
const mostBoxed = 400;

/** What lies on a stitch that was not painted yet, and on a bare one; from then on come the looks of beads. */
const [none, bareLook] = [0, 1];

/** Colours the beads of a panel by its kept light. */
export function recolourBeads(geometry: PanelGeometry, light: KeptLight): RecolouredBeads {
  const { widthPx, count, from, stitch, pixel, cover, shared, sharedFrom, sharedEntry } = light;
  const { own, added, ground } = light;
  const data = ground.slice();
  const spots = workedSpots(geometry, widthPx);
  const size = { width: widthPx, height: widthPx };
  const glossAt = new Array<string>(count).fill('glossy');
  const shines = new Map<string, ReturnType<typeof beadShine>>();
  /** Numbers of the looks that were met; what each of them multiplies own and added light by, r, g, b each. */
  const lookNumbers = new Map<string, number>();
  const parts: Float64Array[] = [];
  const lookAt = new Uint16Array(count).fill(none);
  const mixed = new Uint8ClampedArray(3);
  const isDirty = new Uint8Array(sharedFrom.length - 1);
  const dirty: number[] = [];
  const changed: number[] = [];
  parts[bareLook] = partsOf(strandRgb, strandGloss);

  function lookNumber({ hex, finish }: BeadLook): number {
    const key = `${hex} ${finish ?? ''}`;
    let number = lookNumbers.get(key);
    if (number === undefined) {
      number = bareLook + 1 + lookNumbers.size;
      lookNumbers.set(key, number);
      parts[number] = partsOf(parseHex(hex) ?? [128, 128, 128], glossOf(finish));
    }
    return number;
  }

  /** The light of another finish falls on the same pixels. */
  function shineAs(s: number, finish: string | undefined): void {
    const look = lookOf(finish);
    if (glossAt[s] === look) return;
    glossAt[s] = look;
    let shine = shines.get(look);
    if (!shine) shines.set(look, (shine = beadShine(glossOf(finish))));
    let e = from[2 * s];
    shine(size, spots(s), (_pixel, _cover, o, a) => {
      own[e] = o;
      added[e++] = a;
    });
  }

  function mix(n: number): void {
    const at = 4 * pixel[sharedEntry[sharedFrom[n]]];
    mixed[0] = ground[at];
    mixed[1] = ground[at + 1];
    mixed[2] = ground[at + 2];
    for (let k = sharedFrom[n]; k < sharedFrom[n + 1]; k++) {
      const e = sharedEntry[k];
      const s = stitch[e];
      const look = lookAt[s];
      if (look === none || (look === bareLook) !== e >= from[2 * s + 1]) continue;
      const part = parts[look];
      const share = cover[e];
      const o = own[e];
      const a = added[e];
      const red = codeOf(part[0] * o + a * part[3]);
      const green = codeOf(part[1] * o + a * part[4]);
      const blue = codeOf(part[2] * o + a * part[5]);
      if (share === 1) {
        mixed[0] = red;
        mixed[1] = green;
        mixed[2] = blue;
      } else {
        mixed[0] += (red - mixed[0]) * share;
        mixed[1] += (green - mixed[1]) * share;
        mixed[2] += (blue - mixed[2]) * share;
      }
    }
    data[at] = mixed[0];
    data[at + 1] = mixed[1];
    data[at + 2] = mixed[2];
  }

  /** Paints the pixels that stitch s shares with no other, and notes the others. */
  function paintOwn(s: number): void {
    const look = lookAt[s];
    const part = parts[look];
    const firstBare = from[2 * s + 1];
    for (let e = from[2 * s]; e < from[2 * s + 2]; e++) {
      const n = shared[pixel[e]];
      if (n >= 0) {
        if (isDirty[n] === 0) dirty.push(n);
        isDirty[n] = 1;
        continue;
      }
      const at = 4 * pixel[e];
      if (e >= firstBare === (look === bareLook)) {
        const o = own[e];
        const a = added[e];
        data[at] = codeOf(part[0] * o + a * part[3]);
        data[at + 1] = codeOf(part[1] * o + a * part[4]);
        data[at + 2] = codeOf(part[2] * o + a * part[5]);
      } else {
        data[at] = ground[at];
        data[at + 1] = ground[at + 1];
        data[at + 2] = ground[at + 2];
      }
    }
  }

  return {
    data,
    paint(beadOf, beads, most = count) {
      const numbers = beads.map(lookNumber);
      changed.length = 0;
      for (let s = 0; s < count && changed.length < most; s++) {
        const look = numbers[beadOf[s]] ?? bareLook;
        if (look === lookAt[s]) continue;
        lookAt[s] = look;
        changed.push(s);
        if (look !== bareLook) shineAs(s, beads[beadOf[s]].finish);
        paintOwn(s);
      }
      for (const n of dirty) {
        isDirty[n] = 0;
        mix(n);
      }
      dirty.length = 0;
      return changed.length;
    },
    painted() {
      if (changed.length > mostBoxed) return { left: 0, top: 0, width: widthPx, height: widthPx };
      let [left, top, right, bottom] = [widthPx, widthPx, -1, -1];
      for (const s of changed) {
        for (let e = from[2 * s]; e < from[2 * s + 2]; e++) {
          const x = pixel[e] % widthPx;
          const y = (pixel[e] - x) / widthPx;
          left = Math.min(left, x);
          right = Math.max(right, x);
          top = Math.min(top, y);
          bottom = Math.max(bottom, y);
        }
      }
      if (right < 0) return { left: 0, top: 0, width: 0, height: 0 };
      return { left, top, width: right - left + 1, height: bottom - top + 1 };
    },
  };
}

/** What a colour and finish multiply own and added light by: r, g, b of the first, then of the second. */
function partsOf(rgb: readonly [number, number, number], gloss: Gloss): Float64Array {
  const { body, tinted } = inkParts(rgb, gloss);
  return Float64Array.from([...body, ...tinted]);
}

import { bare } from '../../beads/bead.js';
import { parseHex } from '../../colour/hex.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { beadInk, beadShine } from './bead-light.js';
import { glossOf, lookOf } from './gloss.js';
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

const none = '';
const bareKey = 'bare';

/** Colours the beads of a panel by its kept light. */
export function recolourBeads(geometry: PanelGeometry, light: KeptLight): RecolouredBeads {
  const { widthPx, count, from, stitch, pixel, cover, shared, sharedFrom, sharedEntry } = light;
  const own = light.own;
  const added = light.added;
  const data = light.ground.slice();
  const spots = workedSpots(geometry, widthPx);
  const size = { width: widthPx, height: widthPx };
  const keyOf = new Array<string>(count).fill(none);
  const lookAt = new Array<string>(count).fill('glossy');
  const inks = new Map<string, ReturnType<typeof beadInk>>();
  const inkOf = new Array<ReturnType<typeof beadInk>>(count);
  const shines = new Map<string, ReturnType<typeof beadShine>>();
  const strand = beadInk(strandRgb, strandGloss);
  const mixed = new Uint8ClampedArray(3);
  const isDirty = new Uint8Array(sharedFrom.length - 1);
  const dirty: number[] = [];
  const changed: number[] = [];

  /** The light of another finish falls on the same pixels. */
  function shineAs(s: number, finish: string | undefined): void {
    const look = lookOf(finish);
    if (lookAt[s] === look) return;
    lookAt[s] = look;
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
    for (let c = 0; c < 3; c++) mixed[c] = light.ground[at + c];
    for (let k = sharedFrom[n]; k < sharedFrom[n + 1]; k++) {
      const e = sharedEntry[k];
      const s = stitch[e];
      if (keyOf[s] === none || (keyOf[s] === bareKey) !== e >= from[2 * s + 1]) continue;
      const ink = inkOf[s];
      for (let c = 0; c < 3; c++) {
        const code = ink(own[e], added[e], c);
        mixed[c] = cover[e] === 1 ? code : mixed[c] + (code - mixed[c]) * cover[e];
      }
    }
    for (let c = 0; c < 3; c++) data[at + c] = mixed[c];
  }

  return {
    data,
    paint(beadOf, beads, most = count) {
      const keys = beads.map(({ hex, finish }) => `${hex} ${finish ?? ''}`);
      changed.length = 0;
      for (let s = 0; s < count && changed.length < most; s++) {
        const bead = beads[beadOf[s]];
        const key = beadOf[s] === bare || !bead ? bareKey : keys[beadOf[s]];
        if (key === keyOf[s]) continue;
        keyOf[s] = key;
        changed.push(s);
        if (key === bareKey) inkOf[s] = strand;
        else {
          shineAs(s, bead.finish);
          let ink = inks.get(key);
          if (!ink) {
            ink = beadInk(parseHex(bead.hex) ?? [128, 128, 128], glossOf(bead.finish));
            inks.set(key, ink);
          }
          inkOf[s] = ink;
        }
        const ink = inkOf[s];
        for (let e = from[2 * s]; e < from[2 * s + 2]; e++) {
          const n = shared[pixel[e]];
          if (n >= 0) {
            if (isDirty[n] === 0) dirty.push(n);
            isDirty[n] = 1;
          } else {
            const at = 4 * pixel[e];
            const covers = e >= from[2 * s + 1] === (key === bareKey);
            for (let c = 0; c < 3; c++) {
              data[at + c] = covers ? ink(own[e], added[e], c) : light.ground[at + c];
            }
          }
        }
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

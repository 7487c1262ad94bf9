import type { PanelGeometry } from '../../panel/geometry.js';
import { beadShine } from './bead-light.js';
import { looks } from './gloss.js';
import { bareLoops, strandGloss, workedGround, workedSpots } from './worked.js';

/**
 * The light of a worked picture without its colours, so that beads can be coloured again without
 * drawing the panel anew. Plain arrays, made once for a shape and a size; may be made elsewhere and
 * handed over. An entry is one pixel of one bead, or of one bare stitch.
 */
export interface KeptLight {
  readonly widthPx: number;
  readonly count: number;
  /** The cloth with the shadows of all beads, RGBA. */
  readonly ground: Uint8ClampedArray;
  /** Entries of the bead of stitch s: from[2s] up to from[2s + 1]; bare: on to from[2s + 2]. Length 2·count + 1. */
  readonly from: Uint32Array;
  /** Stitch of each entry. */
  readonly stitch: Uint16Array;
  /** Pixel of each entry. */
  readonly pixel: Uint32Array;
  /** Share of the pixel that is covered, by entry. */
  readonly cover: Float64Array;
  /** What the own light is multiplied by, by entry; of a bead as if it were glossy. */
  readonly own: Float64Array;
  /** Light that is added, by entry; of a bead as if it were glossy. */
  readonly added: Float64Array;
  /** By pixel: which of the shared pixels it is, or -1 where one whole bead or none lies on it. */
  readonly shared: Int32Array;
  /** Entries on shared pixel n, in the order of painting: those of `sharedEntry` from sharedFrom[n] on. */
  readonly sharedFrom: Uint32Array;
  readonly sharedEntry: Uint32Array;
}

/**
 * Works out the light of a panel (60 to 240 ms at 25 to 60 rounds).
 *
 * @param widthPx side of the square picture, pixels
 * @param withBare whether stitches may be bare; takes twice the room
 */
export function keepLight(geometry: PanelGeometry, widthPx: number, withBare: boolean): KeptLight {
  const { count } = geometry;
  const size = { width: widthPx, height: widthPx };
  const spots = workedSpots(geometry, widthPx);
  const from = new Uint32Array(2 * count + 1);
  const bead = beadShine(looks.glossy);
  const strand = beadShine(strandGloss);
  const on = new Uint8Array(widthPx * widthPx);
  const entries = new Entries(Math.ceil(widthPx * widthPx * (withBare ? 2 : 1)));
  for (let s = 0; s < count; s++) {
    const take = (pixel: number, cover: number, own: number, added: number) => {
      entries.push(s, pixel, cover, own, added);
    };
    bead(size, spots(s), take);
    from[2 * s + 1] = entries.length;
    if (withBare) for (const loop of bareLoops(spots(s))) strand(size, loop, take);
    from[2 * s + 2] = entries.length;
  }
  const { stitch, pixel, cover, own, added } = entries.done();
  for (let e = 0; e < pixel.length; e++) {
    // A pixel that one bead covers whole and nothing else touches is painted straight away.
    const alone = cover[e] === 1 && on[pixel[e]] === 0;
    on[pixel[e]] = alone ? 1 : 2;
  }
  const shared = new Int32Array(on.length).fill(-1);
  let sharedCount = 0;
  on.forEach((how, p) => {
    if (how === 2) shared[p] = sharedCount++;
  });
  const sharedFrom = new Uint32Array(sharedCount + 1);
  for (const p of pixel) if (shared[p] >= 0) sharedFrom[shared[p] + 1]++;
  for (let n = 0; n < sharedCount; n++) sharedFrom[n + 1] += sharedFrom[n];
  const next = sharedFrom.slice();
  const sharedEntry = new Uint32Array(sharedFrom[sharedCount]);
  pixel.forEach((p, e) => {
    if (shared[p] >= 0) sharedEntry[next[shared[p]]++] = e;
  });
  const { data: ground } = workedGround(geometry, widthPx);
  return {
    widthPx,
    count,
    ground,
    from,
    stitch,
    pixel,
    cover,
    own,
    added,
    shared,
    sharedFrom,
    sharedEntry,
  };
}

/** Five columns that grow together. */
class Entries {
  length = 0;
  private columns;

  constructor(room: number) {
    this.columns = columnsOf(Math.max(16, room));
  }

  push(stitch: number, pixel: number, cover: number, own: number, added: number): void {
    if (this.length === this.columns.stitch.length) this.grow();
    const at = this.length++;
    this.columns.stitch[at] = stitch;
    this.columns.pixel[at] = pixel;
    this.columns.cover[at] = cover;
    this.columns.own[at] = own;
    this.columns.added[at] = added;
  }

  done() {
    const { stitch, pixel, cover, own, added } = this.columns;
    const to = this.length;
    return {
      stitch: stitch.slice(0, to),
      pixel: pixel.slice(0, to),
      cover: cover.slice(0, to),
      own: own.slice(0, to),
      added: added.slice(0, to),
    };
  }

  private grow(): void {
    const larger = columnsOf(Math.ceil(this.length * 1.5));
    larger.stitch.set(this.columns.stitch);
    larger.pixel.set(this.columns.pixel);
    larger.cover.set(this.columns.cover);
    larger.own.set(this.columns.own);
    larger.added.set(this.columns.added);
    this.columns = larger;
  }
}

function columnsOf(room: number) {
  return {
    stitch: new Uint16Array(room),
    pixel: new Uint32Array(room),
    cover: new Float64Array(room),
    own: new Float64Array(room),
    added: new Float64Array(room),
  };
}

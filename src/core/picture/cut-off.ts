import { finishedEdge } from '../panel/edge.js';
import type { Footprints } from '../panel/footprints.js';
import type { PanelGeometry } from '../panel/geometry.js';
import { ringList } from '../panel/ring-list.js';
import type { Place } from './sampling/place.js';
import { makeCoverage } from './sampling/coverage.js';
import { panelToPicture } from './sampling/place.js';
import { cellRing } from './sampling/repeat.js';
import type { Subject } from './subject.js';

/** Shares of a picture's subject that do not show on the panel, 0 to 1. */
export interface CutOff {
  /** Beyond the rim; of a repeated motif, beyond its wedge. */
  readonly beyondRim: number;
  /** On stitches that stay bare under the frame. */
  readonly underFrame: number;
}

/** A panel, how the picture lies on it, and which stitches a frame bares. */
export interface LaidOn {
  readonly geometry: PanelGeometry;
  readonly footprints: Footprints;
  readonly place: Place;
  /** 1 for every stitch under the frame, in working order. */
  readonly underFrame?: Uint8Array | undefined;
}

/**
 * How much of a picture's subject is cut off, exactly, by area on the subject's raster.
 *
 * @param picture pixels of the upright picture, to which the place belongs
 */
export function cutOff(
  subject: Subject,
  picture: { width: number; height: number },
  { geometry, footprints, place, underFrame }: LaidOn,
): CutOff {
  const { width, height, mask } = subject;
  const toPicture = panelToPicture(place, picture);
  const [across, down] = [width / picture.width, height / picture.height];
  const toSubject = toPicture.map((value, n) => value * (n % 2 === 0 ? across : down));
  const coverRings = makeCoverage(subject, toSubject);
  const onSubject = (rings: readonly Float64Array[]): number => {
    const { count, pixel, length, area } = coverRings(ringList(rings), 0, rings.length);
    let covered = 0;
    for (let n = 0; n < count; n++) {
      for (let p = pixel[n]; p < pixel[n] + length[n]; p++) if (mask[p] === 1) covered += area[n];
    }
    return covered;
  };
  const all = mask.reduce((total, one) => total + one, 0);
  if (all === 0) return { beyondRim: 0, underFrame: 0 };
  const shown = place.repeat ? wedgeRings(geometry) : [[finishedEdge(geometry)]];
  const inside = shown.reduce((total, rings) => total + onSubject(rings), 0);
  let bare = 0;
  if (!place.repeat) {
    underFrame?.forEach((one, s) => (bare += one ? onSubject(footprints.rings(s)) : 0));
  }
  return { beyondRim: share(1 - inside / all), underFrame: share(bare / all) };
}

/** The rows of cells that a repeated motif lies on, each one ring. */
function wedgeRings({ shape, direction }: PanelGeometry): Float64Array[][] {
  return Array.from({ length: shape.rounds }, (_, n) => {
    const cells = [0, n].map((j) => cellRing(shape, direction, n + 1, j));
    const xs = cells.flatMap((ring) => [ring[0], ring[2]]);
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    const [top, bottom] = [cells[0][1], cells[0][5]];
    return [Float64Array.of(left, top, right, top, right, bottom, left, bottom)];
  });
}

/** Coverage adds up to nine digits: what is that near to nothing is nothing. */
function share(part: number): number {
  return part < 1e-6 ? 0 : Math.min(1, part);
}

import { bare } from '../../core/beads/bead.js';
import type { BeadOfStitch } from '../../core/beads/bead.js';
import { acrossMm } from '../../core/panel/edge.js';
import type { PanelGeometry } from '../../core/panel/geometry.js';
import type { Chart } from '../store/chart.js';

/** Pixels across. */
const sidePx = 220;
/** A smaller bead looks the same as a square, which is drawn many times as fast. */
const roundFromPx = 2.5;

const drawn = new WeakMap<Chart, Promise<Blob | undefined>>();

/** The first panel, small, as a PNG for the shelf; undefined where the browser draws none. Drawn once a chart. */
export function shelfLook(chart: Chart): Promise<Blob | undefined> {
  let look = drawn.get(chart);
  if (!look) drawn.set(chart, (look = drawLook(chart)));
  return look;
}

const drawLook = ({ panels, beads }: Chart): Promise<Blob | undefined> =>
  panelLook(panels[0].geometry, panels[0].beadOf, beads, sidePx);

/** A panel, so many pixels wide, as a PNG. */
export async function panelLook(
  geometry: PanelGeometry,
  beadOf: BeadOfStitch,
  beads: readonly { readonly hex: string }[],
  widthPx: number,
): Promise<Blob | undefined> {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = widthPx;
  const pen = canvas.getContext('2d');
  if (!pen) return undefined;
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  const pxPerMm = (0.94 * widthPx) / acrossMm(geometry.shape);
  const radius = Math.max(1, 0.52 * pxPerMm * Math.max(stitchWidthMm, roundHeightMm));
  pen.translate(widthPx / 2, widthPx / 2);
  for (let s = 0; s < geometry.count; s++) {
    const bead = beadOf[s];
    if (bead === bare || bead < 0) continue;
    pen.fillStyle = beads[bead].hex;
    const [x, y] = [geometry.centres[2 * s] * pxPerMm, geometry.centres[2 * s + 1] * pxPerMm];
    if (radius < roundFromPx) {
      pen.fillRect(x - radius, y - radius, 2 * radius, 2 * radius);
      continue;
    }
    pen.beginPath();
    pen.arc(x, y, radius, 0, 2 * Math.PI);
    pen.fill();
  }
  return new Promise((done) => canvas.toBlob((blob) => done(blob ?? undefined), 'image/png'));
}

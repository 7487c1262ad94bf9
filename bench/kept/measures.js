// How like two views are. Edges are matched within a tolerance after D. Martin, C. Fowlkes and
// J. Malik, "Learning to detect natural image boundaries", IEEE PAMI 26(5), 2004, simplified: an
// edge pixel counts as found when any edge of the other view lies near. The gradient of a colour
// picture is S. Di Zenzo's, "A note on the gradient of a multi-image", CVGIP 33, 1986; edges are thinned
// as by J. Canny, IEEE PAMI 8(6), 1986. SSIM: Z. Wang and others, IEEE TIP 13(4), 2004, of greys, by
// ssim.js. Colours: CIEDE2000.
import { ssim } from 'ssim.js';
import { ciede2000Fast } from '../../dist/core/colour/ciede2000.js';
import { pxPerStitch } from './views.js';

/** Lab difference per stitch from which a place is an edge. */
const edgeFrom = 8;
/** Lab difference per stitch from which an edge of one view answers one of the other: half of that. */
const answersFrom = 4;
/** How far apart they may lie, stitches. */
const tolerance = 0.8;

/** @returns {{ ssim: number, recall: number, precision: number, f1: number, difference: number }} */
export function likeness(source, panel, canvas) {
  const { side, owner } = canvas;
  const inside = Array.from(owner.keys()).filter((p) => owner[p] >= 0);
  const map = ssim(rgba(source.srgb, side), rgba(panel.srgb, side), {
    downsample: false,
    ssim: 'fast',
  });
  const difference =
    inside.reduce((sum, p) => sum + apart(source.lab, panel.lab, p), 0) / inside.length;
  const strong = (view, from) => edges(view.lab, canvas, from);
  const share = (of, among) => {
    const near = grown(among, side, tolerance * pxPerStitch);
    let [found, all] = [0, 0];
    of.forEach((is, p) => {
      if (!is) return;
      all++;
      found += near[p];
    });
    return all === 0 ? 1 : found / all;
  };
  const recall = share(strong(source, edgeFrom), strong(panel, answersFrom));
  const precision = share(strong(panel, edgeFrom), strong(source, answersFrom));
  const f1 = (2 * recall * precision) / Math.max(1e-9, recall + precision);
  return { ssim: insideMean(map, canvas), recall, precision, f1, difference };
}

/** Mean of ssim.js's map over windows whose middle lies on the panel. */
function insideMean({ ssim_map: { data, width, height } }, { side, owner }) {
  const margin = (side - width) / 2;
  let [sum, count] = [0, 0];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const p = Math.round(y + margin) * side + Math.round(x + margin);
      if (owner[p] < 0) continue;
      sum += data[y * width + x];
      count++;
    }
  }
  return sum / count;
}

function rgba(srgb, side) {
  const data = new Uint8ClampedArray(4 * side * side).fill(255);
  for (let p = 0; p < side * side; p++) data.set(srgb.subarray(3 * p, 3 * p + 3), 4 * p);
  return { data, width: side, height: side };
}

function apart(one, other, p) {
  const [a, b] = [one, other];
  const k = 3 * p;
  return ciede2000Fast(a[k], a[k + 1], a[k + 2], b[k], b[k + 1], b[k + 2]);
}

/** Thinned edges that are strong enough; the rim itself is none. */
function edges(lab, { side, owner }, from) {
  const count = side * side;
  const strength = new Float64Array(count);
  const along = new Float64Array(count);
  // Differences over two pixels, said per stitch.
  const scale = pxPerStitch / 2;
  const near = Math.ceil(1.5 * pxPerStitch);
  const beyond = grown(
    Uint8Array.from(owner, (s) => (s < 0 ? 1 : 0)),
    side,
    near,
  );
  for (let y = 1; y < side - 1; y++) {
    for (let x = 1; x < side - 1; x++) {
      const p = y * side + x;
      if (beyond[p]) continue;
      let [xx, xy, yy] = [0, 0, 0];
      for (let c = 0; c < 3; c++) {
        const gx = scale * (lab[3 * (p + 1) + c] - lab[3 * (p - 1) + c]);
        const gy = scale * (lab[3 * (p + side) + c] - lab[3 * (p - side) + c]);
        xx += gx * gx;
        xy += gx * gy;
        yy += gy * gy;
      }
      strength[p] = Math.sqrt((xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2);
      along[p] = Math.atan2(2 * xy, xx - yy) / 2;
    }
  }
  return Uint8Array.from(strength, (here, p) => {
    if (here < from) return 0;
    const [dx, dy] = [Math.round(Math.cos(along[p])), Math.round(Math.sin(along[p]))];
    const step = dy * side + dx;
    return here >= strength[p + step] && here >= strength[p - step] ? 1 : 0;
  });
}

/** Every pixel within a distance of one that is set. */
function grown(set, side, reach) {
  const out = new Uint8Array(set.length);
  const far = Math.floor(reach);
  const steps = [];
  for (let dy = -far; dy <= far; dy++) {
    for (let dx = -far; dx <= far; dx++)
      if (dx * dx + dy * dy <= reach * reach) steps.push([dx, dy]);
  }
  set.forEach((is, p) => {
    if (!is) return;
    const [x, y] = [p % side, Math.floor(p / side)];
    for (const [dx, dy] of steps) {
      const [u, v] = [x + dx, y + dy];
      if (u >= 0 && v >= 0 && u < side && v < side) out[v * side + u] = 1;
    }
  });
  return out;
}

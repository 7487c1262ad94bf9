// Dark outlines of drawings: how many of them the beads still show, against the plain mean in linear
// light, from 20 to 60 cells across.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { chooseBeads } from '../dist/core/beads/choice/choose.js';
import { ciede2000 } from '../dist/core/colour/ciede2000.js';
import { linearToLab65 } from '../dist/core/colour/lab.js';
import { panelFootprints } from '../dist/core/panel/footprints.js';
import { panelGeometry } from '../dist/core/panel/geometry.js';
import { readPalette } from '../dist/core/beads/palette/read-palette.js';
import { toLinearRaster } from '../dist/core/picture/sampling/linear.js';
import { panelToPicture, placePicture } from '../dist/core/picture/sampling/place.js';
import { samplePanel } from '../dist/core/picture/sampling/sample.js';
import { completeShape } from '../dist/core/panel/shape.js';
import { readPicture } from '../dist/node/read/read-picture.js';

const drawings = ['kingfisher', 'barley-moon', 'lighthouse', 'pictures/rooster', 'pictures/sakura'];
const fixtures = new URL('../fixtures/', import.meta.url);
const palette = new URL('../palettes/drawers.csv', import.meta.url);
const { beads } = readPalette(readFileSync(palette, 'utf8'), 'drawers.csv');
const paletteLab = Float64Array.from(beads.flatMap(({ lab }) => lab));

/** Pixels that a stitch is across while we look. */
const pxPerStitch = 8;
/** Ink is at least so dark, and what surrounds it so much lighter; L*. */
const inkMost = 35;
const lighterBy = 20;
/** A line wider than this is an area; stitches. */
const widest = 1.5;
/** A colour further than this from every colour of the drawing is a stray, CIEDE2000. */
const strayFrom = 10;
/** Share of the drawing from which a colour is one of its colours. */
const ownShare = 0.004;

/**
 * Where a panel should show an outline: stitches that the middle line of a dark line crosses for at
 * least half a stitch, and L* halfway between its ink and what surrounds it.
 */
function outlineStitches(picture, { geometry, footprints, place }) {
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  const stitchPx = Math.sqrt(stitchWidthMm * roundHeightMm) / place.mmPerPixel;
  const { width, height, data } = toLinearRaster(picture, Math.max(1, stitchPx / pxPerStitch));
  const shrink = picture.width / width;
  const pitch = stitchPx / shrink;
  const light = Float64Array.from({ length: width * height }, (_, p) => {
    const rgb = [0, 1, 2].map((c) => data[4 * p + c] + 1 - data[4 * p + 3]);
    return linearToLab65(...rgb)[0];
  });
  const depth = depthIn(light, width, height);
  const [a, b, c, d, e, f] = panelToPicture(place, picture);
  const det = a * d - b * c;
  const crossed = new Map();
  for (let y = 1; y + 1 < height; y++) {
    for (let x = 1; x + 1 < width; x++) {
      const p = y * width + x;
      if (depth[p] === 0 || 2 * depth[p] > widest * pitch) continue;
      const ridge =
        (depth[p] > depth[p - 1] && depth[p] >= depth[p + 1]) ||
        (depth[p] > depth[p - width] && depth[p] >= depth[p + width]);
      if (!ridge) continue;
      const around = lightAround(light, width, height, x, y, Math.ceil(depth[p] + pitch / 2));
      if (around - light[p] < lighterBy) continue;
      const [u, v] = [(x + 0.5) * shrink - e, (y + 0.5) * shrink - f];
      const s = footprints.owner((d * u - c * v) / det, (a * v - b * u) / det);
      if (s < 0) continue;
      const seen = crossed.get(s) ?? { length: 0, half: 0 };
      seen.length += 1;
      seen.half += (around + light[p]) / 2;
      crossed.set(s, seen);
    }
  }
  return [...crossed]
    .filter(([, { length }]) => length >= pitch / 2)
    .map(([s, { length, half }]) => ({ s, halfL: half / length }));
}

/** Distance of each dark pixel from the nearest one that is not, in pixels (3-4 chamfer). */
function depthIn(light, width, height) {
  const depth = Float64Array.from(light, (L) => (L <= inkMost ? 1e9 : 0));
  const relax = (p, q, step) => (depth[p] = Math.min(depth[p], depth[q] + step));
  for (let y = 1; y + 1 < height; y++) {
    for (let x = 1; x + 1 < width; x++) {
      const p = y * width + x;
      relax(p, p - 1, 1);
      relax(p, p - width, 1);
      relax(p, p - width - 1, 4 / 3);
      relax(p, p - width + 1, 4 / 3);
    }
  }
  for (let y = height - 2; y > 0; y--) {
    for (let x = width - 2; x > 0; x--) {
      const p = y * width + x;
      relax(p, p + 1, 1);
      relax(p, p + width, 1);
      relax(p, p + width + 1, 4 / 3);
      relax(p, p + width - 1, 4 / 3);
    }
  }
  return depth;
}

/** Mean L* of what is not ink on a square ring around a pixel. */
function lightAround(light, width, height, x, y, reach) {
  let [sum, n] = [0, 0];
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++) {
      if (Math.max(Math.abs(dx), Math.abs(dy)) < reach) continue;
      const [u, v] = [x + dx, y + dy];
      if (u < 0 || v < 0 || u >= width || v >= height) continue;
      const L = light[v * width + u];
      if (L <= inkMost) continue;
      sum += L;
      n += 1;
    }
  }
  return n === 0 ? 0 : sum / n;
}

/** Labs of the colours that a drawing is made of. */
function coloursOf({ data }) {
  const uses = new Map();
  for (let p = 0; p < data.length; p += 4) {
    const rgb = data[p + 3] === 0 ? 0xffffff : (data[p] << 16) | (data[p + 1] << 8) | data[p + 2];
    uses.set(rgb, (uses.get(rgb) ?? 0) + 1);
  }
  const least = (ownShare * data.length) / 4;
  const own = [...uses].filter(([, n]) => n >= least).map(([rgb]) => rgb);
  const decode = (v) => (v <= 10 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
  return own.map((rgb) => linearToLab65(...[rgb >> 16, (rgb >> 8) & 255, rgb & 255].map(decode)));
}

function measure(picture, colours, panel, wanted, art) {
  const { linear } = samplePanel({ picture, ...panel, art, background: [255, 255, 255] });
  const stitches = new Float64Array(linear.length);
  let strays = 0;
  for (let s = 0; 3 * s < linear.length; s++) {
    const lab = linearToLab65(...linear.subarray(3 * s, 3 * s + 3));
    stitches.set(lab, 3 * s);
    if (colours.every((own) => ciede2000(...own, ...lab) > strayFrom)) strays += 1;
  }
  const { beadOf } = chooseBeads({ stitches, palette: paletteLab, most: 8 });
  const found = wanted.filter(({ s, halfL }) => beads[beadOf[s]].lab[0] < halfL).length;
  return { found, strays };
}

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run(widths = [20, 24, 28, 32, 36, 40, 44, 48, 52, 56, 60]) {
  const pictures = [];
  for (const name of drawings) {
    const file = `${name}.svg`;
    const picture = await readPicture(readFileSync(new URL(file, fixtures)), file);
    pictures.push({ picture, colours: coloursOf(picture) });
  }
  return widths.flatMap((across) => {
    const shape = completeShape({ wedges: 7, rounds: across / 2, beadDiameterMm: 2.1 });
    const geometry = panelGeometry(shape);
    const footprints = panelFootprints(geometry);
    let [truly, stitches] = [0, 0];
    const [mean, ours] = [0, 1].map(() => ({ found: 0, strays: 0 }));
    for (const { picture, colours } of pictures) {
      const place = placePicture(picture, geometry, { place: 'fill' });
      const panel = { geometry, footprints, place };
      const wanted = outlineStitches(picture, panel);
      truly += wanted.length;
      stitches += geometry.count;
      for (const [sum, art] of [
        [mean, 'photo'],
        [ours, 'drawing'],
      ]) {
        const got = measure(picture, colours, panel, wanted, art);
        sum.found += got.found;
        sum.strays += got.strays;
      }
    }
    const percent = (n, of) => `${((100 * n) / of).toFixed(1)} %`;
    const recall = ours.found / Math.max(1, mean.found);
    const strays = ours.strays / Math.max(1, mean.strays);
    const told = (key, of) => `(${percent(ours[key], of)} : ${percent(mean[key], of)})`;
    const what = `${across} cells across, drawing ÷ mean`;
    return [
      {
        name: `outline recall, ${what} ${told('found', truly)}`,
        value: recall,
        bar: '≥ 1.5',
        ok: recall >= 1.5,
      },
      {
        name: `stray colours, ${what} ${told('strays', stitches)}`,
        value: strays,
        bar: '≤ 1/3',
        ok: strays <= 1 / 3,
      },
    ];
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.table(await run());

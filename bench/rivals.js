// What a maker would do instead, over ours: the mean colour difference (CIEDE2000) of their beads
// divided by that of our choice, on the same stitches and palettes.
// - nearest, then keep K: the nearest bead for every stitch, then only the K most used. By hand.
// - quantiser, then snap: K colours by k-means in L, a, b, then the bead nearest to each.
// - remap, then keep K: ImageMagick's -remap to all beads, with or without its dither, then only
//   the K most used; the rest take the nearest of those. Left out where ImageMagick is missing.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chooseBeads, nearestBead } from '../dist/core/beads/choice/choose.js';
import { ciede2000 } from '../dist/core/colour/ciede2000.js';
import { srgbToLab65 } from '../dist/core/colour/lab.js';
import { paletteBytes, shadeBytes } from './grid.js';
import { cells, drawings, gradients, labs, photos } from './pictures.js';

const side = 43;
const mosts = [6, 12];
/** Random palettes a picture. */
const palettesEach = 2;

/** Mean difference of stitches and the beads they got. */
function mean({ stitches, palette }, beadOf) {
  const at = (lab, k) => lab.subarray(3 * k, 3 * k + 3);
  const sum = beadOf.reduce(
    (total, bead, i) => total + ciede2000(...at(stitches, i), ...at(palette, bead)),
    0,
  );
  return sum / beadOf.length;
}

/** The nearest bead of every stitch, among some or all. */
function nearestOfEach({ stitches, palette }, among) {
  return Array.from({ length: stitches.length / 3 }, (_, i) =>
    nearestBead(palette, ...stitches.subarray(3 * i, 3 * i + 3), among),
  );
}

/** Keeps the K most used beads (ties: lower index); stitches of the others take the nearest. */
export function keepMostUsed(one, beadOf, most) {
  const uses = new Map();
  for (const bead of beadOf) uses.set(bead, (uses.get(bead) ?? 0) + 1);
  const byUse = [...uses].sort((p, q) => q[1] - p[1] || p[0] - q[0]).map(([bead]) => bead);
  const kept = byUse.slice(0, most);
  const nearest = nearestOfEach(one, kept);
  return beadOf.map((bead, i) => (kept.includes(bead) ? bead : nearest[i]));
}

function nearestThenKeep(one, most) {
  return keepMostUsed(one, nearestOfEach(one), most);
}

/** K-means: K middles of the stitches' colours, from stitches that lie far apart. */
export function kMeans(stitches, most) {
  const n = stitches.length / 3;
  const apart = (middles, m, i) =>
    (stitches[3 * i] - middles[3 * m]) ** 2 +
    (stitches[3 * i + 1] - middles[3 * m + 1]) ** 2 +
    (stitches[3 * i + 2] - middles[3 * m + 2]) ** 2;
  const middles = new Float64Array(3 * most);
  middles.set(stitches.subarray(0, 3));
  const least = new Float64Array(n).fill(Infinity);
  for (let m = 1; m < most; m++) {
    for (let i = 0; i < n; i++) least[i] = Math.min(least[i], apart(middles, m - 1, i));
    const farthest = least.indexOf(Math.max(...least));
    middles.set(stitches.subarray(3 * farthest, 3 * farthest + 3), 3 * m);
  }
  for (let round = 0; round < 30; round++) {
    const sums = new Float64Array(4 * most);
    for (let i = 0; i < n; i++) {
      let best = 0;
      for (let m = 1; m < most; m++) {
        if (apart(middles, m, i) < apart(middles, best, i)) best = m;
      }
      for (let c = 0; c < 3; c++) sums[4 * best + c] += stitches[3 * i + c];
      sums[4 * best + 3]++;
    }
    for (let m = 0; m < most; m++) {
      if (sums[4 * m + 3] === 0) continue;
      for (let c = 0; c < 3; c++) middles[3 * m + c] = sums[4 * m + c] / sums[4 * m + 3];
    }
  }
  return middles;
}

function quantiseThenSnap(one, most) {
  const middles = kMeans(one.stitches, most);
  const snapped = new Set(nearestOfEach({ stitches: middles, palette: one.palette }));
  return nearestOfEach(one, [...snapped]);
}

function remapThenKeep(program, dither) {
  return async (one, most) => {
    const bytes = one.beads;
    const beads = bytes.length / 3;
    const ppm = (width, height, data) =>
      Buffer.concat([Buffer.from(`P6 ${width} ${height} 255\n`), Buffer.from(data)]);
    const folder = mkdtempSync(join(tmpdir(), 'rondure-remap-'));
    try {
      writeFileSync(join(folder, 'cells.ppm'), ppm(side, side, one.bytes));
      writeFileSync(join(folder, 'beads.ppm'), ppm(beads, 1, bytes));
      const out = execFileSync(
        program,
        ['cells.ppm', ...dither, '-remap', 'beads.ppm', '-depth', '8', 'rgb:-'],
        { cwd: folder, maxBuffer: 1e8 },
      );
      const indexOf = new Map();
      for (let j = beads - 1; j >= 0; j--) indexOf.set(bytes.slice(3 * j, 3 * j + 3).join(), j);
      const beadOf = Array.from({ length: side * side }, (_, i) =>
        indexOf.get(out.subarray(3 * i, 3 * i + 3).join()),
      );
      return keepMostUsed(one, beadOf, most);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  };
}

/** The first of ImageMagick's names that answers: 7's, then 6's. */
function imageMagick() {
  for (const program of ['magick', 'convert']) {
    try {
      const said = execFileSync(program, ['-version'], { stdio: ['ignore', 'pipe', 'ignore'] });
      if (said.includes('ImageMagick')) return program;
    } catch {
      // Not there, or another program of that name.
    }
  }
  return undefined;
}

function rivals() {
  const program = imageMagick();
  if (!program) process.stderr.write('ImageMagick is not on this machine: no -remap beside ours\n');
  return [
    ['nearest, then keep K', nearestThenKeep],
    ['k-means, then snap', quantiseThenSnap],
    ...(program
      ? [
          ['-remap without dither, then keep K', remapThenKeep(program, ['-dither', 'None'])],
          ['-remap as it comes, then keep K', remapThenKeep(program, [])],
        ]
      : []),
  ];
}

/** Palettes to choose from: a range of beads like ours with more shades, and colours at random. */
const ranges = [
  [120, 'shades'],
  [300, 'shades'],
  [600, 'shades'],
  [300, 'random'],
];

/** Every picture with its palettes of so many beads, and our mean for each number of colours. */
async function matches(count, kind) {
  const all = [];
  for (const [p, picture] of [...photos, ...drawings, ...gradients].entries()) {
    const bytes = await cells(picture, side);
    const stitches = labs(bytes, srgbToLab65);
    for (let turn = 0; turn < palettesEach; turn++) {
      const seed = 7000 + 100 * p + turn;
      const beads = kind === 'shades' ? shadeBytes(count, seed) : paletteBytes(count, seed);
      const one = { bytes, stitches, beads, palette: labs(beads, srgbToLab65) };
      const ours = mosts.map((most) => mean(one, [...chooseBeads({ ...one, most }).beadOf]));
      all.push({ one, ours });
    }
  }
  return all;
}

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run() {
  const rows = [];
  const said = { shades: 'shades of our beads', random: 'random beads' };
  for (const [count, kind] of ranges) {
    const all = await matches(count, kind);
    for (const [rival, choose] of rivals()) {
      let sum = 0;
      for (const { one, ours } of all) {
        for (const [k, most] of mosts.entries()) {
          const beadOf = await choose(one, most);
          if (new Set(beadOf).size > most) throw new Error(`${rival} took more than ${most} beads`);
          sum += mean(one, beadOf) / ours[k];
        }
      }
      const value = sum / (mosts.length * all.length);
      const least = rival.startsWith('nearest') && kind === 'shades' && count === 300 ? 1.08 : 1;
      const name = `${rival}: mean difference over ours, ${count} ${said[kind]}, K = 6 and 12`;
      rows.push({ name, value, bar: `≥ ${least}`, ok: value >= least });
    }
  }
  return rows;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.table(await run());

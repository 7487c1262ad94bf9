// The choice of beads: how much of a fixed grid is proven within a second of processor time, what
// the proof adds to a usual picture, and how much quicker it is than HiGHS on the same problem.
import { drain } from '../dist/core/steps.js';
import { pathToFileURL } from 'node:url';
import { chooseBeads } from '../dist/core/beads/choice/choose.js';
import { measure } from '../dist/core/beads/choice/matrix.js';
import { mergeEqual } from '../dist/core/beads/choice/merge.js';
import { srgbToLab65 } from '../dist/core/colour/lab.js';
import { gridCases, paletteBytes } from './grid.js';
import { leastByHighs } from './highs.js';
import { cells, drawings, gradients, labs, photos } from './pictures.js';

/** Seconds of processor time: a busy machine counts alike. */
function timed(work) {
  const from = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(from);
  return { result, seconds: (user + system) / 1e6 };
}

const sorted = (values) => [...values].sort((p, q) => p - q);
const share = (values, part) => sorted(values)[Math.floor(part * (values.length - 1))];

async function grid() {
  const seconds = [];
  let proven = 0;
  let bounded = 0;
  for await (const one of gridCases(srgbToLab65)) {
    const { result, seconds: took } = timed(() => chooseBeads(one));
    seconds.push(took);
    if (result.proven && took <= 1) proven++;
    if (result.lowerBound > 0 && result.lowerBound <= result.objective) bounded++;
  }
  const cases = seconds.length;
  const times = `median ${(1000 * share(seconds, 0.5)).toFixed(0)} ms, 95 % within ${(1000 * share(seconds, 0.95)).toFixed(0)} ms, slowest ${(1000 * share(seconds, 1)).toFixed(0)} ms`;
  return [
    {
      name: `share of ${cases} choices proven to 1e-6 within 1 s each (${times})`,
      value: proven / cases,
      bar: '≥ 0.95, ≥ 300 cases',
      ok: proven >= 0.95 * cases && cases >= 300,
    },
    {
      name: `share of ${cases} choices with a bound at or below them`,
      value: bounded / cases,
      bar: '1',
      ok: bounded === cases,
    },
  ];
}

/** 8 of our 120 beads for 1,444 stitches: what `normal` adds to `off`. */
async function usual() {
  const palette = labs(paletteBytes('drawers'), srgbToLab65);
  const added = [];
  for (const picture of [...photos, ...drawings, ...gradients]) {
    const stitches = labs(await cells(picture, 38), srgbToLab65);
    const middle = (proof) =>
      share(
        [1, 2, 3, 4, 5].map(
          () => timed(() => chooseBeads({ stitches, palette, most: 8, proof })).seconds,
        ),
        0.5,
      );
    added.push(1000 * (middle('normal') - middle('off')));
  }
  const most = share(added, 0.95);
  return {
    name: `ms that the proof adds to 8 of 120 beads on ${added.length} pictures (median ${share(added, 0.5).toFixed(0)}), 95 %`,
    value: most,
    bar: '≤ 50',
    ok: most <= 50,
  };
}

/** HiGHS gets the ready matrix; our time holds measuring it, too. */
async function besideHighs(picture, side, count, most) {
  const stitches = labs(await cells(picture, side), srgbToLab65);
  const palette = labs(paletteBytes(count, 17), srgbToLab65);
  const places = mergeEqual(stitches, new Float64Array(side * side).fill(1));
  const beads = Array.from({ length: count }, (_, j) => j);
  const difference = drain(measure(places, palette, beads));
  const { weight } = places;
  const problem = { places: places.count, beads: count, difference, weight, most, kept: 0 };
  const ours = share(
    [1, 2, 3].map(() => timed(() => chooseBeads({ stitches, palette, most })).seconds),
    0.5,
  );
  const { objective } = chooseBeads({ stitches, palette, most });
  const from = process.cpuUsage();
  const least = await leastByHighs(problem, 60);
  const { user, system } = process.cpuUsage(from);
  const theirs = (user + system) / 1e6;
  if (least !== undefined && Math.abs(least - objective * side * side) > 1e-6 * least) {
    throw new Error(`HiGHS found ${least}, we ${objective * side * side}`);
  }
  const end = least === undefined ? 'which gave up' : 'the same choice';
  return {
    name: `HiGHS’s time over ours, ${places.count} places × ${count} beads, K = ${most} (${theirs.toFixed(1)} s, ${end})`,
    value: theirs / ours,
    bar: '≥ 30',
    ok: theirs >= 30 * ours,
  };
}

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run() {
  const rows = await grid();
  rows.push(await usual());
  rows.push(await besideHighs(photos[0], 43, 40, 6));
  rows.push(await besideHighs(photos[2], 45, 40, 8));
  rows.push(await besideHighs(photos[1], 45, 60, 6));
  return rows;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.table(await run());

// npm run bench:pictures -- [FOLDER ...] [-o FOLDER] [--colours K] [--rounds R] [--with '{"tidy":1}' ...]
//   [--only PATTERN] [--tuning] [--quiet] [--alone]
// How well pictures stay themselves: each is made with the old looks (see `before`), as it comes,
// and by the rivals of kept/rivals.js, seen from arm's length and measured (kept/measures.js,
// kept/subjects.js, small-features.js). Prints a table, names the pictures that are behind, and
// writes contact sheets. A third of the pictures, told by their names, takes no part in tuning and
// stands apart; --tuning leaves it out. --with adds a way to make them, as the core's wish; --only takes the
// files that a pattern fits, --quiet prints the end alone, --alone leaves out the rivals.
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { makePattern } from '../dist/core/make.js';
import { readPalette } from '../dist/core/beads/palette/read-palette.js';
import { panelFootprints } from '../dist/core/panel/footprints.js';
import { panelGeometry } from '../dist/core/panel/geometry.js';
import { readPicture } from '../dist/node/read/read-picture.js';
import { likeness } from './kept/measures.js';
import { rivalPanels } from './kept/rivals.js';
import { contactSheet } from './kept/sheet.js';
import { cutShare, meltedShare, subjectOf } from './kept/subjects.js';
import { alphaView, canvasFor, panelView, pictureView, seen } from './kept/views.js';
import { featuresKept, smallFeatures } from './small-features.js';

/** The looks that every default had before it was chosen anew. */
export const before = {
  place: { place: 'fill' },
  background: '#ffffff',
  edges: 0,
  lift: 0,
  tidy: 3,
};
const asItComes = {
  place: { place: 'subject' },
  background: 'auto',
  edges: 0.3,
  lift: 0.5,
  tidy: 2,
};
const rowsASheet = 9;
/** What the name of a rival ends in that was given our place and ground. */
const placedSo = ', placed so';

/** A third of all names, the same everywhere (FNV-1a over the name). */
export function isKeptAside(name) {
  let hash = 2166136261;
  for (const letter of name) hash = Math.imul(hash ^ letter.codePointAt(0), 16777619) >>> 0;
  return (hash >>> 7) % 3 === 0;
}

function picturesIn(folders) {
  return folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true })
      .filter((file) => /\.(svg|png|jpe?g|webp|gif)$/i.test(file))
      .filter(
        (file) =>
          !/(^|\/)(bad|expected)\/|very-large|tiny|fully-|cmyk|icc-|format-|png16|exif|%/.test(
            file,
          ),
      )
      .map((file) => join(folder, file)),
  );
}

/** Colours of every stitch of a pattern's front. */
function hexesOf({ panels, beads }) {
  const hex = new Map(beads.map((bead) => [bead.letter, bead.hex]));
  return [...panels[0].rounds.join('')].map((letter) => hex.get(letter));
}

function measured(canvas, footprints, picture, subject, { place, ground, hexes, features }) {
  const source = seen(pictureView(canvas, picture, place, ground), canvas.side);
  const panel = seen(
    panelView(canvas, (s) => hexes[s]),
    canvas.side,
  );
  const facts = likeness(source, panel, canvas);
  if (subject) {
    const { width, height, mask } = subject;
    const data = new Uint8Array(4 * mask.length);
    mask.forEach((is, p) => (data[4 * p + 3] = is ? 255 : 0));
    const mmPerPixel = (place.mmPerPixel * picture.width) / width;
    const alpha = alphaView(canvas, { width, height, data }, { ...place, mmPerPixel });
    const [sum, all] = [new Float64Array(hexes.length), new Float64Array(hexes.length)];
    canvas.owner.forEach((s, p) => {
      if (s < 0) return;
      sum[s] += alpha[p];
      all[s]++;
    });
    const melts = meltedShare(
      sum.map((one, s) => one / Math.max(1, all[s])),
      footprints.neighbours,
      (s) => hexes[s],
    );
    Object.assign(facts, melts);
    facts.cut = cutShare(subject, picture, place, canvas.geometry);
  }
  const labs = new Map();
  const labOf = (hex) => labs.get(hex) ?? labs.set(hex, labFrom(hex)).get(hex);
  facts.features = features.length;
  facts.kept = featuresKept(features, (s) => labOf(hexes[s] ?? ground));
  return { facts, source, panel };
}

const { hexToLab65: labFrom } = await import('../dist/core/colour/lab.js');

export async function comparePicture(file, { beads, colours, rounds, ways, alone }) {
  const picture = await readPicture(readFileSync(file), file);
  const subject = subjectOf(picture);
  const results = [];
  let canvas;
  let sourceView;
  for (const [label, wish] of ways) {
    const started = performance.now();
    const { pattern, report } = makePattern({
      picture,
      pictureName: basename(file),
      title: 'x',
      beads,
      colours,
      shape: { wedges: 7, rounds, beadDiameterMm: 2.1 },
      place: {},
      art: 'auto',
      ...wish,
    });
    const ms = performance.now() - started;
    const geometry = panelGeometry(pattern.shape, { startDegrees: pattern.panels[0].startDegrees });
    const footprints = panelFootprints(geometry);
    canvas ??= { ...canvasFor({ geometry, footprints }), geometry };
    const { place, background } = pattern.panels[0].picture;
    const ground = background === undefined || background === 'bare' ? '#ffffff' : background;
    const features = smallFeatures(picture, { geometry, footprints, place });
    const common = { place, ground, features };
    const one = measured(canvas, footprints, picture, subject, {
      ...common,
      hexes: hexesOf(pattern),
    });
    results.push({ label, ...one, pattern, report, ms });
    sourceView = one.source;
    if (alone || (label !== 'before' && label !== 'as it comes')) continue;
    // Each rival is given the place and the ground that ours has: what it lacks is not its way with beads.
    const where = label === 'before' ? '' : placedSo;
    const linear = pictureView(canvas, picture, place, ground);
    for (const { name, beadOf } of rivalPanels(linear, canvas, geometry, beads, colours)) {
      const hexes = beadOf.map((bead) => beads[bead].hex);
      results.push({
        label: `${name}${where}`,
        ...measured(canvas, footprints, picture, subject, { ...common, hexes }),
      });
    }
  }
  return { name: basename(file), results, sourceView, canvas, subject: subject?.kind };
}

function table(all, labels) {
  const lines = [
    '| way | SSIM | edge recall | edge precision | F1 | difference | cut %, worst | cut > 1 % | melted %, worst | melted > 10 % | … strict %, worst | features |',
    '|---|---|---|---|---|---|---|---|---|---|---|---|',
  ];
  const mean = (values) => values.reduce((sum, one) => sum + one, 0) / Math.max(1, values.length);
  for (const label of labels) {
    const facts = all.flatMap(({ results }) =>
      results.filter((one) => one.label === label).map((one) => one.facts),
    );
    const cut = facts.flatMap((one) => (one.cut === undefined ? [] : [100 * one.cut]));
    const melted = facts.flatMap((one) => (one.melted === undefined ? [] : [100 * one.melted]));
    const strict = facts.flatMap((one) => (one.strict === undefined ? [] : [100 * one.strict]));
    const sum = (key) => facts.reduce((total, one) => total + one[key], 0);
    const figure = (key) => mean(facts.map((one) => one[key])).toFixed(3);
    lines.push(
      `| ${[label, figure('ssim'), figure('recall'), figure('precision'), figure('f1'), mean(facts.map((one) => one.difference)).toFixed(2), `${mean(cut).toFixed(1)}, ${Math.max(0, ...cut).toFixed(1)}`, `${cut.filter((one) => one > 1).length} of ${cut.length}`, `${mean(melted).toFixed(1)}, ${Math.max(0, ...melted).toFixed(1)}`, `${melted.filter((one) => one > 10).length} of ${melted.length}`, `${mean(strict).toFixed(1)}, ${Math.max(0, ...strict).toFixed(1)}`, `${sum('kept')} of ${sum('features')}`].join(' | ')} |`,
    );
  }
  return lines.join('\n');
}

/** Measures that are compared picture by picture, and whether more of them is better. */
const compared = [
  ['SSIM', 'ssim', true],
  ['edge recall', 'recall', true],
  ['edge precision', 'precision', true],
  ['difference', 'difference', false],
];
/** Less is no difference between two ways. */
const tellsFrom = { ssim: 0.005, recall: 0.005, precision: 0.005, difference: 0.02 };

/** Names the pictures in which the second way is behind the first, the farthest behind first. */
function behind(all, first, second) {
  const lines = compared.map(([word, key, moreIsBetter]) => {
    const worse = all
      .map(({ name, results }) => {
        const [one, other] = [first, second].map((way) => results.find((r) => r.label === way));
        const by = one.facts[key] - other.facts[key];
        return { name, by: moreIsBetter ? by : -by };
      })
      .filter(({ by }) => by >= tellsFrom[key])
      .sort((a, b) => b.by - a.by)
      .map(({ name, by }) => `${name} ${by.toFixed(key === 'difference' ? 2 : 3)}`);
    return `- ${word}: ${worse.length} of ${all.length}${worse.length > 0 ? `: ${worse.join(', ')}` : ''}`;
  });
  return `“${second}” is behind “${first}” in\n\n${lines.join('\n')}\n`;
}

async function main() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      output: { type: 'string', short: 'o', default: 'bench-pictures' },
      colours: { type: 'string', default: '8' },
      rounds: { type: 'string', default: '20' },
      with: { type: 'string', multiple: true, default: [] },
      only: { type: 'string' },
      tuning: { type: 'boolean', default: false },
      quiet: { type: 'boolean', default: false },
      alone: { type: 'boolean', default: false },
    },
  });
  const palette = new URL('../palettes/drawers.csv', import.meta.url);
  const { beads } = readPalette(readFileSync(palette, 'utf8'), 'drawers.csv');
  const fixtures = fileURLToPath(new URL('../fixtures', import.meta.url));
  const ways = [
    ['before', before],
    ['as it comes', asItComes],
  ];
  for (const text of values.with) ways.push([text, JSON.parse(text)]);
  let files = picturesIn(positionals.length > 0 ? positionals : [fixtures]);
  if (values.only) files = files.filter((file) => new RegExp(values.only).test(file));
  if (values.tuning) files = files.filter((file) => !isKeptAside(basename(file)));
  const done = [];
  for (const file of files) {
    try {
      done.push(
        await comparePicture(file, {
          beads,
          ways,
          alone: values.alone,
          colours: Number(values.colours),
          rounds: Number(values.rounds),
        }),
      );
    } catch (error) {
      console.error(`${file}: ${error.stack}`);
      process.exitCode = 1;
      continue;
    }
    if (values.quiet) continue;
    const { name, subject, results } = done.at(-1);
    console.log(`${name} (${subject ?? 'all of it'})`);
    for (const { label, facts, ms = 0 } of results) {
      const said = [facts.ssim, facts.recall, facts.precision].map((one) => one.toFixed(3));
      const percent = (one) => (one === undefined ? '-' : (100 * one).toFixed(1));
      console.log(
        `  ${label.padEnd(16)} ssim ${said[0]} recall ${said[1]} precision ${said[2]} difference ${facts.difference.toFixed(2)} cut ${percent(facts.cut)} melted ${percent(facts.melted)} features ${facts.kept}/${facts.features} ${ms.toFixed(0)} ms`,
      );
    }
  }
  const labels = done[0].results.map(({ label }) => label);
  const groups = [
    ['all', done],
    ['for tuning', done.filter(({ name }) => !isKeptAside(name))],
    ['kept aside', done.filter(({ name }) => isKeptAside(name))],
  ];
  const text = groups
    .filter(([, group]) => group.length > 0)
    .map(([name, group]) => `${group.length} pictures, ${name}:\n\n${table(group, labels)}\n`)
    .join('\n');
  const others = labels.filter((label) => label === 'before' || label.endsWith(placedSo));
  const named = others.map((label) => behind(done, label, 'as it comes')).join('\n');
  console.log(`${text}\n${named}`);
  mkdirSync(values.output, { recursive: true });
  writeFileSync(join(values.output, 'kept.md'), `${text}\n${named}`);
  for (let first = 0; first < done.length; first += rowsASheet) {
    const rows = done.slice(first, first + rowsASheet).map(({ name, results, canvas }) => {
      const { side } = canvas;
      const made = results.map(({ label, panel }) => ({ label, side, srgb: panel.srgb }));
      const newest = results.at(-1).source;
      return { name, views: [{ label: name, side, srgb: newest.srgb }, ...made] };
    });
    const number = String(first / rowsASheet + 1).padStart(2, '0');
    writeFileSync(join(values.output, `sheet-${number}.png`), await contactSheet(rows));
  }
}

if (process.argv[1] && import.meta.url.endsWith(basename(process.argv[1]))) await main();

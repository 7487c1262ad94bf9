// npm run bench:heavy [-- PART OF A NAME]: every input that once took more memory or time than it may,
// given to the tool as a maker would give it. No input may take over 700 MB or 20 seconds, and each is
// used or refused in one sentence. Prints a table; exits with 1 when a bar is missed.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateSync, gzipSync } from 'node:zlib';
import * as drawings from './heavy/drawings.js';
import * as files from './heavy/files.js';
import { largePictures } from './heavy/pictures.js';
import { measured } from './heavy/measure.js';

const mostMb = 700;
const mostSeconds = 20;
const top = fileURLToPath(new URL('../', import.meta.url));
const wanted = process.argv[2] ?? '';

const folder = mkdtempSync(join(tmpdir(), 'rondure-heavy-'));
const at = (name) => join(folder, name);
const out = ['--quiet', '--force', '-o', at('out')];
const picture = join(top, 'fixtures/lighthouse.svg');

const chart = (file) => ['chart', file, '--rounds', '20', '--colours', '9', ...out];
const charted =
  (format) =>
  ([what, content]) => [`SVG: ${what}`, `a.${format}`, () => content, chart];
const pattern = () => JSON.parse(readFileSync(at('ready/pattern.json'), 'utf8'));

/** Each [what it is, name of its file, what makes it, command line]. */
function* inputs() {
  for (const [what, svg] of drawings.hiddenPictures) yield charted('svg')([`400 megapixels ${what}`, svg]);
  yield* drawings.longTexts.map(charted('svg'));
  yield charted('svg')(['masks in masks', drawings.masksInMasks]);
  yield charted('svg')(['a filter of 80 sheets', drawings.filterOfSheets]);
  for (const [what, content] of drawings.longDrawings) yield charted('svg')([what, drawings.svg(content)]);
  yield* drawings.longFilters.map(charted('svg'));
  yield charted('svgz')(['4 GB of spaces, packed', gzipSync(Buffer.alloc(1e9, ' '))]);
  yield ['picture: TIFF of a million pages', 'a.tif', () => files.tiffOfPages(1e6), chart];
  for (const [what, ending, made] of largePictures) yield [`picture: 64 megapixels, ${what}`, `a.${ending}`, () => made().toBuffer(), chart];
  for (const [what, ending, text] of files.palettes())
    yield [`palette: ${what}`, `a.${ending}`, () => text, (file) => ['chart', picture, '--beads', file, ...chart('').slice(2)]];
  for (const [what, png] of files.swollenThumbnails()) {
    const swollen = () => {
      const { panels, ...rest } = pattern();
      panels[0].picture.thumbnail = png.toString('base64');
      return JSON.stringify({ ...rest, panels });
    };
    yield [`thumbnail: ${what}`, 'a.json', swollen, (file) => ['redraw', file, ...out]];
  }
  const named = (name, argv) => ([what, text]) => [`${name}: ${what}`, 'a.json', () => text, argv];
  yield* files.jsonTexts().map(named('pattern', (file) => ['redraw', file, ...out]));
  yield* files.jsonTexts().map(named('swatch', (file) => ['chart', picture, '--swatch', file, ...out]));
  yield* files.jsonTexts().map(named('frame', (file) => ['chart', picture, '--frame', file, ...out]));
  yield* files.jsonTexts().map(named('wish', (file) => ['chart', picture, '--from', file, ...out]));
  yield* files.jsonTexts().map(named('blank', (file) => ['read', picture, '--blank', file, ...out]));
  const packed = (what, bytes) => [`chart.png: ${what}`, 'a.png', () => files.pngWithText('rondure-pattern', deflateSync(bytes())), (file) => ['redraw', file, ...out]];
  yield packed('a text of 1 GB', () => Buffer.alloc(1e9, ' '));
  yield packed('20 million empty lists', () => Buffer.from(files.jsonTexts()[1][1]));
  yield ['chart.svg: 250 MB', 'a.svg', () => `<svg>${' '.repeat(250e6)}`, (file) => ['redraw', file, ...out]];
  for (const [what, text] of [['5 million lines', '\n'.repeat(5e6)], ['200,000 rounds', Array.from({ length: 2e5 }, (_, n) => `R${n + 1}: 6A\n`).join('')], ['a round of 4 million runs', `R1: ${'1A '.repeat(1.3e6)}`]])
    yield [`rounds: ${what}`, 'a.txt', () => text, (file) => ['rounds', file, ...out]];
} // prettier-ignore

let missed = 0;
try {
  execFileSync(process.execPath, ['bin/rondure.js', 'chart', picture, '--rounds', '20', '--quiet', '-o', at('ready')], { cwd: top }); // prettier-ignore
  console.log('| input | MB of file | seconds | MB: tool | started | together | exit | said |');
  console.log('|---|--:|--:|--:|--:|--:|--:|---|');
  for (const [what, name, made, argv] of inputs()) {
    if (!what.includes(wanted)) continue;
    const file = at(name);
    const content = await made();
    writeFileSync(file, content);
    const { code, said, seconds, mb } = await measured(argv(file));
    const told = code === 0 ? said === '' : [2, 3, 4, 5].includes(code) && /^Error: .*\.$/.test(said);
    const ok = told && seconds <= mostSeconds && mb.together <= mostMb;
    if (!ok) missed += 1;
    const cells = [what, (content.length / 1e6).toFixed(1), seconds.toFixed(1)];
    cells.push(...[mb.tool, mb.started, mb.together].map((one) => one.toFixed(0)), code, said.replaceAll(`${folder}/`, '').slice(0, 200));
    console.log(`| ${cells.join(' | ')} |${ok ? '' : ' MISSED'}`);
    rmSync(file);
  }
  console.log(missed === 0 ? 'All bars met.' : `${missed} missed.`);
} finally {
  rmSync(folder, { recursive: true, force: true });
} // prettier-ignore
process.exitCode = missed > 0 ? 1 : 0;

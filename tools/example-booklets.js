// Makes the finished booklets of docs/booklets and the pictures of their pages anew:
//   npm run build && node tools/example-booklets.js
// Needs poppler-utils. The pictures are also what tests/booklet-goldens.test.ts compares with.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const top = new URL('../', import.meta.url).pathname;
const docs = join(top, 'docs', 'booklets');
const program = join(top, 'bin', 'rondure.js');
/** Of the pictures: small enough to keep, large enough to read headings. */
const dotsPerInch = 50;

/** One panel and a purse of two in a frame in English, and a repeated motif in Japanese. */
export const examples = [
  {
    name: 'kingfisher',
    chart: ['kingfisher.svg', '--title', 'Kingfisher'],
    booklet: ['--author', 'The harbour workshop', '--date', '2026-03-14'],
  },
  {
    name: 'harbour-purse',
    frame: ['--width', '85mm', '--height', '45mm'],
    chart: ['kingfisher.svg', '--back', 'lighthouse.svg', '--title', 'Kingfisher and lighthouse'],
    booklet: [
      ...['--author', 'The harbour workshop', '--date', '2026-03-14'],
      ...['--licence', 'Make and sell as many purses as you like; please do not sell the pattern.'],
    ],
  },
  {
    name: 'barley-moon',
    chart: ['barley-moon.svg', '--repeat', '--rounds', '20', '--colours', '6', '--title', '麦の月'],
    booklet: ['--language', 'ja', '--date', '2026-03-14'],
  },
];

const rondure = (...argv) => execFileSync(process.execPath, [program, ...argv], { cwd: top });

/** Makes one of them in a folder; returns the path of its PDF. */
export function makeExample({ name, frame, chart, booklet }, folder) {
  const [picture, ...rest] = chart.map((word) =>
    word.endsWith('.svg') ? join('fixtures', word) : word,
  );
  const framed = [];
  if (frame) {
    const file = join(folder, `${name}-frame.json`);
    rondure('frame', ...frame, '-o', file);
    framed.push('--frame', file);
  }
  const dir = join(folder, name);
  rondure('chart', picture, ...rest, ...framed, '--quiet', '-o', dir);
  const pdf = join(folder, `${name}.pdf`);
  rondure('booklet', join(dir, 'pattern.json'), ...booklet, '--force', '--quiet', '-o', pdf);
  return pdf;
}

/** Draws every page of a PDF as `NAME-01.png` and so on; returns their names. */
export function drawPages(pdf, name, folder) {
  const dots = String(dotsPerInch);
  execFileSync('pdftoppm', ['-r', dots, '-png', pdf, join(folder, name)]);
  return readdirSync(folder)
    .filter((file) => file.startsWith(`${name}-`) && file.endsWith('.png'))
    .sort();
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  const folder = mkdtempSync(join(tmpdir(), 'rondure-examples-'));
  for (const example of examples) {
    const { name } = example;
    for (const old of readdirSync(docs).filter((file) => file.startsWith(`${name}-`))) {
      rmSync(join(docs, old));
    }
    const pdf = makeExample(example, folder);
    execFileSync('cp', [pdf, join(docs, `${name}.pdf`)]);
    const pages = drawPages(pdf, name, docs);
    const readme = join(docs, 'README.md');
    const shown = pages.map((page, n) => `![${name}, page ${n + 1}](${page})`).join(' ');
    const line = new RegExp(`^!\\[${name}, page 1\\].*$`, 'm');
    writeFileSync(readme, readFileSync(readme, 'utf8').replace(line, shown));
    console.log(`${name}: ${pages.length} pages`);
  }
  rmSync(folder, { recursive: true, force: true });
}

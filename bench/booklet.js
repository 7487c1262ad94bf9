// The booklet of 25 rounds against a script that writes as many pages of plain text with the same
// PDF writer: whole programs, turn about.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const program = new URL('../bin/rondure.js', import.meta.url).pathname;
const bare = new URL('plain-pages.js', import.meta.url).pathname;
const picture = new URL('../fixtures/kingfisher.svg', import.meta.url).pathname;
const turns = 9;
const mostTimes = 3;

const node = (...argv) => execFileSync(process.execPath, argv, { encoding: 'utf8' });
function timed(...argv) {
  const begin = performance.now();
  node(...argv);
  return performance.now() - begin;
}
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run() {
  const folder = mkdtempSync(join(tmpdir(), 'rondure-bench-'));
  try {
    const dir = join(folder, 'bird');
    node(program, 'chart', picture, '--rounds', '25', '--quiet', '-o', dir);
    const pattern = join(dir, 'pattern.json');
    const results = [];
    for (const [what, ...more] of [
      ['English'],
      ['Japanese', '--language', 'ja'],
      ['Spanish and English side by side', '--language', 'es,en-GB'],
      ['large print, grey', '--large', '--print', 'grey'],
    ]) {
      const out = join(folder, 'booklet.pdf');
      const argv = [program, 'booklet', pattern, '-o', out, '--force', ...more];
      const { pages } = JSON.parse(node(...argv, '--json'));
      const ours = [];
      const theirs = [];
      for (let turn = 0; turn < turns; turn++) {
        theirs.push(timed(bare, String(pages), join(folder, 'plain.pdf')));
        ours.push(timed(...argv, '--quiet'));
      }
      const value = median(ours) / median(theirs);
      const size = Math.round(statSync(out).size / 1000);
      const ms = `${median(ours).toFixed(0)} ms : ${median(theirs).toFixed(0)} ms`;
      results.push({
        name: `booklet ÷ as many plain pages, ${what}: ${pages} pages, ${size} kB (${ms})`,
        value,
        bar: `≤ ${mostTimes}`,
        ok: value <= mostTimes,
      });
    }
    return results;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  console.table(await run());

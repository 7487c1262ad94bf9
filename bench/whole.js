// The whole job on a 24-megapixel JPEG, as a ratio to the bare script in bench/bare.js, measured
// in turns in the same run; and its peak memory.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const top = fileURLToPath(new URL('../', import.meta.url));
const turns = 5;

export async function run() {
  const folder = mkdtempSync(join(tmpdir(), 'rondure-bench-'));
  try {
    const big = join(folder, 'big.jpg');
    await sharp(join(top, 'fixtures/pictures/cat-chelsea.png'))
      .resize(6015, 4001, { fit: 'fill', kernel: 'cubic' })
      .jpeg({ quality: 80 })
      .toFile(big);
    const rssFile = join(folder, 'rss');
    const ours = (out) =>
      timed(
        ['--import', join(top, 'bench/report-rss.js'), 'bin/rondure.js', 'chart', big, '--quiet'],
        ['-o', join(folder, out)],
        { RONDURE_RSS_FILE: rssFile },
      );
    ours('ready');
    const chart = join(folder, 'ready', 'chart.svg');
    const bareScript = (out) => timed(['bench/bare.js', big, chart, join(folder, out)], []);
    bareScript('warm');
    const times = { ours: [], bare: [] };
    let peakMb = 0;
    for (let turn = 0; turn < turns; turn++) {
      times.bare.push(bareScript(`bare${turn}`));
      times.ours.push(ours(`ours${turn}`));
      peakMb = Math.max(peakMb, Number(readFileSync(rssFile, 'utf8')) / 1024);
    }
    const ratio = median(times.ours) / median(times.bare);
    const name = '24-megapixel JPEG to a complete set';
    return [
      { name: `${name}, time ÷ bare script`, value: ratio, bar: '<= 2', ok: ratio <= 2 },
      { name: `${name}, peak memory in MB`, value: peakMb, bar: '< 400', ok: peakMb < 400 },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function timed(words, more, env = {}) {
  const from = performance.now();
  execFileSync(process.execPath, [...words, ...more], {
    cwd: top,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  return performance.now() - from;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

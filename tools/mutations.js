// Runs tests/mutations.test.ts at length and prints, for each kind of file, what exit codes came:
//   node tools/mutations.js [how many of each, default 2000] [part of a kind's name] [first seed, default 1]
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const [count = '2000', kind = '', from = '1'] = process.argv.slice(2);
const vitest = join(
  dirname(createRequire(import.meta.url).resolve('vitest/package.json')),
  'vitest.mjs',
);
const { status } = spawnSync(process.execPath, [vitest, 'run', 'tests/mutations.test.ts'], {
  cwd: fileURLToPath(new URL('../', import.meta.url)),
  stdio: 'inherit',
  env: {
    ...process.env,
    RONDURE_MUTATIONS: count,
    RONDURE_MUTATIONS_OF: kind,
    RONDURE_MUTATIONS_FROM: from,
  },
});
process.exitCode = status ?? 1;

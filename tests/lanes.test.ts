import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { expect, test } from 'vitest';
import { long, needPrograms } from './lanes.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const pathOf = (name: string) => `tests/${name}.test.ts`;

/** What tells that a test starts a browser, poppler or qpdf. */
const starts = [
  'tools/test-tools.js',
  'tests/support/poppler.ts',
  'tests/support/engines/index.ts',
  'playwright-core',
  'puppeteer-core',
];

test('the quick lane leaves out files that there are, each for one reason', () => {
  for (const name of [...needPrograms, ...long])
    expect(existsSync(top + pathOf(name)), name).toBe(true);
  expect(new Set([...needPrograms, ...long]).size).toBe(needPrograms.length + long.length);
});

test('nothing in the quick lane asks a program of Debian, and all that is left out for one does', async () => {
  for (const path of starts.filter((path) => path.includes('/')))
    expect(existsSync(top + path), path).toBe(true);
  const files = readdirSync(`${top}tests`).filter((name) => name.endsWith('.test.ts'));
  const { metafile } = await build({
    absWorkingDir: top,
    entryPoints: files.map((name) => `tests/${name}`),
    ...{ bundle: true, packages: 'external', write: false, outdir: '.tmp', metafile: true },
    ...{ platform: 'node', format: 'esm', target: 'esnext', logLevel: 'error' },
  });
  const reached = (path: string, seen = new Set<string>()): Set<string> => {
    if (seen.has(path)) return seen;
    seen.add(path);
    for (const { path: next } of metafile.inputs[path]?.imports ?? []) reached(next, seen);
    return seen;
  };
  const asking = files.filter((name) => {
    const all = reached(`tests/${name}`);
    return starts.some((path) => all.has(path));
  });
  const leftOut = asking.filter((name) => !long.map((one) => `${one}.test.ts`).includes(name));
  expect(leftOut).toEqual(needPrograms.map((name) => `${name}.test.ts`));
});

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build as esbuild } from 'esbuild';
import { build as vite } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';

// A program that takes two functions of the core pays for two functions (`sideEffects` in package.json).

const core = fileURLToPath(new URL('../dist/core/index.js', import.meta.url));

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-tree-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function byEsbuild(entry: string): Promise<string> {
  const { outputFiles } = await esbuild({
    entryPoints: [entry],
    ...{ bundle: true, minify: true, format: 'esm', platform: 'browser', write: false },
  } as const);
  return outputFiles[0].text;
}

async function byVite(entry: string): Promise<string> {
  const made = await vite({
    root: folder,
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: true,
      target: 'es2022',
      lib: { entry, formats: ['es'], fileName: 'program' },
    },
  });
  const [{ output }] = made as { output: { code: string }[] }[];
  return output[0].code;
}

test.each([
  ['esbuild', byEsbuild],
  ['vite', byVite],
])('two functions of the core bundled by %s', async (_, bundled) => {
  const entry = join(folder, 'program.js');
  const kilobytes = async (names: string) => {
    writeFileSync(entry, `export ${names} from ${JSON.stringify(core)};\n`);
    return gzipSync(await bundled(entry)).length / 1000;
  };
  const [two, make, all] = [
    await kilobytes('{ panelGeometry, completeShape }'),
    await kilobytes('{ makePattern, readPalette }'),
    await kilobytes('*'),
  ];
  // Measured: 11, 89 and 381 kB; without `sideEffects` the first two are 240 and 308.
  expect(two).toBeGreaterThan(5);
  expect(two).toBeLessThan(0.1 * all);
  expect(make).toBeLessThan(0.4 * all);
});

import { readFileSync, rmSync } from 'node:fs';
import { posix } from 'node:path';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import type { Package } from '@arethetypeswrong/core';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { packed, top } from '../support/pack.js';

// What the tarball holds, judged by publint 0.3 and are-the-types-wrong 0.18, and by its own imports.

let made: Awaited<ReturnType<typeof packed>>;
let inside: Package;
let files: string[];
const root = '/node_modules/rondure/';
beforeAll(async () => {
  made = await packed();
  inside = createPackageFromTarballData(made.bytes);
  files = inside.listFiles(root).map((path) => path.slice(root.length));
});
afterAll(() => rmSync(made.folder, { recursive: true, force: true }));

const { dependencies } = JSON.parse(readFileSync(`${top}package.json`, 'utf8'));

test('holds what a user needs and nothing that only builds it', () => {
  const outermost = [...new Set(files.map((path) => path.split('/')[0]))].sort();
  expect(outermost.join(' ')).toBe(
    'CHANGELOG.md LICENSE README.md bin dist docs fonts package.json palettes',
  );
  for (const needed of ['dist/page/index.html', 'fonts/OFL.txt', 'dist/pattern.schema.json'])
    expect(files).toContain(needed);
  // The page's fonts are those of fonts/, which `rondure page` serves in their place.
  const twice =
    /\.ts(x|buildinfo)?$|\.map$|made-from|^dist\/page\/.*\.ttf$|^dist\/words\/worktable/;
  expect(files.filter((path) => twice.test(path) && !path.endsWith('.d.ts'))).toEqual([]);
  expect(files.filter((path) => /^dist\/(cli|booklet)\/.*\.d\.ts$/.test(path))).toEqual([]);
  // 16.1 MB with the sources and every font twice, 8.6 without, and .4 for the bundle of the command line.
  expect(made.bytes.length / 1e6).toBeLessThan(9.1);
});

test('every import of every module and of every type leads to a file of it or to a dependency', () => {
  const outside = { js: new Set<string>(), types: new Set<string>() };
  const lost: string[] = [];
  const modules = files.filter((path) => /^(bin|dist)\/(?!page\/).*\.(js|d\.ts)$/.test(path));
  for (const path of modules) {
    const isTypes = path.endsWith('.d.ts');
    const text = inside.readFile(root + path);
    // The bundle writes what it imports later between backticks.
    const imports = /(?:\bfrom|\bimport\(|^import)\s*['"]([^'"\n]+)['"]|\bimport\(`([^`\n]+)`\)/gm;
    for (const [, quoted, later] of text.matchAll(imports)) {
      const to = quoted ?? later;
      const target = posix.join(posix.dirname(path), to);
      if (!to.startsWith('.')) outside[isTypes ? 'types' : 'js'].add(to);
      else if (!files.includes(isTypes ? target.replace(/js$/, 'd.ts') : target))
        lost.push(`${path} → ${to}`);
    }
  }
  expect(modules.length).toBeGreaterThan(500);
  expect(lost).toEqual([]);
  const packages = [...outside.js].filter((name) => !name.startsWith('node:'));
  expect([...new Set(packages.map((name) => name.split('/')[0]))].sort()).toEqual(
    Object.keys(dependencies).sort(),
  );
});

test('publint finds nothing', async () => {
  const { messages, pkg } = await publint({
    pack: { tarball: made.bytes.slice().buffer },
    strict: true,
  });
  expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
});

test('are-the-types-wrong finds nothing for importers of modules', async () => {
  const analysis = await checkPackage(inside);
  if (!analysis.types) throw new Error('no types');
  expect(Object.keys(analysis.entrypoints)).toEqual(expect.arrayContaining(['.', './node']));
  // One build, of ES modules, found by `exports`: TypeScript's `node10` knows none, and CommonJS loads it by import() or, from Node
  // 20.19 on, by require.
  const told = analysis.problems.filter(
    (problem) =>
      problem.kind !== 'CJSResolvesToESM' &&
      !('resolutionKind' in problem && problem.resolutionKind === 'node10'),
  );
  expect(told).toEqual([]);
});

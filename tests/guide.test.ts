import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, test } from 'vitest';
import { chartTable } from '../src/cli/options/chart-options.js';
import type { Table } from '../src/cli/options/described.js';
import { makeProgram } from '../src/cli/program.js';
import { outputs } from '../src/core/pages/outputs.js';
import { en } from '../src/words/index.js';
import { guidePages } from './support/guide.js';

const top = new URL('../', import.meta.url).pathname;

/** The anchor that a heading gets where Markdown is shown, as CommonMark's common extension makes it. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .replaceAll(' ', '-');

const anchorsOf = (text: string) =>
  [...text.matchAll(/^#+ (.*)$/gm)].map(([, one]) => anchorOf(one));

test('every link of README and guide leads somewhere', () => {
  let links = 0;
  for (const { path, text } of guidePages()) {
    for (const [, target] of text.matchAll(/\]\(([^)\s]+)\)/g)) {
      if (/^https?:/.test(target)) continue;
      const [file, anchor] = target.split('#');
      const found = file === '' ? path : normalize(join(dirname(path), file));
      expect(existsSync(join(top, found)), `${path}: ${target}`).toBe(true);
      if (anchor) {
        const there = anchorsOf(readFileSync(join(top, found), 'utf8'));
        expect(there, `${path}: ${target}`).toContain(anchor);
      }
      links++;
    }
  }
  expect(links).toBeGreaterThan(50);
});

test('the index leads to every page, and every page back to it', () => {
  const [, ...pages] = guidePages();
  const index = pages.find(({ path }) => path.endsWith('guide/README.md'))!;
  for (const { path, text } of pages) {
    if (path === index.path) continue;
    expect(index.text, path).toContain(`(${path.replace('docs/guide/', '')}`);
    expect(text, path).toContain('[All pages of the guide](README.md)');
  }
});

test('every command that README and guide show is one that the program takes', async () => {
  const io = { out() {}, err() {}, progress: undefined, signal: new AbortController().signal };
  const { commands } = await makeProgram(en, io);
  let shown = 0;
  for (const { path, text } of guidePages()) {
    const lines = text.replaceAll(/ \\\n\s+/g, ' ').split('\n');
    for (const line of lines) {
      const typed = /^ {4,}node bin\/rondure\.js (.*)$/.exec(line)?.[1];
      if (!typed) continue;
      const [name, ...argv] = (typed.match(/"[^"]*"|\S+/g) ?? []).map((word) =>
        word.replaceAll('"', ''),
      );
      const command = commands.find((one) => one.name() === name);
      expect(command, `${path}: ${name}`).toBeDefined();
      const { unknown } = command!.parseOptions(argv);
      expect(
        unknown.filter((one) => one !== '--help'),
        `${path}: ${line.trim()}`,
      ).toEqual([]);
      shown++;
    }
  }
  expect(shown).toBeGreaterThan(30);
});

test('README fits on one page: job, commands, first picture, the way to a purse, care', () => {
  const readme = guidePages()[0].text;
  expect(readme.split('\n').length).toBeLessThan(150);
  expect(readme.indexOf('\n\n', 12)).toBeGreaterThan(200);
});

/** The rows of a table of Markdown, cell by cell; `|` inside a cell becomes a stroke. */
const rowsOf = (text: string) =>
  text
    .split('\n')
    .filter((row) => /^\| `/.test(row))
    .map((row) =>
      row
        .replaceAll('\\|', '/')
        .split(' | ')
        .map((cell) => cell.replace(/^\| | \|$/g, '')),
    );

test('the table of options is that of the program: every one, in its order, with its default', () => {
  const { text } = guidePages().find(({ path }) => path.endsWith('options.md'))!;
  const rows = rowsOf(text).filter(([flags]) => !flags.includes('--version'));
  const told = rows.flatMap(([flags, , usual]) =>
    [...flags.matchAll(/`(--[a-z-]+)(?: ([^`]+))?`/g)].map(([, long, value]) => ({
      long,
      value,
      usual: usual.replaceAll('`', ''),
    })),
  );
  const table = Object.entries(chartTable as Table);
  const real = table.map(([, { flags, usual, said, choices, bounds }]) => {
    const [, long, value] = /(--[a-z-]+)(?: <(.*)>)?$/.exec(flags)!;
    const known = en.cli.options;
    const shown = typeof said === 'string' ? known[said] : said?.(en);
    const strict = choices !== undefined || bounds !== undefined;
    return { long, strict, value: choices ? choices.join('/') : value, usual: shown ?? usual };
  });
  const grouped = new Map(told.map((one) => [one.long, one]));
  expect(new Set(grouped.keys())).toEqual(new Set(real.map(({ long }) => long)));
  for (const { long, value, usual, strict } of real) {
    const one = grouped.get(long)!;
    // Where a value is a file or a bead, the guide may say so in its own way.
    if (strict && one.value !== undefined) expect(one.value, long).toBe(value);
    if (usual !== undefined) expect(one.usual, long).toContain(String(usual));
  }
});

test("README's table of files is that of the files that are made", () => {
  const { text } = guidePages()[0];
  const named = rowsOf(text).flatMap(([name]) => [...name.matchAll(/`([a-z-]+\.[a-z]+)`/g)]);
  const told = new Set(named.map(([, name]) => name));
  const made = outputs.filter(({ of }) => of !== 'two panels').map(({ name }) => name);
  expect([...told].filter((name) => name !== 'booklet.pdf').sort()).toEqual([...made].sort());
  for (const { name } of outputs) expect(text).toContain(`\`${name}\``);
});

import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { makeProgram } from '../src/cli/program.js';
import { en } from '../src/words/index.js';
import { inProcess } from './support/run.js';

const top = fileURLToPath(new URL('../', import.meta.url));
const silent = { out() {}, err() {}, progress: undefined, signal: new AbortController().signal };
const commands = (await makeProgram(en, silent)).commands.map((command) => command.name());
/** Help of the program itself stands under the empty name. */
const pages = ['', ...commands];

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-help-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function helpOf(name: string): Promise<string> {
  const { code, out, err } = await inProcess(...(name === '' ? [] : [name]), '--help');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return out;
}

/** The commands of the examples in a help text, in order. */
function examplesIn(help: string): string[] {
  const [block] = help.split('\n\n');
  return block.split('\n').slice(1);
}

test.each(pages)('help of “%s” starts with examples and ends with exit codes', async (name) => {
  const help = await helpOf(name);
  const heads = help.split('\n').filter((line) => /^[A-Z][^.]*:( .*)?$/.test(line));
  expect(heads[0]).toMatch(/^Examples/);
  expect(heads[1]).toMatch(/^Usage: rondure/);
  expect(heads.at(-1)).toBe('Exit codes:');
  const examples = examplesIn(help);
  expect(examples.length).toBeGreaterThanOrEqual(2);
  expect(examples.length).toBeLessThanOrEqual(4);
  for (const line of help.split('\n'))
    expect(Array.from(line).length, line).toBeLessThanOrEqual(80);
});

test('every option stands once in help, in a group with a name', async () => {
  for (const command of (await makeProgram(en, silent)).commands) {
    const help = await helpOf(command.name());
    expect(help).not.toContain('\nOptions:\n');
    for (const { flags } of command.options) {
      const lines = help.split('\n').filter((line) => line.startsWith(`  ${flags} `));
      expect(lines, flags).toHaveLength(1);
    }
  }
});

// The words of the help text itself are run, in a folder that holds nothing but our own files.
test.each(pages)('every example in the help of “%s” works in a fresh folder', async (name) => {
  const cwd = mkdtempSync(join(folder, 'fresh-'));
  for (const ours of ['fixtures', 'palettes']) symlinkSync(join(top, ours), join(cwd, ours));
  const home = process.cwd();
  onTestFinished(() => process.chdir(home));
  process.chdir(cwd);
  for (const example of examplesIn(await helpOf(name))) {
    const [program, ...argv] = example.trim().match(/"[^"]*"|\S+/g)!;
    expect(program).toBe('rondure');
    const words = argv.map((word) => word.replace(/^"|"$/g, ''));
    const { code, out, err } = await inProcess(...words);
    expect({ code, err }, example).toEqual({ code: 0, err: '' });
    expect(out, example).not.toBe('');
  }
});

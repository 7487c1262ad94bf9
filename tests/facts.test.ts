import ts from 'typescript';
import { beforeAll, expect, test } from 'vitest';
import { saidInFacts } from './support/said-in-facts.js';

/** Sentences on all the ways by which they came into facts before. */
const probe = [
  "import { RondureError, errorSentence } from '../core/errors.js';",
  "import { en } from '../words/index.js';",
  "import type { Words } from '../words/index.js';",
  'const { error } = en.cli;',
  'export function written(): never {',
  "  throw new RondureError('usage', { problem: 'say where it goes' as never });",
  '}',
  'function refuse(option: string, got: string, ...[expected]: [string]): never {',
  "  throw new RondureError('option-value', { option, got, expected: expected as never });",
  '}',
  'const through = (text: string) => refuse(text, text, en.cli.bug);',
  "export const twice = () => through('x');",
  'export function taken(): never {',
  "  throw new RondureError('usage', { problem: error as never });",
  '}',
  'export function worded(words: Words, faults: readonly RondureError[]): never {',
  '  const rows = faults.map((fault) => errorSentence(words, fault));',
  '  const facts = { problem: rows.join() as never };',
  "  throw new RondureError('usage', facts);",
  '}',
  'export function listed(words: Words, faults: readonly RondureError[]): never {',
  '  const told = faults.map((fault) => ({ message: errorSentence(words, fault) }));',
  "  throw new RondureError('usage', { problem: told as never });",
  '}',
];

let told: ReturnType<typeof saidInFacts>;
beforeAll(() => {
  const config = ts.getParsedCommandLineOfConfigFile(
    'tsconfig.json',
    {},
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => undefined },
  )!;
  const host = ts.createCompilerHost(config.options);
  // A file that is not there, beside those that are.
  const probed = `${process.cwd()}/src/cli/probe.ts`;
  const { fileExists, getSourceFile } = host;
  host.fileExists = (name) => name === probed || fileExists(name);
  host.getSourceFile = (name, target, ...rest) =>
    name === probed
      ? ts.createSourceFile(name, probe.join('\n'), target, true)
      : getSourceFile(name, target, ...rest);
  const program = ts.createProgram([...config.fileNames, probed], config.options, host);
  expect(program.getSemanticDiagnostics(program.getSourceFile(probed))).toEqual([]);
  const ours = program.getSourceFiles().filter(({ fileName }) => fileName.includes('/src/'));
  told = saidInFacts(program, ours);
});

test('no error holds a sentence in its facts', () => {
  expect(told.errors).toBeGreaterThan(100);
  expect(told.found.filter((one) => !one.startsWith('src/cli/probe.ts'))).toEqual([]);
});

test('and one that did would be found, on whichever way it came', () => {
  const lines = told.found.filter((one) => one.startsWith('src/cli/probe.ts'));
  expect(lines.map((one) => one.slice('src/cli/probe.ts:'.length))).toEqual([
    '11 en.cli.bug',
    '14 error',
    '17 errorSentence(words, fault)',
    '22 errorSentence(words, fault)',
    "6 'say where it goes'",
  ]);
});

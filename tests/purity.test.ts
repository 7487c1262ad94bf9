import { ESLint } from 'eslint';
import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';

/** What no file of the core may say; each went through an earlier form of the rules. */
const impure = {
  'loads while it runs': "export const loaded = import('../words/index.js');",
  "Node's modules": "export const loaded = import('node:fs');",
  'a clock': 'export const at = performance.now();',
  'the time of day': 'export const today = new Date();',
  'the network': "export const answer = fetch('https://example.org');",
  'a locale of numbers': 'export const shown = (2.5).toLocaleString();',
  'a locale of words': "export const order = 'a'.localeCompare('b');",
  'a locale of formats': "export const lists = new Intl.ListFormat('en');",
  'the document': 'export const page = document;',
  'the process': 'export const args = process.argv;',
  chance: 'export const lot = Math.random();',
};

describe('the core is pure', () => {
  const rules = new Set([
    'no-restricted-globals',
    'no-restricted-properties',
    'no-restricted-syntax',
    'no-restricted-imports',
  ]);
  // These rules ask nothing of the compiler, which would read all of the program first.
  const lint = new ESLint({
    ruleFilter: ({ ruleId }) => rules.has(ruleId),
    overrideConfig: {
      files: ['**/*.ts'],
      languageOptions: { parserOptions: { project: null } },
    },
  });

  async function faults(text: string, filePath: string): Promise<string[]> {
    const [{ messages }] = await lint.lintText(text, { filePath });
    // A file that could not be read at all would have no faults.
    expect(messages.filter(({ fatal, ruleId }) => fatal || !ruleId)).toEqual([]);
    return messages.map(({ message }) => message);
  }

  it.each(Object.entries(impure))('lint refuses %s', async (_, text) => {
    expect(await faults(text, 'src/core/units.ts')).not.toEqual([]);
  });

  it('lint lets what is pure pass', async () => {
    expect(await faults('export const two = 1 + 1;', 'src/core/units.ts')).toEqual([]);
  });
});

describe('the core compiles without the types of Node and of the DOM', () => {
  const probe = [
    'export const host = process;',
    'export const page = document;',
    'export const bytes = Buffer;',
    'export const later = setTimeout;',
    "export * from 'node:fs';",
  ];
  let faults: readonly ts.Diagnostic[];
  let loaded: string[];
  let probed: string;

  beforeAll(() => {
    const config = ts.getParsedCommandLineOfConfigFile(
      'tsconfig.core.json',
      {},
      { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => undefined },
    )!;
    const host = ts.createCompilerHost(config.options);
    // A file that is not there, beside those that are.
    probed = `${process.cwd()}/src/core/probe.ts`;
    const { readFile, fileExists, getSourceFile } = host;
    host.fileExists = (name) => name === probed || fileExists(name);
    host.readFile = (name) => (name === probed ? probe.join('\n') : readFile(name));
    host.getSourceFile = (name, target, ...rest) =>
      name === probed
        ? ts.createSourceFile(name, probe.join('\n'), target)
        : getSourceFile(name, target, ...rest);
    const { incremental: _incremental, tsBuildInfoFile: _file, ...options } = config.options;
    const program = ts.createProgram([...config.fileNames, probed], options, host);
    faults = ts.getPreEmitDiagnostics(program);
    loaded = program.getSourceFiles().map(({ fileName }) => fileName);
  });

  it('all of it, and none of theirs is loaded', () => {
    expect(loaded.some((name) => name.endsWith('/src/core/index.ts'))).toBe(true);
    expect(loaded.filter((name) => /@types\/node|lib\.dom|lib\.webworker/.test(name))).toEqual([]);
    const elsewhere = faults.filter(({ file }) => file?.fileName !== probed);
    expect(elsewhere.map(({ messageText }) => messageText)).toEqual([]);
  });

  it('and it would be told of each thing that is theirs', () => {
    const lines = faults.map(({ file, start }) => file!.getLineAndCharacterOfPosition(start!).line);
    expect(new Set(lines)).toEqual(new Set(probe.keys()));
  });
});

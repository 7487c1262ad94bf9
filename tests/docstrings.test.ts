import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

const top = fileURLToPath(new URL('../', import.meta.url));
const { config } = ts.readConfigFile(`${top}tsconfig.json`, (path) => readFileSync(path, 'utf8'));
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, top);
const entries = ['core', 'node'].map((layer) => `${top}src/${layer}/index.ts`);
const program = ts.createProgram(entries, { ...options, noEmit: true });
const checker = program.getTypeChecker();

/** Every export of an entry point with its docstring, as the compiler reads it. */
function exportsOf(entry: string): { name: string; said: string }[] {
  const module = checker.getSymbolAtLocation(program.getSourceFile(entry)!)!;
  return checker.getExportsOfModule(module).map((symbol) => {
    const alias = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
    const meant = alias ? checker.getAliasedSymbol(symbol) : symbol;
    const said = ts.displayPartsToString(meant.getDocumentationComment(checker));
    return { name: symbol.name, said };
  });
}

// The names at run time are pinned by api.test.ts; here types count as well.
test.each(entries)('every export of %s has a docstring with something to say', (entry) => {
  const found = exportsOf(entry);
  const atRunTime = readFileSync(
    `${top}tests/snapshots/exports-${entry.includes('/src/core/') ? 'core' : 'node'}.txt`,
    'utf8',
  );
  const names = found.map(({ name }) => name);
  for (const name of atRunTime.trim().split('\n')) expect(names).toContain(name);
  const silent = found.filter(({ said }) => said.trim().split(/\s+/).length < 3);
  expect(silent.map(({ name, said }) => `${name}: ${said}`)).toEqual([]);
});

test('every field of every interface that an entry point exports has a docstring', () => {
  const silent = new Set<string>();
  let fields = 0;
  for (const entry of entries) {
    for (const symbol of checker.getExportsOfModule(
      checker.getSymbolAtLocation(program.getSourceFile(entry)!)!,
    )) {
      const alias = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
      const meant = alias ? checker.getAliasedSymbol(symbol) : symbol;
      for (const declaration of meant.declarations ?? []) {
        const members = ts.isInterfaceDeclaration(declaration)
          ? declaration.members
          : ts.isTypeAliasDeclaration(declaration) && ts.isTypeLiteralNode(declaration.type)
            ? declaration.type.members
            : [];
        for (const { name } of members) {
          if (!name) continue;
          fields++;
          const field = checker.getSymbolAtLocation(name)!;
          const said = ts.displayPartsToString(field.getDocumentationComment(checker));
          if (said.trim() === '') silent.add(`${meant.name}.${name.getText()}`);
        }
      }
    }
  }
  expect(fields).toBeGreaterThan(700);
  expect([...silent].sort()).toEqual([]);
});

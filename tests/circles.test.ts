import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/** Every file of src by its path in it, with the files that it imports, types too. */
function importsOf(root: string): Map<string, string[]> {
  const names = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter(
    (name) => /\.tsx?$/.test(name) && !name.endsWith('.d.ts'),
  );
  const known = new Set(names);
  return new Map(
    names.map((name) => {
      const { importedFiles } = ts.preProcessFile(readFileSync(join(root, name), 'utf8'));
      const found = importedFiles.flatMap(({ fileName }) => {
        if (!fileName.startsWith('.')) return [];
        const plain = join(dirname(name), fileName).replace(/\.js$/, '');
        return [`${plain}.ts`, `${plain}.tsx`].filter((one) => known.has(one));
      });
      return [name, found];
    }),
  );
}

/**
 * Sets of more than one that lead back to themselves (R. Tarjan, Depth-first search and linear graph
 * algorithms, SIAM J. Comput. 1, 1972).
 */
function circles(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const number = new Map<string, number>();
  const low = new Map<string, number>();
  const stack: string[] = [];
  const found: string[][] = [];
  const visit = (at: string): void => {
    number.set(at, number.size);
    low.set(at, number.get(at)!);
    stack.push(at);
    for (const next of graph.get(at) ?? []) {
      if (!number.has(next)) visit(next);
      if (stack.includes(next)) low.set(at, Math.min(low.get(at)!, low.get(next)!));
    }
    if (low.get(at) !== number.get(at)) return;
    const circle = stack.splice(stack.indexOf(at));
    if (circle.length > 1) found.push(circle.sort());
  };
  for (const name of graph.keys()) if (!number.has(name)) visit(name);
  return found;
}

/** A room is a folder without folders in it, or a file that lies beside folders. */
function rooms(files: ReadonlyMap<string, readonly string[]>): Map<string, string[]> {
  const folders = new Set([...files.keys()].map((name) => dirname(name)));
  const inner = (folder: string) =>
    [...folders].some(
      (other) => other.startsWith(folder === '.' ? '' : `${folder}/`) && other !== folder,
    );
  const split = new Set([...folders].filter(inner));
  const roomOf = (name: string) => (split.has(dirname(name)) ? name : dirname(name));
  const found = new Map<string, string[]>();
  for (const [name, imports] of files) {
    const to = imports.map(roomOf).filter((room) => room !== roomOf(name));
    found.set(roomOf(name), [...(found.get(roomOf(name)) ?? []), ...to]);
  }
  return found;
}

describe('what imports what', () => {
  const files = importsOf('src');
  const below = (...layers: string[]) =>
    new Map([...files].filter(([name]) => layers.some((layer) => name.startsWith(`${layer}/`))));

  it('is found at all', () => {
    expect(files.get('core/make.ts')).toContain('core/charting.ts');
    const round = new Map([
      ['a', ['b']],
      ['b', ['c', 'd']],
      ['c', ['a']],
      ['d', []],
    ]);
    expect(circles(round)).toEqual([['a', 'b', 'c']]);
  });

  it('no file leads back to itself, types included', () => {
    expect(circles(files)).toEqual([]);
  });

  it.each(['words', 'core', 'node', 'booklet', 'cli'])(
    'no room of %s leads back to itself, types included',
    (layer) => {
      expect(circles(rooms(below(layer)))).toEqual([]);
    },
  );
});

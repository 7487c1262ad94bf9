import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import { beadsInWorkingOrder } from '../src/core/pattern/stitches.js';
import { panelSheet } from './support/panel-sheet.js';
import { tool } from './support/poppler.js';
import { inProcess } from './support/run.js';

const folder = mkdtempSync(join(tmpdir(), 'rondure-structure-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const { pattern } = panelSheet({ wedges: 7, rounds: 26 }, 5);
const from = join(folder, 'pattern.json');

/** One line of `pdfinfo -struct-text`: how deep it lies, and what it says. */
interface Entry {
  readonly depth: number;
  readonly type: string;
  readonly text: string;
}

/** Poppler's reading of the structure tree, which shares no code with the writer. */
function structureOf(file: string): Entry[] {
  const entries: { depth: number; type: string; text: string }[] = [];
  const said = tool('pdfinfo', ['-struct-text', file]).toString().split('\n');
  for (const line of said) {
    const depth = (/^ */.exec(line)![0].length - 0) / 2;
    const text = /^ *"(.*)"$/.exec(line)?.[1];
    if (text !== undefined) entries.at(-1)!.text += text;
    else if (/^ *[A-Z][A-Za-z0-9]*/.test(line) && !line.includes('/')) {
      entries.push({ depth, type: /[A-Z][A-Za-z0-9]*/.exec(line)![0], text: '' });
    }
  }
  return entries;
}

async function booklet(name: string, ...argv: string[]): Promise<string> {
  const file = join(folder, `${name}.pdf`);
  const made = await inProcess('booklet', from, '-o', file, '--force', ...argv);
  expect(made).toMatchObject({ code: 0, err: '' });
  return file;
}

let file: string;
let entries: Entry[];
beforeAll(async () => {
  writeFileSync(from, patternText(pattern));
  file = await booklet('usual', '--date', '2026-03-14', '--author', 'A. Maker');
  entries = structureOf(file);
}, 300_000);

test('headings nest: a part begins with its H1, and an H2 comes after one (PDF/UA-1, 7.4)', () => {
  expect(entries[0]).toMatchObject({ depth: 0, type: 'Document' });
  let open = false;
  for (const { type } of entries) {
    if (type === 'Sect') open = false;
    if (type === 'H1') open = true;
    if (type === 'H2') expect(open).toBe(true);
  }
  expect(entries.filter(({ type }) => type === 'H1').length).toBeGreaterThanOrEqual(9);
  for (const { type, text } of entries) {
    if (type === 'H1' || type === 'H2') expect(text.trim()).not.toBe('');
  }
});

/** What stands below the headings that a text begins with, up to the next heading. */
function below(heading: RegExp): Entry[][] {
  return entries.flatMap(({ type, text }, n) => {
    if (type !== 'H2' || !heading.test(text)) return [];
    const next = entries.findIndex((one, k) => k > n && /^(H1|H2|Sect)$/.test(one.type));
    return [entries.slice(n + 1, next < 0 ? undefined : next)];
  });
}

test('the rounds are rows of four cells in the order of the work, whatever the pages', () => {
  const rows: string[][] = [];
  for (const { type, text } of below(/^Work rounds? /).flat()) {
    if (type === 'TR') rows.push([]);
    if (type === 'TH' || type === 'TD') rows.at(-1)!.push(text.trim());
  }
  const bodies = rows.filter(([round]) => /^R\d/.test(round));
  expect(bodies).toHaveLength(pattern.shape.rounds);
  for (const row of rows) expect(row).toHaveLength(4);
  let total = 0;
  for (const [n, [round, , beads, all]] of bodies.entries()) {
    total += 7 * (n + 1);
    expect([round, beads, all]).toEqual([
      `R${n + 1}`,
      String(7 * (n + 1)),
      total.toLocaleString('en'),
    ]);
  }
});

test('the stringing list read in the tree’s order and expanded is the pattern reversed', () => {
  const lengths = below(/^String length/).map((list) =>
    list
      .filter(({ type }) => type === 'TD')
      .map((one) => one.text.trim())
      .filter((one) => /^[\dA-Z() x]+$/.test(one) && /\d[A-Z]/.test(one))
      .join(' ')
      .replace(/\(([^()]*)\) x (\d+)/g, (_, runs: string, times) =>
        `${runs} `.repeat(Number(times)),
      )
      .replace(/(\d+)([A-Z])/g, (_, count, letter: string) => letter.repeat(Number(count)))
      .replace(/ /g, ''),
  );
  expect(lengths.length).toBeGreaterThan(1);
  const worked = Array.from(beadsInWorkingOrder(pattern.panels[0])).join('');
  const reversed = Array.from(worked).reverse().join('');
  expect([...lengths].reverse().join('')).toBe(reversed);
});

test('lists are lists: L holds LI, each with a body (ISO 14289-1, 7.6)', () => {
  const lists = entries.filter(({ type }) => type === 'L');
  expect(lists.length).toBeGreaterThanOrEqual(4);
  let open = 0;
  for (const { type, depth } of entries) {
    if (type === 'L') open = depth;
    if (type === 'LI') expect(depth).toBe(open + 1);
    if (type === 'LBody' || type === 'Lbl') expect(depth).toBe(open + 2);
  }
});

test('every picture has words in its place, and every letter outside pictures is in the tree', async () => {
  const doc = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise;
  let figures = 0;
  for (let n = 1; n <= doc.numPages; n++) {
    const page = await doc.getPage(n);
    type Node = { role?: string; alt?: string; children?: Node[] };
    const walk = (node: Node): void => {
      if (node.role === 'Figure') {
        figures++;
        expect(node.alt?.length ?? 0).toBeGreaterThan(20);
      }
      for (const child of node.children ?? []) walk(child);
    };
    walk((await page.getStructTree()) as Node);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    // Content of the tree has a number; ornament has none.
    const open: boolean[] = [];
    let ornament = '';
    for (const item of items) {
      if ('type' in item) {
        if (item.type === 'endMarkedContent') open.pop();
        else open.push(Boolean(item.id));
      } else if (item.str.trim() !== '') {
        expect(open, item.str).not.toEqual([]);
        if (!open.includes(true)) ornament += `${item.str} `;
      }
    }
    // The foot, and what a page says again of the one before: its heading and table head.
    expect(ornament).toMatch(new RegExp(`${n} of ${doc.numPages} $`));
    expect(ornament.length).toBeLessThan(200);
  }
  expect(figures).toBeGreaterThanOrEqual(3);
  await doc.destroy();
});

test('the list of contents names every part; dates and author are told', async () => {
  const doc = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise;
  const outline = (await doc.getOutline()).map(({ title }) => title);
  expect(outline).toEqual(
    expect.arrayContaining(['Chart', 'Chart as you see it', 'String and work']),
  );
  await doc.destroy();
  const about = tool('pdfinfo', ['-isodates', file]).toString();
  expect(about).toMatch(/Tagged:\s+yes/);
  expect(about).toMatch(/Author:\s+A\. Maker/);
  expect(about).toMatch(/CreationDate:\s+2026-03-14T00:00:00Z/);
  expect(tool('qpdf', ['--check', file]).toString()).toMatch(/No syntax or stream encoding errors/);
});

describe('two languages side by side', () => {
  test('parts name both languages, and a heading is one in the tree', async () => {
    const both = await booklet('both', '--language', 'de,en-GB');
    const doc = await getDocument({ data: new Uint8Array(readFileSync(both)), verbosity: 0 })
      .promise;
    const languages = new Set<string>();
    for (let n = 1; n <= doc.numPages; n++) {
      type Node = { lang?: string; children?: Node[] };
      const walk = (node: Node): void => {
        if (node.lang) languages.add(node.lang);
        for (const child of node.children ?? []) walk(child);
      };
      walk((await (await doc.getPage(n)).getStructTree()) as Node);
    }
    expect([...languages].sort()).toEqual(['de', 'en-GB']);
    await doc.destroy();
    // The template has no room for two languages: its sheets stand once in each.
    const headings = (of: Entry[]) =>
      of.filter(({ type, text }) => type === 'H1' && !/^(Lining|Futter): /.test(text));
    expect(headings(structureOf(both))).toHaveLength(headings(entries).length);
  });
});

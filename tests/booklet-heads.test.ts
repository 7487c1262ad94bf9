import { expect, test } from 'vitest';
import type { Layout } from '../src/booklet/layout.js';
import type { StructureNode } from '../src/booklet/structure.js';
import { sewingTable } from '../src/core/pages/lists/sewing.js';
import { languages } from '../src/words/index.js';
import { laidOut, onePanel, purse } from './support/booklets.js';
import { PageReach } from './support/page-reach.js';

/** Something drawn: its page, how high and how low it reaches, and the parts it lies in. */
interface Set {
  readonly page: number;
  readonly top: number;
  readonly bottom: number;
  readonly texts: readonly string[];
  /** From the outermost to its own. */
  readonly nodes: readonly StructureNode[];
}

function everything({ look, flow }: Layout): Set[] {
  const parent = new Map<StructureNode, StructureNode>();
  const walk = (node: StructureNode) => {
    for (const child of node.children) {
      parent.set(child, node);
      walk(child);
    }
  };
  walk(flow.root);
  const chain = (node: StructureNode | undefined): StructureNode[] =>
    node ? [...chain(parent.get(node)), node] : [];
  return flow.pages.flatMap(({ drawn, ruled }, page) =>
    drawn
      .filter(({ node }) => node && ruled)
      .map(({ draw, node }) => {
        const { top, bottom, texts } = draws(draw);
        return { page, top, bottom, texts, nodes: chain(node) };
      }),
  );
  function draws(draw: Layout['flow']['pages'][number]['drawn'][number]['draw']): PageReach {
    const reach = new PageReach(look.widthMm, look.heightMm);
    draw(reach);
    return reach;
  }
}

const isHead = ({ nodes }: Set) => nodes.some(({ type }) => type === 'H1' || type === 'H2');
const isColumnHead = ({ nodes }: Set) => nodes.some(({ facts }) => facts.scope === 'Column');
const tableOf = ({ nodes }: Set) => nodes.find(({ type }) => type === 'Table');
const textOf = (node: StructureNode, all: readonly Set[]) =>
  all
    .filter(({ nodes }) => nodes.includes(node))
    .flatMap(({ texts }) => texts)
    .join('');

const cases = languages.flatMap((language) =>
  [{ large: true }, {}].map((edition) => ({ language, edition })),
);

test.each(cases)('$language $edition: a head stays with what it is the head of', async (one) => {
  for (const pattern of [onePanel, purse]) {
    const all = everything(await laidOut(pattern, [one.language], one.edition));
    const heads = all.filter(isHead);
    expect(heads.length).toBeGreaterThan(20);
    for (const head of heads) {
      const with_ = all.filter(
        (other) => !isHead(other) && other.page === head.page && other.bottom > head.top,
      );
      expect(with_.length, `${head.texts.join(' ')}, page ${head.page + 1}`).toBeGreaterThan(0);
    }
    const tables = new globalThis.Set(all.flatMap((other) => tableOf(other) ?? []));
    expect(tables.size).toBeGreaterThan(4);
    for (const table of tables) {
      const inside = all.filter(({ nodes }) => nodes.includes(table));
      const { page } = inside.find(isColumnHead)!;
      const rows = new globalThis.Set(
        inside
          .filter((cell) => !isColumnHead(cell) && cell.page === page)
          .map(({ nodes }) => nodes.find(({ type }) => type === 'TR')),
      );
      const text = textOf(table, all).slice(0, 60);
      expect(rows.size, `${text}, page ${page + 1}`).toBeGreaterThanOrEqual(2);
    }
  }
});

test.each(cases)('$language $edition: the clock of the seam is on one page', async (one) => {
  const layout = await laidOut(purse, [one.language], one.edition);
  const all = everything(layout);
  const [, ...hours] = sewingTable(layout.facts.pattern, layout.facts.words);
  const bare = (text: string) => text.replace(/\s/g, '');
  const rowHeads = all.filter(({ nodes }) => nodes.some(({ facts }) => facts.scope === 'Row'));
  const found = hours.map(
    ([hour]) => rowHeads.find(({ texts }) => bare(texts.join('')) === bare(hour))?.page,
  );
  expect(hours.length).toBeGreaterThan(5);
  expect(new globalThis.Set(found).size).toBe(1);
  expect(found[0]).toBeDefined();
});

// The words of Japanese and Chinese: the dictionary of ICU by ECMA-402's Intl.Segmenter.
test.each(['ja', 'zh'] as const)('in %s no line of a head ends inside a word', async (language) => {
  const segmenter = new Intl.Segmenter(language, { granularity: 'word' });
  let broken = 0;
  for (const pattern of [onePanel, purse]) {
    for (const edition of [{}, { large: true }, { grey: true }]) {
      for (const paper of ['a4', 'letter'] as const) {
        const all = everything(await laidOut(pattern, [language], edition, paper));
        for (const head of all.filter((other) => isHead(other) || isColumnHead(other))) {
          const lines = head.texts.map((text) => text.trim());
          const begins = [...segmenter.segment(lines.join(''))].map(({ index }) => index);
          for (let n = 1; n < lines.length; n++) {
            expect(begins, lines.join(' | ')).toContain(lines.slice(0, n).join('').length);
            broken++;
          }
        }
      }
    }
  }
  expect(broken).toBeGreaterThan(10);
});

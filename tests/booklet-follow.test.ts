import { describe, expect, test } from 'vitest';
import type { Layout } from '../src/booklet/layout.js';
import { liningPages } from '../src/core/pages/lining/lining-pages.js';
import { planLining } from '../src/core/purse/lining/plan.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { languages, wordsIn } from '../src/words/index.js';
import { laidOut, onePanel, purse } from './support/booklets.js';
import { PageReach } from './support/page-reach.js';

// What one asked who followed a purse on paper.

const textsOf = ({ look, flow }: Layout): string[] =>
  flow.pages.map(({ drawn, ruled }) => {
    const page = new PageReach(look.widthMm, look.heightMm);
    if (ruled) for (const { draw } of drawn) draw(page);
    return bare(page.texts.join(''));
  });
const bare = (text: string) => text.replace(/\s/g, '');

describe.each(languages)('in %s', (language) => {
  test('where one stops, the page is named that shows how to join', async () => {
    const pattern = { ...purse, thread: { lengthBeads: 600 } };
    const layout = await laidOut(pattern, [language]);
    const { words } = layout.facts;
    const { ask } = words.hands['new-length'];
    const texts = textsOf(layout);
    // Elsewhere it is the head of the drawing.
    const page = texts.findIndex((text) => text.includes(bare(ask))) + 1;
    expect(page).toBeGreaterThan(1);
    const told = bare(`${ask} ${words.booklet.work.seePage({ page })}`);
    const stops = texts.slice(page).join('').split(bare(words.booklet.work.stop)).length - 1;
    expect(stops).toBeGreaterThanOrEqual(4);
    expect(texts.slice(page).join('').split(told).length - 1).toBe(4);
  });

  test('what a round begins with is told with round 1, and with the lists', async () => {
    const layout = await laidOut(onePanel, [language]);
    const { words } = layout.facts;
    const asked = { beadsFace: 'away', construction: 'spiral', way: 'both-loops', wedges: 7, fixing: 'sewn', bare: false, tailCm: 20, front: 'x', back: 'y' } as const; // prettier-ignore
    const [, loop, ring] = words.hands.ring.steps(asked);
    const text = textsOf(layout).join('');
    for (const one of [loop, ring]) expect(text).toContain(bare(one));
    // 3 or 4 chains are the other way to begin; the same is said in the text files.
    for (const one of [ring, words.rounds.begin({ wedges: 7, tailCm: 20 })]) {
      expect(one).toMatch(/3\D+4/);
    }
  });

  test('only signs that the pattern has are explained', async () => {
    const { words } = await wordsIn([language]);
    const [, meaning] = words.booklet.before
      .table('B')
      .find(([sign]) => sign === words.lists.bare)!;
    expect(textsOf(await laidOut(onePanel, [language])).join('')).not.toContain(bare(meaning));
    expect(textsOf(await laidOut(purse, [language])).join('')).toContain(bare(meaning));
  });

  test('steps of the lining are numbered, facts are not', async () => {
    const { words } = await wordsIn([language]);
    const fonts = await fontsForPages(language, []);
    const lining = planLining(onePanel);
    const [page] = liningPages({ lining, title: 'x', words, fonts }, 'a4');
    const set = page.parts.map((part) => {
      const reach = new PageReach(page.widthMm, page.heightMm);
      part.draw(reach);
      return { as: part.as, text: bare(reach.texts.join('')) };
    });
    const steps = set.filter(({ as }) => as === 'step');
    const said = words.lining;
    steps.forEach(({ text }, n) => expect(text).toMatch(new RegExp(`^${n + 1}`)));
    for (const step of [said.print, said.cutTwo, said.put]) {
      expect(steps.some(({ text }) => text.endsWith(bare(step)))).toBe(true);
    }
    for (const fact of [said.spiral, said.caution]) {
      expect(set).toContainEqual({ as: 'text', text: bare(fact) });
    }
  });
});

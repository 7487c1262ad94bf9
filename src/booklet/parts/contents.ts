import { drawTestSquare, testSquaresMm } from '../../core/pages/surface/print-check.js';
import { drawText } from '../../core/pages/surface/text.js';
import { flat } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { lineMm, linesOf, readOn } from '../look.js';
import { levelText } from './cover.js';
import { whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** A thing with the page on which it stands. */
export interface Entry {
  readonly text: string;
  readonly mark: string;
}

/** Contents beside the steps of the work, the level, and a square to measure the print by. */
export function addContents(
  flow: Flow,
  facts: BookletFacts,
  parts: readonly Entry[],
  steps: readonly Entry[],
): void {
  const { pattern, words, fonts } = facts;
  const { look } = flow;
  const say = words.booklet.work;
  flow.part({ heading: say.contents, where: whereOf(facts, say.contents) });
  const apart = look.large || facts.languages.length > 1;
  const gap = 10;
  const wide = apart ? flow.wide : 0.58 * (flow.wide - gap);
  const narrow = flow.wide - gap - wide;
  const top = flow.y;
  entries(flow, parts, look.left, apart ? wide : narrow);
  const end = flow.y;
  if (!apart) flow.y = top;
  const left = apart ? look.left : look.left + narrow + gap;
  if (apart) flow.y += 3;
  flow.set(say.glance, look.subheading, 'H2', { left, wide });
  flow.y += 1;
  entries(flow, steps, left, wide, true);
  flow.y = Math.max(flow.y, apart ? 0 : end) + 4;
  const inches = facts.languages[0] === 'en-US' ? 1 : 0;
  const side = testSquaresMm[inches];
  const text = say.printText({ side: [words.lining.check.mm, words.lining.check.inch][inches] });
  const beside = look.left + side + 8;
  const textWide = look.right - beside;
  const textMm = [text, levelText(pattern, words)]
    .map((one) => flow.highOf(one, look.body, textWide))
    .concat(
      [say.print, words.booklet.level.title].map((one) =>
        flow.highOf(one, look.subheading, textWide),
      ),
    )
    .reduce((sum, one) => sum + one, 4);
  const high = Math.max(side, textMm);
  if (facts.languages.length > 1) {
    addSquareAlone(flow, facts, text);
    return;
  }
  if (!flow.fits(high)) flow.next();
  const squareTop = flow.y;
  const node = flow.section.add('Figure', { alt: flat(say.alt.square) });
  flow.set(say.print, look.subheading, 'H2', { left: beside });
  flow.y += 1;
  flow.draw((surface) => {
    drawTestSquare(surface, inches, look.left, squareTop + 1, { words, fonts });
  }, node);
  flow.set(text, look.body, 'P', { left: beside });
  flow.y += 2;
  flow.set(words.booklet.level.title, look.subheading, 'H2', { left: beside });
  flow.set(levelText(pattern, words), look.body, 'P', { left: beside });
  flow.y = Math.max(flow.y, squareTop + side) + 3;
}

/** The square above its words, in two languages side by side. */
function addSquareAlone(flow: Flow, facts: BookletFacts, text: string): void {
  const { pattern, words, fonts } = facts;
  const { look } = flow;
  const say = words.booklet.work;
  const inches = facts.languages[0] === 'en-US' ? 1 : 0;
  flow.titled(say.print, [text]);
  flow.figure(
    {
      widthMm: testSquaresMm[inches],
      heightMm: testSquaresMm[inches] + 2,
      alt: say.alt.square,
      draw: (surface, left, top) =>
        drawTestSquare(surface, inches, left, top + 1, { words, fonts }),
    },
    look.left,
  );
  flow.titled(words.booklet.level.title, [levelText(pattern, words)]);
}

/** Lines with a page number at their ends; steps are numbered themselves. */
function entries(
  flow: Flow,
  items: readonly Entry[],
  left: number,
  wide: number,
  numbered = false,
): void {
  const { look } = flow;
  const style = look.body;
  const indent = numbered ? 8 : 0;
  const list = flow.section.add('L');
  items.forEach(({ text, mark }, n) => {
    const lines = linesOf(flat(text), style, wide - indent - 12);
    const high = lines.length * lineMm(style);
    if (!flow.fits(high)) flow.next();
    const item = list.add('LI');
    const base = flow.y + 0.78 * lineMm(style);
    if (numbered) {
      flow.draw((surface) => {
        const number = { ...look.strong, ink: look.tint.accent };
        drawText(surface, `${n + 1} `, number, left, base);
      }, item.add('Lbl'));
    }
    flow.draw((surface) => {
      readOn([...lines, '']).forEach((line, k) => {
        if (line.trim() !== '')
          drawText(surface, line, style, left + indent, base + k * lineMm(style));
      });
      const page = flow.pageOf(mark);
      const last = base + (lines.length - 1) * lineMm(style);
      if (page !== undefined) drawText(surface, String(page), look.cell, left + wide, last, 'end');
    }, item.add('LBody'));
    flow.y += high + 0.5;
  });
  flow.y += 1.5;
}

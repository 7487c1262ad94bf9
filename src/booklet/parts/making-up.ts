import { frameParagraph } from '../../core/texts/rounds.js';
import { sewingParagraphs, sewingTable } from '../../core/texts/sewing.js';
import type { Flow } from '../flow.js';
import { drawTable, textCell } from '../table.js';
import { whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';
import { addLining, liningTemplates } from './lining.js';

/** Seam, frame and lining, and the lining template at true size. */
export function addMakingUp(flow: Flow, facts: BookletFacts): void {
  const { pattern, words } = facts;
  const { look } = flow;
  const say = words.booklet.making;
  const { making: heading } = words.booklet.parts;
  const { panels, frame } = pattern;
  const templates = liningTemplates(flow, facts);
  flow.part({ heading, where: whereOf(facts, heading) });
  flow.titled(say.panels, [panels.length === 2 ? say.two : say.one]);
  if (panels.length === 1) flow.titled(say.seam, [say.oneSeam]);
  else {
    flow.titled(say.seam, sewingParagraphs(pattern, words));
    const [head, ...pairs] = sewingTable(pattern, words);
    const columns = head.map((text, n) => ({
      head: text,
      widthMm: n === 0 ? flow.wide / 2 : flow.wide / 4,
    }));
    flow.subheading(say.pairs, 30);
    const rows = pairs.map((row) => row.map((text, n) => textCell(text, look.body, columns[n])));
    drawTable(flow, columns, rows);
  }
  const held = frame ? panels.map((panel) => frameParagraph(pattern, frame, panel, words)) : [];
  flow.titled(say.frame, [...new Set(held), say.frameText]);
  flow.titled(say.lining, [templates.length === 0 ? say.noTemplate : say.liningText]);
  flow.titled(say.washing, [say.washingText]);
  addLining(flow, facts, templates);
}

import type { Flow } from '../flow.js';
import { levelText } from './cover.js';
import { whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** The cautions. */
export function addCautions(flow: Flow, facts: BookletFacts): void {
  const { words } = facts;
  const { cautions: heading } = words.booklet.parts;
  flow.part({ heading, where: whereOf(facts, heading) });
  for (const one of words.shopping.care) flow.paragraph(one);
}

/** Who, when, under which licence, by which version. */
export function addLast(flow: Flow, facts: BookletFacts): void {
  const { pattern, words, author, date, licence, version } = facts;
  const say = words.booklet.last;
  const { last: heading } = words.booklet.parts;
  flow.part({ heading, where: whereOf(facts, heading) });
  flow.titled(say.title, [pattern.title]);
  flow.titled(words.booklet.level.title, [levelText(pattern, words)]);
  if (author !== undefined) flow.titled(say.author, [author]);
  if (date !== undefined) flow.titled(say.date, [date]);
  flow.titled(say.licence, [licence ?? say.noLicence]);
  flow.titled(say.version, [say.versionText({ program: version, format: pattern.version })]);
  flow.titled(say.figures, [say.figuresText]);
  flow.titled(say.read, [say.readText]);
}

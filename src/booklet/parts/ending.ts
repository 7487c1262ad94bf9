import { drawText } from '../../core/pages/surface/text.js';
import { flat } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';
import { whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** The cautions, once, and how a wrong bead is mended. */
export function addCautions(flow: Flow, facts: BookletFacts): void {
  const { words } = facts;
  const { cautions: heading } = words.booklet.parts;
  flow.part({ heading, where: whereOf(facts, heading), mark: 'cautions', besideMm: 50 });
  flow.list(words.shopping.care, undefined, flow.look.left);
  const { wrong, wrongText } = words.booklet.making;
  flow.titled(wrong, [wrongText]);
}

/** Rights, corrections, version, and room for the maker's own purse. */
export function addLast(flow: Flow, facts: BookletFacts): void {
  const { pattern, words, author, date, licence, contact, version } = facts;
  const say = words.booklet.last;
  const { rights } = words.booklet.work;
  const { last: heading } = words.booklet.parts;
  flow.part({ heading, where: whereOf(facts, heading), mark: 'last', besideMm: 60 });
  const without = author === undefined ? rights.none : rights.authorOnly({ author });
  const made = [say.versionText({ program: version, format: pattern.version }), date];
  const style = { ...flow.look.small, ink: '#000000' };
  const told: [heading: string, text: string][] = [
    [rights.title, licence ?? without],
    ...(contact === undefined
      ? []
      : ([[rights.contact, rights.contactText({ contact })]] as [string, string][])),
    [say.figures, say.figuresText],
    [say.read, say.readText],
    [say.version, made.filter((part) => part !== undefined).join('  ·  ')],
  ];
  for (const [heading, text] of told) flow.titled(heading, [text], { style });
  addYours(flow, facts);
}

/** Lines to write on, and a field for a swatch or a few beads on a thread. */
function addYours(flow: Flow, facts: BookletFacts): void {
  const { look } = flow;
  const say = facts.words.booklet.work.yours;
  const rowMm = Math.max(8.5, 1.3 * lineMm(look.body));
  const left = [say.madeFor, say.begun, say.finished, say.bead];
  const right = [say.thread, say.hook, ...[5, 10].map((rounds) => say.after({ rounds }))];
  const apart = look.large || facts.languages.length > 1;
  const rows = apart ? left.length + right.length : Math.max(left.length, right.length);
  if (!flow.fits(rows * rowMm + 2 * lineMm(look.subheading) + 32)) {
    flow.part({ heading: say.title, where: whereOf(facts, say.title), mark: 'yours' });
  } else {
    flow.mark('yours');
    flow.y += 2;
    flow.set(say.title, look.heading, 'H1');
    flow.y += 3;
  }
  const gap = 10;
  const wide = apart ? flow.wide : (flow.wide - gap) / 2;
  const top = flow.y;
  const lines = (labels: readonly string[], x: number) => {
    for (const label of labels) {
      const base = flow.y + rowMm - 2.4;
      flow.draw((surface) => {
        surface.strokePath([[x, base + 1.2, x + wide, base + 1.2]], {
          stroke: '#767676',
          widthMm: 0.2,
        });
      });
      const text = flat(label);
      flow.draw(
        (surface) => drawText(surface, `${text} `, look.small, x, base),
        flow.section.add('P'),
      );
      flow.y += rowMm;
    }
  };
  lines(left, look.left);
  if (!apart) flow.y = top;
  const x = apart ? look.left : look.left + wide + gap;
  lines(right, x);
  flow.y = Math.max(flow.y, top + rows * rowMm) + 3;
  if (!flow.fits(30)) return;
  // The rest of the page: notes, and a sample of thread and beads.
  const box = flow.y;
  const notes = flow.look.bottom;
  flow.draw((surface) => {
    const ring = [look.left, box, look.right, box, look.right, notes, look.left, notes];
    surface.strokePath([ring], { stroke: '#767676', widthMm: 0.2, closed: true });
  });
  const style = look.small;
  flow.draw(
    (surface) =>
      drawText(surface, `${flat(say.notes)} `, style, look.left + 3, box + 1.1 * lineMm(style)),
    flow.section.add('P'),
  );
  flow.y = notes;
}

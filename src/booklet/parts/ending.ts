import { drawText } from '../../core/pages/surface/text.js';
import { flat } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import { lineMm } from '../look.js';
import { whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** Between two columns. */
const columnGapMm = 10;

/** The cautions, once, and how a wrong bead is mended. */
export function addCautions(flow: Flow, facts: BookletFacts): void {
  const { words } = facts;
  const { cautions: heading } = words.booklet.parts;
  flow.part({ heading, where: whereOf(facts, heading), mark: 'cautions', besideMm: 50 });
  flow.list(words.shopping.care, undefined, flow.look.left);
  const { wrong, wrongText } = words.booklet.making;
  flow.titled(wrong, [wrongText]);
}

/** Lines to write on are so far apart; in large print a little more than a line of it. */
const leastRowMm = 8.5;
/** Below the lines there is so much for notes at least, or none. */
const leastNotesMm = 30;
/** How much of the width is for the lines, where they stand beside the words. */
const yoursShare = 0.31;
/** What the heading of a part takes, where it goes on below another. */
const headMm = 20;

/**
 * Rights, corrections and version, beside lines for the maker's own purse where a page has room, else
 * above them; the rest of the page is for notes and a sample of thread and beads.
 */
export function addLast(flow: Flow, facts: BookletFacts): void {
  const { pattern, words, author, date, licence, contact } = facts;
  const { look } = flow;
  const say = words.booklet.last;
  const { rights, yours } = words.booklet.work;
  const { last: heading } = words.booklet.parts;
  const without = author === undefined ? rights.none : rights.authorOnly({ author });
  const made = [say.versionText({ program: facts.version, format: pattern.version }), date];
  const version = made.filter((part) => part !== undefined).join('  ·  ');
  const style = { ...look.small, ink: '#000000' };
  const told: readonly (readonly [heading: string, text: string])[] = [
    [rights.title, licence ?? without],
    ...(contact === undefined ? [] : [[rights.contact, rights.contactText({ contact })] as const]),
    [say.figures, say.figuresText],
    [say.read, say.readText],
  ];
  const labels = [
    ...[yours.madeFor, yours.begun, yours.finished, yours.bead, yours.thread, yours.hook],
    ...[5, 10].map((rounds) => yours.after({ rounds })),
  ];
  const rowMm = Math.max(leastRowMm, 1.3 * lineMm(look.body));
  const tell = () => {
    for (const [heading, text] of told) flow.titled(heading, [text], { style });
    flow.paragraph(version, style);
  };
  const where = whereOf(facts, heading);
  const wide = yoursShare * flow.wide;
  const textWide = flow.wide - wide - columnGapMm;
  const toldMm = told.reduce(
    (sum, [heading, text]) =>
      sum +
      flow.highOf(heading, look.subheading, textWide) +
      flow.highOf(text, style, textWide) +
      4.2,
    flow.highOf(version, style, textWide),
  );
  const yoursMm = lineMm(look.subheading) + labels.length * rowMm;
  const besideMm = Math.max(toldMm, yoursMm);
  if (flow.hangs && besideMm <= look.bottom - look.top - headMm) {
    flow.part({ heading, where, mark: 'last', besideMm });
    const top = flow.y;
    flow.inColumn({ keptMm: wide + columnGapMm }, tell);
    const end = flow.y;
    // As high as the first heading beside it.
    flow.y = top + 1.5;
    flow.mark('yours');
    const left = look.right - wide;
    flow.set(yours.title, look.subheading, 'H1', { left });
    addLines(flow, labels, { left, wide, rowMm });
    flow.y = Math.max(end, flow.y);
  } else {
    flow.part({ heading, where, mark: 'last', besideMm: 60 });
    tell();
    if (!flow.fits(labels.length * rowMm + 2 * lineMm(look.subheading) + 32)) {
      flow.part({ heading: yours.title, where: whereOf(facts, yours.title), mark: 'yours' });
    } else {
      flow.mark('yours');
      flow.y += 2;
      flow.set(yours.title, look.heading, 'H1');
      flow.y += 3;
    }
    addLines(flow, labels, { left: look.left, wide: flow.wide, rowMm });
  }
  flow.y += 3;
  addNotes(flow, yours.notes);
}

/** Lines to write on, one below the other. */
function addLines(
  flow: Flow,
  labels: readonly string[],
  { left, wide, rowMm }: { left: number; wide: number; rowMm: number },
): void {
  const { look } = flow;
  for (const label of labels) {
    const base = flow.y + rowMm - 2.4;
    flow.draw((surface) => {
      surface.strokePath([[left, base + 1.2, left + wide, base + 1.2]], {
        stroke: '#767676',
        widthMm: 0.2,
      });
    });
    const text = flat(label);
    flow.draw(
      (surface) => drawText(surface, `${text} `, look.small, left, base),
      flow.section.add('P'),
    );
    flow.y += rowMm;
  }
}

/** The rest of the page: notes, and a sample of thread and beads. */
function addNotes(flow: Flow, notes: string): void {
  const { left, right, bottom, small } = flow.look;
  if (!flow.fits(leastNotesMm)) return;
  const top = flow.y;
  flow.draw((surface) => {
    const ring = [left, top, right, top, right, bottom, left, bottom];
    surface.strokePath([ring], { stroke: '#767676', widthMm: 0.2, closed: true });
  });
  flow.draw(
    (surface) => drawText(surface, `${flat(notes)} `, small, left + 3, top + 1.1 * lineMm(small)),
    flow.section.add('P'),
  );
  flow.y = bottom;
}

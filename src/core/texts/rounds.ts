import type { Words } from '../../words/index.js';
import { directionOf, stitchCount } from '../shape.js';
import { planFrame } from '../frame/plan.js';
import { pairStart } from '../geometry/links.js';
import { panelGeometry } from '../geometry/panel.js';
import { panelFile } from '../pattern/panel-file.js';
import { bareMark, undecidedMark } from '../pattern/schema.js';
import type { Frame, Panel, Pattern, Shape } from '../pattern/schema.js';
import {
  beadsInWorkingOrder,
  beadsOfPanel,
  beadsOnly,
  lettersInWorkingOrder,
} from '../pattern/stitches.js';
import { listLine, oneLine, twoColumns, wrapped } from './lines.js';
import { folded, runsOf, wedgesOf } from './runs.js';

/**
 * rounds.txt: how to work a panel, then a line for each round in working order, long ones
 * broken. `parseRoundsText` reads them back.
 *
 * @param panelIndex 0-based
 */
export function roundsText(pattern: Pattern, panelIndex: number, words: Words): string {
  const { rounds } = pattern.panels[panelIndex];
  let total = 0;
  const lines = rounds.map((marks, index) => {
    const r = index + 1;
    const beads = beadsOnly(marks).length;
    total += beads;
    const { lists } = words;
    const counts = `${lists.stitches(marks.length)}, ${lists.beads(beads)}, total ${total}`;
    const head = `R${r} (${counts.replaceAll(/(\d),(\d)/g, '$1$2')}):`;
    return listLine(head, roundBody(pattern.shape, r, marks, words));
  });
  return `${roundsHeader(pattern, panelIndex, words)}\n\n${lines.join('\n')}\n`;
}

/**
 * The stitches of one round as words: runs, the pairs in square brackets, equal neighbouring
 * wedges folded. A run goes on over the border between two wedges where no pair stands there.
 */
export function roundBody(
  shape: Pick<Shape, 'increase'>,
  r: number,
  marks: string,
  words: Words,
): string {
  const pair = pairStart(shape, r);
  if (pair === undefined) return runsText(marks, words).join(' ');
  const said: string[] = [];
  let plain = '';
  const flush = () => {
    said.push(...runsText(plain, words));
    plain = '';
  };
  for (const { item: wedge, times } of folded(wedgesOf(marks, r))) {
    const before = wedge.slice(0, pair);
    const doubled = pairText(wedge.slice(pair, pair + 2), words);
    const after = wedge.slice(pair + 2);
    if (times > 1) {
      flush();
      const inside = [...runsText(before, words), doubled, ...runsText(after, words)];
      said.push(`(${inside.join(' ')}) x ${times}`);
    } else {
      plain += before;
      flush();
      said.push(doubled);
      plain = after;
    }
  }
  flush();
  return said.join(' ');
}

function runsText(marks: string, words: Words): string[] {
  return runsOf(marks).map(({ letter, count }) => {
    const name = markText(letter, words);
    return name === letter ? `${count}${letter}` : `${count} ${name}`;
  });
}

function pairText(pair: string, words: Words): string {
  return `[${Array.from(pair, (mark) => markText(mark, words)).join(' ')}]`;
}

function markText(mark: string, words: Words): string {
  if (mark === bareMark) return words.lists.bare;
  return mark === undecidedMark ? words.lists.open : mark;
}

function roundsHeader(pattern: Pattern, panelIndex: number, words: Words): string {
  const { shape } = pattern;
  const panel = pattern.panels[panelIndex];
  const say = words.rounds;
  const marks = lettersInWorkingOrder(panel);
  const open = marks.split(undecidedMark).length - 1;
  const second = pattern.beads.length > 1 ? pattern.beads[1].letter : 'A';
  const paragraphs = [
    `${sizeParagraph(pattern, words)} ${panelSentence(pattern, panelIndex, words)}`,
    say.begin(shape.wedges),
    say.stitch({ ...shape, measured: isLeanOfSwatch(pattern) }),
    say.direction({ ...shape, clockwise: directionOf(shape) === 1 }),
    shape.construction === 'spiral' ? say.spiral : say.joined,
    say.marker,
    say.increases(`[A ${second}]`),
    marks.includes(bareMark) ? `${say.reading} ${say.bare}` : say.reading,
    ...(pattern.frame ? [frameParagraph(pattern, pattern.frame, panel, words)] : []),
    ...(open > 0 ? [words.lists.openLeft(open)] : []),
    say.care,
  ];
  return [
    headingText(pattern, panelIndex, say.title, words),
    ...paragraphs.map((paragraph) => wrapped(paragraph)),
  ].join('\n\n');
}

/** Whether there is a second panel, and where. */
function panelSentence({ panels }: Pattern, panelIndex: number, { rounds: say }: Words): string {
  if (panels.length === 1) return say.onePanel;
  const [panel, other] = [panels[panelIndex], panels[1 - panelIndex]].map(({ name }) =>
    oneLine(name),
  );
  return say.ofTwo({ panel, other, file: panelFile(1 - panelIndex, 'rounds.txt') });
}

/** Which stitches lie in the frame, and which of them stay bare. */
export function frameParagraph(pattern: Pattern, frame: Frame, panel: Panel, words: Words): string {
  const { startDegrees } = panel;
  const plan = planFrame(frame, panelGeometry(pattern.shape, { startDegrees }));
  const [rim] = plan.framed;
  const [left, right] = plan.hinges;
  return words.frame.paragraph({
    ...frame,
    widthMm: frame.widthMm,
    round: rim.round,
    runs: rim.runs,
    bare: plan.framed.filter(({ bare }) => bare),
    left,
    right,
  });
}

/** The size of bead (where all have one) and of a stitch. */
function sizeParagraph({ shape, beads }: Pattern, { rounds: say }: Words): string {
  const [first, ...rest] = beads;
  const one = first?.size !== undefined && rest.every(({ size }) => size === first.size);
  const size = one ? say.beadSize({ size: first.size!, diameterMm: first.diameterMm }) : '';
  return say.stitchSize({ size, widthMm: shape.stitchWidthMm, heightMm: shape.roundHeightMm });
}

/** Title, size and the list of beads: the top of rounds.txt and of stringing.txt. */
export function headingText(
  pattern: Pattern,
  panelIndex: number,
  title: (f: { title: string; panel: string }) => string,
  words: Words,
): string {
  const { shape } = pattern;
  const panel = pattern.panels[panelIndex];
  const beads = beadsInWorkingOrder(panel);
  const counts = new Map<string, number>();
  for (const letter of beads) counts.set(letter, (counts.get(letter) ?? 0) + 1);
  const key = beadsOfPanel(pattern, panelIndex).map(({ letter, id, name }): [string, string] => {
    const label = oneLine(id === name ? name : `${name} (${id})`);
    return [letter, words.lists.colour({ name: label, count: counts.get(letter) ?? 0 })];
  });
  return [
    title({ title: oneLine(pattern.title), panel: oneLine(panel.name) }),
    words.lists.size({ ...shape, stitches: stitchCount(shape), beads: beads.length }),
    '',
    ...(key.length > 0 ? [words.lists.colours, twoColumns(key)] : []),
  ].join('\n');
}

/** Whether the lean is that of the swatch, and not one that was typed. */
export function isLeanOfSwatch({ swatch, shape }: Pattern): boolean {
  return swatch?.lean !== undefined && Math.abs(swatch.lean.value - shape.lean) < 0.0051;
}

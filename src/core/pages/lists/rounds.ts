import type { Words } from '../../../words/index.js';
import { beadLookOf } from '../../colour/colour-words.js';
import { directionOf, stitchCount } from '../../panel/shape.js';
import { planFrame } from '../../purse/frame/plan.js';
import { pairStart } from '../../panel/links.js';
import { layPanel } from '../../panel/lay.js';
import { panelFile } from '../../pattern/panel-file.js';
import { bareMark, undecidedMark } from '../../pattern/marks.js';
import type { Frame } from '../../purse/frame/measures.js';
import type { Panel, Pattern } from '../../pattern/pattern.js';
import type { Shape } from '../../panel/shape.js';
import {
  beadsInWorkingOrder,
  beadsOfPanel,
  beadsOnly,
  lettersInWorkingOrder,
} from '../../pattern/stitches.js';
import { tailCmOf } from '../../thread/need.js';
import { handSaidOf } from '../hand/of-pattern.js';
import { joiningText, joinLines } from './joins.js';
import { listLine, oneLine, twoColumns, wrapped } from './lines.js';
import { folded, runsOf, wedgesOf } from './runs.js';

/** Of a note between rounds, behind its dashes. */
const noteWidth = 73;

/**
 * rounds.txt: how to work a panel, then a line for each round in working order, long ones
 * broken. `parseRoundsText` reads them back.
 *
 * @param panelIndex 0-based
 */
export function roundsText(pattern: Pattern, panelIndex: number, words: Words): string {
  const { rounds } = pattern.panels[panelIndex];
  const joins = joinLines(pattern, panelIndex, words);
  let total = 0;
  const lines = rounds.flatMap((marks, index) => {
    const r = index + 1;
    const beads = beadsOnly(marks).length;
    total += beads;
    const { lists } = words;
    const counts = `${lists.stitches(marks.length)}, ${lists.beads(beads)}, total ${total}`;
    const head = `R${r} (${counts.replaceAll(/(\d),(\d)/g, '$1$2')}):`;
    // A round in which lengths are joined on is told in parts, what is done between them between.
    const stops = joins.get(r) ?? [];
    const parts = partsOf(marks.length, stops);
    return [
      ...stops.filter(({ stitch }) => stitch === 0).map(({ line }) => note(line)),
      ...parts.flatMap(({ from, to }, n) => {
        const body = partBody(pattern.shape, r, marks, { from, to }, words);
        const told = n === 0 ? listLine(head, body) : listLine('   ', body);
        return [told, ...stops.filter(({ stitch }) => stitch === to).map(({ line }) => note(line))];
      }),
    ];
  });
  const end = words.rounds.end[pattern.shape.construction]({ tailCm: tailCmOf(pattern.thread) });
  const list = [...lines, note(end)].join('\n');
  return `${roundsHeader(pattern, panelIndex, words)}\n\n${list}\n`;
}

const note = (line: string) => wrapped(line, noteWidth).replace(/^/gm, '-- ');

/** Stitches of a round, from 0: the first, and the one after the last. */
export interface RoundPart {
  readonly from: number;
  readonly to: number;
}

/** The parts of a round of so many stitches between the joins in it. */
export function partsOf(
  stitches: number,
  joins: readonly { readonly stitch: number }[],
): RoundPart[] {
  const cuts = joins.map(({ stitch }) => stitch).filter((stitch) => stitch > 0);
  return [...cuts, stitches].map((to, n) => ({ from: cuts[n - 1] ?? 0, to }));
}

/** The stitches of a part of a round as words; a pair that it cuts in two keeps its half bracket. */
export function partBody(
  shape: Pick<Shape, 'increase'>,
  r: number,
  marks: string,
  { from, to }: RoundPart,
  words: Words,
): string {
  const aligned = from % r === 0 && to % r === 0;
  const pair = pairStart(shape, r);
  if (aligned || pair === undefined) return roundBody(shape, r, marks.slice(from, to), words);
  const said: string[] = [];
  let plain = '';
  const flush = () => {
    said.push(...runsText(plain, words));
    plain = '';
  };
  for (let i = from; i < to; i++) {
    const at = i % r;
    if (at !== pair && at !== pair + 1) {
      plain += marks[i];
      continue;
    }
    flush();
    const name = markText(marks[i], words);
    if (at === pair) said.push(`[${name}`);
    else if (i === from) said.push(`${name}]`);
    else said.push(`${said.pop()!} ${name}]`);
  }
  flush();
  return said.join(' ');
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
    say.begin({ wedges: shape.wedges, tailCm: tailCmOf(pattern.thread) }),
    say.stitch({ ...handSaidOf(pattern), lean: shape.lean, measured: isLeanOfSwatch(pattern) }),
    say.direction({ ...shape, clockwise: directionOf(shape) === 1 }),
    shape.construction === 'spiral' ? say.spiral : say.joined,
    say.marker,
    say.increases(`[A ${second}]`),
    marks.includes(bareMark) ? `${say.reading} ${say.bare}` : say.reading,
    ...(pattern.frame ? [frameParagraph(pattern, pattern.frame, panel, words)] : []),
    ...(joinLines(pattern, panelIndex, words).size > 0 ? [joiningText(pattern, words)] : []),
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
  const plan = planFrame(frame, layPanel(pattern.shape, { startDegrees }).geometry);
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
  const key = beadsOfPanel(pattern, panelIndex).map((bead): [string, string] => {
    const { letter, id, name } = bead;
    const label = oneLine(id === name ? name : `${name} (${id})`);
    const said = `${label}, ${oneLine(words.beadLooks.look(beadLookOf(bead)))}`;
    return [letter, words.lists.colour({ name: said, count: counts.get(letter) ?? 0 })];
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

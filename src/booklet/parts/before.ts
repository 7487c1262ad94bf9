import type { HandName } from '../../core/pages/hand/facts.js';
import { handSaidOf } from '../../core/pages/hand/of-pattern.js';
import { rememberedFor } from '../../core/remember.js';
import { chartPaper } from '../../core/pages/chart/chart.js';
import type { PanelSheet } from '../../core/pages/panel/sheet.js';
import { acrossRange } from '../../core/panel/across.js';
import { undecidedMark, bareMark } from '../../core/pattern/marks.js';
import { lettersInWorkingOrder } from '../../core/pattern/stitches.js';
import { directionOf, stitchesBefore } from '../../core/panel/shape.js';
import { isLeanOfSwatch } from '../../core/pages/lists/rounds.js';
import type { Flow } from '../flow.js';
import { addBeside, addRows, addRowsTogether } from '../flow-blocks.js';
import { addSigns } from './signs.js';
import { timesWorked, whereOf } from '../facts.js';
import { handBlocks } from './hands.js';
import { repeatsOf } from './repeats.js';
import type { BookletFacts } from '../facts.js';

/** Drawings that stand beside the words on the work as a whole, and those that follow step by step. */
const besideWords: readonly HandName[] = ['bead-side', 'round-run', 'increase', 'marker'];
const inRows: readonly HandName[] = [
  'ring',
  'stitch',
  'slip-stitch',
  'round-end',
  'new-length',
  'last-stitches',
];

const paperOf = rememberedFor((sheet: PanelSheet) => chartPaper(sheet));

/** Swatch, hand and face, how to begin, how to read, how to string, signs. */
export function addBefore(flow: Flow, facts: BookletFacts, sheet: PanelSheet): void {
  const { pattern, words } = facts;
  const { shape } = pattern;
  const say = words.booklet.before;
  const { before: heading } = words.booklet.parts;
  const { rounds, stringing } = words;
  const marks = pattern.panels.map(lettersInWorkingOrder).join('');
  const open = marks.split(undecidedMark).length - 1;
  const second = pattern.beads.length > 1 ? pattern.beads[1].letter : 'A';
  const across = (n: number) => acrossRange({ ...pattern, shape: { ...shape, rounds: n } });
  flow.part({ heading, where: whereOf(facts, heading), mark: 'before', besideMm: 60 });
  const { edition } = words.booklet;
  const paper = paperOf(sheet);
  // The table of signs says the rest.
  const reading = [
    words.booklet.work.roundsTick,
    ...(open > 0 ? [words.lists.openLeft(open)] : []),
    ...(facts.edition.grey ? [edition.fills] : []),
    ...(paper.name === 'A4' ? [] : [say.smallChart({ paper: paper.name })]),
  ];
  const { tick, twoBoxes } = words.booklet.work;
  const boxes = tick({ brackets: repeatsOf(facts).strung });
  const ticked = timesWorked(facts) === 1 ? boxes : `${boxes} ${twoBoxes}`;
  const measured = isLeanOfSwatch(pattern);
  const stitch = { ...handSaidOf(pattern), lean: shape.lean, measured, drawn: true };
  const tell = () => {
    flow.mark('swatch');
    flow.titled(say.swatch, [
      say.swatchText({
        wedges: shape.wedges,
        beads: stitchesBefore(shape, 11),
        widthMm: shape.stitchWidthMm,
        heightMm: shape.roundHeightMm,
        five: across(5),
        ten: across(10),
      }),
    ]);
    flow.titled(say.hand, [
      rounds.direction({ ...shape, clockwise: directionOf(shape) === 1 }),
      words.booklet.work.working.use,
      ...(facts.edition.otherHand ? [edition.mirrored] : []),
    ]);
    flow.titled(say.read, reading);
    flow.titled(say.string, [
      stringing.order,
      stringing.onBall,
      ...(marks.includes(bareMark) ? [stringing.bare] : []),
      ticked,
      words.booklet.stringing.weigh,
    ]);
    flow.titled(say.start, [rounds.stitch(stitch)]);
  };
  if (!flow.hangs) {
    tell();
    addSigns(flow, facts, second);
    addRows(flow, handBlocks(flow, facts, [...besideWords, ...inRows]));
    return;
  }
  const left = addBeside(flow, handBlocks(flow, facts, besideWords), tell);
  addSigns(flow, facts, second);
  addRowsTogether(flow, (share) => [...left, ...handBlocks(flow, facts, inRows, share)]);
}

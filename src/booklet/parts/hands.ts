import { drawHand } from '../../core/pages/hand/draw.js';
import { handDrawings } from '../../core/pages/hand/drawings.js';
import { largeFrame } from '../../core/pages/hand/facts.js';
import type { HandDrawing, HandFacts, HandName } from '../../core/pages/hand/facts.js';
import { handFactsOf, handSaidOf } from '../../core/pages/hand/of-pattern.js';
import { inkBox } from '../../core/pages/hand/ink-box.js';
import { rememberedFor } from '../../core/remember.js';
import type { PagePart } from '../../core/pages/surface/page-part.js';
import { drawText } from '../../core/pages/surface/text.js';
import type { TextStyle } from '../../core/pages/surface/text.js';
import { flat } from '../../words/pages/pairs.js';
import type { Flow } from '../flow.js';
import type { Block } from '../flow-page.js';
import { linesOf, readOn } from '../look.js';
import { structured } from '../page-parts.js';
import type { BookletFacts } from '../facts.js';

/** One picture with the question that it begins to answer, and what is said below it. */
interface Cell {
  readonly drawing: HandDrawing;
  readonly frame: number;
  readonly ask: string | undefined;
  readonly said: string;
}

/** A block of such a picture. */
export interface HandBlock extends Block {
  readonly withHead?: (wideMm: number) => HandBlock;
  readonly wider?: (wideMm: number) => HandBlock;
  /** What it is made of, with its top left corner there. */
  parts(left: number, top: number): readonly PagePart[];
}

const gapMm = 5;
/** Short lines stand a little closer than running text. */
const lineMm = ({ sizeMm }: TextStyle): number => 1.23 * sizeMm;

/** What `Flow.pageOf` knows the page of a drawing by. */
export const handMark = (name: HandName): string => `hand-${name}`;

/**
 * Pictures of what the hands do, in the order of the work, each with its question above and its sentence below, so narrow that
 * four of them stand side by side (`share`: smaller still); in large print in their own size, the sentence beside them.
 */
export function handBlocks(
  flow: Flow,
  facts: BookletFacts,
  names: readonly HandName[],
  share = 1,
): readonly HandBlock[] {
  const blocks = handOf(facts).blocksIn(flow);
  const key = `${names.join(' ')} ${share} ${flow.wide}`;
  let known = blocks.get(key);
  if (!known) blocks.set(key, (known = blocksOf(flow, facts, names, share)));
  return known;
}

function blocksOf(
  flow: Flow,
  facts: BookletFacts,
  names: readonly HandName[],
  share: number,
): HandBlock[] {
  const { words, fonts } = facts;
  const { look } = flow;
  const { hand, told, boxOf } = handOf(facts);
  const style: TextStyle = { ...look.small, ink: '#000000' };
  const head = { ...look.small, face: fonts.text.bold, ink: look.tint.accent, byWords: true };
  const quarter = (flow.wide - 3 * gapMm) / 4;
  const wide = { small: quarter, large: 1.5 * quarter + gapMm / 2 };

  const blockOf = (cell: Cell, wideMm?: number, headWideMm?: number): HandBlock => {
    const { drawing, frame, ask, said } = cell;
    const own = drawing.widthMm === largeFrame.widthMm ? wide.large : wide.small;
    const scale = look.large ? 1 : share * Math.min(1, own / drawing.widthMm);
    const box = boxOf(drawing);
    const high = scale * (box.bottom - box.top);
    const beside = look.large;
    const widthMm = beside ? flow.wide : (wideMm ?? own);
    const textMm = beside ? widthMm - drawing.widthMm - gapMm : Math.min(widthMm, 1.5 * own);
    const asked = ask === undefined ? [] : linesOf(ask, head, headWideMm ?? widthMm);
    const lines = linesOf(said, style, textMm);
    const headMm = asked.length * lineMm(head);
    const under = lines.length * lineMm(style);
    return {
      widthMm,
      overMm: headMm,
      group: drawing.name,
      ...(ask !== undefined && { withHead: (mm: number) => blockOf(cell, wideMm, mm) }),
      ...(!beside && { wider: (mm: number) => blockOf(cell, mm) }),
      heightMm: headMm + (beside ? Math.max(high, under) : high + 1 + under),
      parts(left, top) {
        const alt = `${flat(words.hands[drawing.name].ask)} ${flat(said)}`;
        const at = [left, top + headMm] as const;
        const origin = [left, at[1] - scale * box.top] as const;
        const spot: [number, number] = beside
          ? [left + drawing.widthMm + gapMm, at[1]]
          : [left, at[1] + high + 1];
        return [
          ...(asked.length > 0 ? [textPart('head', asked, head, [left, top])] : []),
          {
            as: 'picture',
            alt,
            draw: (surface) => drawHand(surface, drawing, hand, frame, origin, scale),
          },
          ...(lines.length > 0 ? [textPart('text', lines, style, spot)] : []),
        ];
      },
      put(page, left, top) {
        if (frame === 0) flow.mark(handMark(drawing.name), page);
        page.drawn.push(...structured(this.parts(left, top), flow.section));
      },
    };
  };
  return handDrawings
    .filter((drawing) => names.includes(drawing.name) && drawing.applies(hand))
    .flatMap((drawing) => {
      const { ask, steps } = words.hands[drawing.name];
      const said = steps(told);
      return drawing.frames.map((_, frame) => {
        const question = frame === 0 ? ask : undefined;
        const cell = { drawing, frame, ask: question, said: said[frame] ?? '' };
        const continued = words.booklet.continued(ask);
        return frame === 0
          ? blockOf(cell)
          : { ...blockOf(cell), again: () => blockOf({ ...cell, ask: continued }) };
      });
    });
}

/** What is drawn and said of the hands of a booklet, and how much of their frames drawings take. */
interface Hand {
  readonly hand: HandFacts;
  readonly told: ReturnType<typeof handSaidOf>;
  readonly boxOf: (drawing: HandDrawing) => ReturnType<typeof inkBox>;
  /** Blocks that were made before: pages are tried in more than one way. */
  readonly blocksIn: (flow: Flow) => Map<string, readonly HandBlock[]>;
}

/** To measure a drawing is to draw it: each once for a booklet, in however many sizes it is tried. */
const handOf = rememberedFor((facts: BookletFacts): Hand => {
  const { pattern, words, fonts } = facts;
  // A purse of one panel worked twice has a front and a back all the same.
  const { front, back } = words.booklet.panelNames;
  const halves = pattern.panels.length === 1 ? { front, back } : undefined;
  const drawn = handFactsOf(pattern, fonts, { grey: facts.edition.grey === true });
  const hand = { ...drawn, names: halves ?? drawn.names };
  return {
    hand,
    told: { ...handSaidOf(pattern), ...halves },
    boxOf: rememberedFor((drawing: HandDrawing) => inkBox(drawing, hand)),
    blocksIn: rememberedFor(() => new Map<string, readonly HandBlock[]>()),
  };
});

function textPart(
  as: 'head' | 'text',
  lines: readonly string[],
  style: TextStyle,
  [left, top]: readonly [number, number],
): PagePart {
  return {
    as,
    draw: (surface) =>
      readOn(lines).forEach((line, n) =>
        drawText(surface, line, style, left, top + (n + 0.78) * lineMm(style)),
      ),
  };
}

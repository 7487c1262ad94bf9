import { plainText } from '../../plain-text.js';
import type { Shape } from '../../panel/shape.js';
import { stitchWayOf } from '../hand/of-pattern.js';

/** Where a list says nothing of it. */
const usualLean = 0.5;

/** What the text above a list of rounds tells, as far as it is there. */
export interface ListHead {
  /** Title of the pattern, where the list says it. */
  readonly title?: string;
  /** Name of the panel, where the list says it. */
  readonly panel?: string;
  /** The lines under "The beads:", a letter and a name each, without the counts. */
  readonly beads: readonly { readonly letter: string; readonly label: string }[];
  /** Millimetres, as rounded in the text. */
  readonly stitch?: { readonly widthMm: number; readonly heightMm: number };
  /** What the list says of how the panel is worked. */
  readonly shape: Partial<Pick<Shape, 'hand' | 'beadsFace' | 'construction' | 'lean' | 'stitch'>>;
}

const titleLine = /^\s*Rounds of (\S.*), (\S.*?) panel\s*$/i;
const beadsLine = /^\s*the beads:\s*$/i;
/** A letter, space or a sign, and a name; behind the name perhaps ", 12 beads". */
const beadLine = /^\s*([A-HJ-NP-Z])(?:\s*[:=]\s*|\s+)(\S.*?)(?:,\s*[\d,]+\s+beads?)?\s*$/i;

/**
 * Reads the head of a list of rounds back: the sentences that `roundsText` writes there. Whatever
 * else stands there is passed over.
 */
export function readHead(lines: readonly string[]): ListHead {
  const beads: { letter: string; label: string }[] = [];
  const start = lines.findIndex((line) => beadsLine.test(line));
  for (const line of start < 0 ? [] : lines.slice(start + 1)) {
    const found = beadLine.exec(line);
    if (!found) break;
    beads.push({ letter: found[1].toUpperCase(), label: plainText(found[2]) || '?' });
  }
  const titled = lines.map((line) => titleLine.exec(line)).find((found) => found !== null);
  const prose = lines.join(' ').replace(/\s+/g, ' ');
  return {
    ...(titled && { title: named(titled[1], 200), panel: named(titled[2], 80) }),
    beads,
    ...stitchIn(prose),
    shape: shapeIn(prose),
  };
}

/** Without what cannot be drawn. */
const named = (text: string, most: number) => plainText(text).slice(0, most) || '?';

function stitchIn(prose: string): Pick<ListHead, 'stitch'> {
  const found = /\bstitch (\d+(?:\.\d+)?) mm wide, round (\d+(?:\.\d+)?) mm high/i.exec(prose);
  if (!found) return {};
  const [widthMm, heightMm] = [Number(found[1]), Number(found[2])];
  const sane = [widthMm, heightMm].every((length) => length >= 0.1 && length <= 50);
  return sane ? { stitch: { widthMm, heightMm } } : {};
}

function shapeIn(prose: string): ListHead['shape'] {
  const way = /for the (right|left) hand with the beads (away|toward)/i.exec(prose);
  const lean = /\blean (?:of )?(-?\d(?:\.\d+)?)/i.exec(prose);
  const spiral = /rounds run on as a spiral/i.test(prose);
  const joined = /close every round with a slip stitch/i.test(prose);
  return {
    ...(way && {
      hand: way[1].toLowerCase() as Shape['hand'],
      beadsFace: way[2].toLowerCase() as Shape['beadsFace'],
    }),
    ...stitchWayIn(prose, lean ? Number(lean[1]) : undefined),
    ...(lean && Math.abs(Number(lean[1])) <= 1 && { lean: Number(lean[1]) }),
    ...(spiral !== joined && { construction: spiral ? ('spiral' as const) : ('joined' as const) }),
  };
}

/** How the stitch is worked, where that is not what usually gives its lean. */
function stitchWayIn(prose: string, lean = usualLean): ListHead['shape'] {
  const ways = [
    { stitch: 'slip', said: /under the loop that holds the bead/i },
    { stitch: 'bead-side-loop', said: /under the (far|near) loop alone/i },
    { stitch: 'both-loops', said: /under both loops of the next stitch/i },
  ] as const;
  const found = ways.find(({ said }) => said.test(prose));
  return found && found.stitch !== stitchWayOf({ lean }) ? { stitch: found.stitch } : {};
}

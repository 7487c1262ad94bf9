import { tailCmOf } from '../../thread/need.js';
import type { Area } from '../surface/print-sheet.js';
import type { SwatchGuide } from './guide-facts.js';
import { guideType, itemBlock, space, textBlock, titleBlock, together } from './guide-text.js';
import type { Block } from './guide-text.js';

/** What the guide leaves hanging at the start. */
const usualTailCm = tailCmOf(undefined);

/** How to begin, each way to work a stitch for the face on which the beads lie, and the cautions. */
export function stitchBlocks(guide: SwatchGuide, area: Area, points: number): Block[] {
  const { words, shape } = guide;
  const said = words.swatch.guide;
  const type = guideType(guide, area, points);
  const { beadsFace, construction, wedges } = shape;
  const facts = {
    beadsFace,
    construction,
    wedges,
    fixing: 'sewn',
    bare: false,
    tailCm: usualTailCm,
    front: '',
    back: '',
  } as const;
  const ways = (['both-loops', 'bead-side-loop', 'slip'] as const).map((way, n) => {
    const { steps } = words.hands[way === 'slip' ? 'slip-stitch' : 'stitch'];
    return together(
      textBlock('head', `${n + 1}. ${said.ways[way]}`, type, { afterMm: 0 }),
      ...steps({ ...facts, way }).map((step) => itemBlock(step, type)),
      space(2.6),
    );
  });
  // Two of the purse's cautions are of glue and of what is sold.
  const [small, breaking, , rest] = words.shopping.care;
  return [
    titleBlock(said.stitchTitle, type),
    textBlock('text', said.stitchIntro, type),
    textBlock('text', words.rounds.begin({ wedges, tailCm: usualTailCm }), type),
    textBlock(
      'text',
      words.hands['bead-side'].steps({ ...facts, way: 'both-loops' }).join(' '),
      type,
    ),
    space(1.5),
    ...ways,
    ...[small, breaking, rest].map((one) =>
      textBlock('text', one, type, { style: type.small, afterMm: 0 }),
    ),
  ];
}

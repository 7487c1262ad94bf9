import type { Words } from '../../../words/index.js';
import { texOf } from '../../thread/fit.js';
import { oneLine } from './lines.js';
import type { MaterialRow } from './materials.js';
import type { ShoppingList } from './shopping.js';

/** What kind of thing is to be bought. */
export type ShoppingKind =
  | 'bead'
  | 'thread'
  | 'sewing-thread'
  | 'frame-thread'
  | 'lining-thread'
  | 'marker'
  | 'hook'
  | 'needle'
  | 'frame'
  | 'cord'
  | 'lining'
  | 'braid'
  | 'mat'
  | 'scissors'
  | 'pencil'
  | 'seal'
  | 'glue';

/** One thing to have, in words and in numbers. */
export interface ShoppingItem {
  readonly kind: ShoppingKind;
  /** What to buy, in one line. */
  readonly text: string;
  /** How much, for a program. */
  readonly amount: number;
  readonly unit: string;
  /** How that was worked out and what to look for. */
  readonly details: readonly string[];
  /** Whether nothing of it is to be bought. */
  readonly had: boolean;
  readonly bead?: MaterialRow;
}

/** The beads that are worked or were once, each with what to buy of it. */
export function beadItems({ beads }: ShoppingList, words: Words): ShoppingItem[] {
  const { shopping: say } = words;
  return beads.map((bead) => {
    const { letter, id, name, size, look, count, toBuy, toBuyGrams, packets } = bead;
    const label = oneLine(id === name ? name : `${name} (${id})`);
    const { units } = say;
    const grams = toBuyGrams !== undefined;
    return {
      kind: 'bead',
      text: say.bead({
        letter,
        name: `${label}, ${words.beadLooks.look(look)}`,
        size: size === undefined ? undefined : oneLine(size),
        buy: say.buy({ ...bead, grams: toBuyGrams, packets }),
      }),
      amount: toBuyGrams ?? toBuy,
      unit: grams ? units.grams : units.beads,
      details: [say.beadCounts(bead)],
      had: toBuy === 0 || count === 0,
      bead,
    };
  });
}

/** Crochet thread, and what sews the panels together and into the frame. */
export function threadItems(list: ShoppingList, words: Words): ShoppingItem[] {
  const { thread, sewing, pieces } = list;
  const say = words.shopping;
  const name = thread.given?.name;
  const { perStitch, totalMm, lengths, fit } = thread;
  const crocheted = list.liningOf === 'crocheted';
  const items: ShoppingItem[] = [
    {
      kind: 'thread',
      text: [
        say.crochetThread({
          mm: totalMm,
          name: name === undefined ? undefined : oneLine(name),
          grams: thread.grams,
          mostMm: fit?.doubledMostMm,
        }),
        ...(thread.spools && !crocheted ? [say.spools(thread.spools)] : []),
      ].join(', '),
      amount: upTo(totalMm / 1000, 1),
      unit: say.units.metres,
      details: [
        say.threadSum({ ...thread, perStitchMm: perStitch.mm, tails: 2 * lengths }),
        say.perStitchFrom[perStitch.from]({
          size: thread.size,
          usualRangeMm: perStitch.usualRangeMm,
        }),
        ...(thread.strungMm > 0 ? [say.lengths(thread)] : []),
        ...(fit ? [fitText(fit, words)] : []),
      ],
      had: false,
    },
  ];
  const { units } = say;
  if (crocheted) {
    const { mm } = list.panelLining;
    const item = say.crochetedLining(list.panelLining);
    // Bought together with the thread of the panels.
    const text = thread.spools ? `${item}; ${say.spools(thread.spools)}` : item;
    items.push(itemOf('lining-thread', text, upTo(mm / 1000, 1), units.metres));
  }
  items.push(itemOf('marker', say.marker, 1, units.pieces));
  if (!sewing) return items;
  const mm = pieces * sewing.seamThreadMm;
  const glued = sewing.fixing === 'glued';
  items.push({
    kind: 'sewing-thread',
    text: say.sewingThread({ mm }),
    amount: upTo(mm / 1000, 1),
    unit: say.units.metres,
    details: [say.seamSum(sewing), ...(sewing.estimate ? [say.seamEstimate] : [])],
    had: false,
  });
  if (!glued) {
    const frameMm = pieces * sewing.frameThreadMm;
    const text = say.frameThread({ mm: frameMm });
    const sum = [say.frameSum(sewing)];
    items.push(itemOf('frame-thread', text, upTo(frameMm / 1000, 1), units.metres, sum));
  }
  if (glued) {
    // A cord in the channel of either side.
    const cordMm = pieces * 2 * sewing.arcMm;
    items.push({
      kind: 'cord',
      text: say.cord({ mm: cordMm }),
      amount: upTo(cordMm / 10, 0),
      unit: say.units.centimetres,
      details: [say.cordSum(sewing)],
      had: false,
    });
  }
  if (list.liningOf === 'cloth') {
    items.push(itemOf('sewing-thread', say.liningThread, 1, units.pieces));
  }
  return items;
}

/** Hook, needles, frame, lining, braid, and what lies beside the work (common practice, no source). */
export function toolItems(list: ShoppingList, words: Words): ShoppingItem[] {
  const { pieces, sewing, lining, hookMm, needleMm, thread } = list;
  const say = words.shopping;
  const item = (
    kind: ShoppingKind,
    text: string,
    amount = 1,
    unit = say.units.pieces,
    details: readonly string[] = [],
  ) => itemOf(kind, text, amount, unit, details);
  const tools: ShoppingItem[] = [
    item(
      'hook',
      list.ownHookMm === undefined
        ? say.hook({ range: hookMm, size: thread.size })
        : say.ownHook({ mm: list.ownHookMm }),
    ),
    item('needle', say.needle({ range: needleMm })),
    item('needle', say.sewingNeedle(list)),
  ];
  if (sewing) {
    const { frameWidthMm: widthMm, frameRangeMm: range } = sewing;
    tools.push(item('frame', say.frame({ ...sewing, pieces, widthMm, range }), pieces));
  }
  if (list.liningOf === 'cloth') {
    const instead = [say.crochetInstead({ mm: list.panelLining.mm })];
    tools.push(item('lining', say.lining(lining), lining.pieces, say.units.pieces, instead));
  }
  if (sewing && sewing.fixing !== 'glued') {
    const mm = pieces * sewing.braidMm;
    const { centimetres } = say.units;
    tools.push(item('braid', say.braid({ mm, pieces }), upTo(mm / 10, 0), centimetres));
  }
  return [
    ...tools,
    item('mat', say.mat),
    item('scissors', say.scissors),
    ...(list.liningOf === 'cloth' ? [item('pencil', say.pencil)] : []),
    item('seal', say.seal),
    item('glue', say.glue),
  ];
}

function itemOf(
  kind: ShoppingKind,
  text: string,
  amount: number,
  unit: string,
  details: readonly string[] = [],
): ShoppingItem {
  return { kind, text, amount, unit, details, had: false };
}

/** What thickness of thread the beads take, in a sentence. */
export function fitText(fit: NonNullable<ShoppingList['thread']['fit']>, words: Words): string {
  const { diameterMm, single, doubled, doubledMostMm } = fit;
  const facts = { ...fit, size: fit.size.name };
  if (diameterMm === undefined || single === undefined || doubled === undefined) {
    return words.shopping.thickness({ ...facts, doubledMostTex: texOf(doubledMostMm) });
  }
  return words.shopping.thicknessGiven({ ...facts, diameterMm, single, doubled });
}

/** Up to the next unit of the given decimal, but not for the last bit of a division. */
function upTo(value: number, digits: number): number {
  const scale = 10 ** digits;
  return Math.ceil(value * scale - 1e-6) / scale;
}

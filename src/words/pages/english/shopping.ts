import type { FrameKind } from './frame.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';
import type { English } from './spelling.js';

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping = ({ language, colour, colours }: English) => {
  const { count, fixed, many, short } = numbersIn(language);
  const { tenths, metres, cm } = amountsIn(language);
  const range = (f: readonly [number, number], digits: number): string =>
    `${short(f[0], digits)} to ${short(f[1], digits)}`;
  return {
    beadReserveSaid: (f: { percent: number; batch: boolean }) =>
      f.percent === 0
        ? 'Without a reserve: broken and badly shaped beads are not counted.'
        : `The reserve is ${short(f.percent, 2)} %, at least 30 beads of each${f.batch ? ', worked out once for all purses' : ''}.`,
    noBeads: 'No beads are decided yet.',
    crochetThread: (f: {
      mm: number;
      name: string | undefined;
      grams: number | undefined;
      /** How thick it is at most, to pass the beads folded, where that is known. */
      mostMm: number | undefined;
    }) =>
      `${f.name ?? `Crochet thread in a ${colour} that goes with the beads${f.mostMm === undefined ? '' : `, up to ${short(f.mostMm, 2)} mm thick`}`}: ${metres(f.mm)}${f.grams === undefined ? '' : `, about ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
    threadSum: (f: {
      stitches: number;
      perStitchMm: number;
      netMm: number;
      reservePercent: number;
      reserveMm: number;
      tails: number;
      tailMm: number;
      tailsMm: number;
    }) =>
      `${count(f.stitches)} stitches of ${short(f.perStitchMm, 1)} mm take ${tenths(f.netMm / 1000)} m; ${f.reservePercent === 0 ? '' : `a reserve of ${short(f.reservePercent, 1)} % adds ${tenths(f.reserveMm / 1000)} m, `}${count(f.tails)} tails of ${short(f.tailMm / 10, 1)} cm add ${tenths(f.tailsMm / 1000)} m.`,
    lengths: (f: { lengths: number; strungMm: number }) =>
      `The beads take up ${fixed(f.strungMm / 1000, 2)} m of it when strung, in ${f.lengths === 1 ? 'one length' : many(f.lengths, { other: 'lengths' })}.`,
    thickness: (f: {
      size: string;
      holeMm: number;
      singleMostMm: number;
      doubledMostMm: number;
      doubledMostTex: number;
    }) =>
      `Through the hole of ${f.size}, usually ${short(f.holeMm, 2)} mm, goes a thread of up to ${short(f.singleMostMm, 2)} mm; folded at a needle’s eye up to ${short(f.doubledMostMm, 2)} mm (about ${short(f.doubledMostTex, 0)} tex: 1 g of it is about ${short(1000 / f.doubledMostTex, 0)} m).`,
    thicknessGiven: (f: {
      size: string;
      holeMm: number;
      diameterMm: number;
      single: boolean;
      doubled: boolean;
    }) => {
      const start = `Your thread is ${short(f.diameterMm, 2)} mm thick, the hole of ${f.size} usually ${short(f.holeMm, 2)} mm:`;
      if (!f.single) return `${start} TOO THICK. Take a thinner thread or larger beads.`;
      return f.doubled
        ? `${start} it fits, also folded at a needle’s eye.`
        : `${start} it fits singly, but not folded at a needle’s eye. String with a stiffened thread end, or over a loop of thinner thread.`;
    },
    sewingThread: (f: { mm: number }) =>
      `Strong sewing thread, nylon or polyester of 70 to 135 tex or 2 to 6 strands: ${metres(f.mm)}`,
    cord: (f: { mm: number }) =>
      `Glue for the frame, and paper cord to pack its channel: ${cm(f.mm)}`,
    hook: (f: { range: readonly [number, number] | undefined; size: string | undefined }) =>
      f.range === undefined
        ? 'Crochet hook: as your swatch asks for'
        : `Crochet hook, ${range(f.range, 2)} mm for ${f.size ?? 'these beads'}: your swatch decides`,
    needle: (f: { range: readonly [number, number] | undefined }) =>
      f.range === undefined
        ? 'Beading needle that passes your beads'
        : `Beading needle, ${range(f.range, 2)} mm thick: it must pass every bead`,
    sewingNeedle: (f: { panels: number }): string =>
      f.panels === 2
        ? 'Sewing needle and pins, for seam, frame and lining'
        : 'Sewing needle and pins, for ends and lining',
    frame: (f: {
      pieces: number;
      widthMm: number;
      range: readonly [number, number] | undefined;
      kind: FrameKind | undefined;
      fixing: 'sewn' | 'glued' | undefined;
    }) => {
      const start = f.pieces === 1 ? 'Clasp frame' : `${count(f.pieces)} clasp frames`;
      const kind = f.kind === undefined ? '' : `, ${f.kind}`;
      const fixing = { sewn: ', to sew in', glued: ', to glue in' };
      const wide = `${f.range === undefined ? short(f.widthMm, 1) : `about ${short(f.widthMm, 0)}`} mm wide`;
      const can = f.range === undefined ? '' : ` (${range(f.range, 0)} mm can do)`;
      return `${start}${kind}${f.fixing ? fixing[f.fixing] : ''}, ${wide}${can}`;
    },
    lining: (f: {
      pieces: number;
      pieceWidthCm: number;
      pieceHeightCm: number;
      widthCm: number;
      heightCm: number;
      clothWidthCm: number;
      allowanceMm: number;
    }) =>
      `Lining cloth, ${f.widthCm} x ${f.heightCm} cm (from cloth ${f.clothWidthCm} cm wide, 2 cm more than the cuts): ${many(f.pieces, { one: 'piece', other: 'pieces' })} of ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, ${short(f.allowanceMm, 1)} mm allowance included`,
    crochetInstead: (f: { mm: number }) =>
      `Or crochet the lining: both panels once more without beads, about ${metres(f.mm)} of thread. Sew them together like the panels, put them in, and sew their rim to the rim of the purse along the frame.`,
    crochetedLining: (f: { pieces: number; mm: number }) =>
      `For the crocheted lining, ${many(f.pieces, { one: 'panel', other: 'panels' })} without beads: ${metres(f.mm)} of thread`,
    frameThread: (f: { mm: number }) => `Clear nylon thread to sew on the frame: ${metres(f.mm)}`,
    spools: (f: { spools: number; metres: number; cost: number | undefined }) =>
      `${many(f.spools, { one: 'ball or spool', other: 'balls or spools' })} of ${short(f.metres, 1)} m${f.cost === undefined ? '' : `, ${fixed(f.cost, 2)} in all`}`,
    ownHook: (f: { mm: number }) => `Crochet hook, ${short(f.mm, 2)} mm: the hook of this pattern`,
    marker: `A short end of thread in another ${colour}, to mark where a round begins: it moves up with every round`,
    mat: 'Bead mat, and sticky notes to mark the line you are at',
    pencil: 'Soft pencil or tailor’s chalk, for the lining',
    seal: 'Lighter (for synthetic ends only) or a liquid against fraying',
    glue: 'Clear textile glue, for knots and ends',
    liningThread: `Sewing thread in the ${colour} of the lining`,
    scissors: 'Small sharp scissors, for thread and cloth',
    samples: `The codes are our own sample ${colours}, no shop’s numbers: buy by ${colour} and finish.`,
    braid: (f: { mm: number; pieces: number }) =>
      `Braid to cover the frame seam inside, if you like: ${cm(f.mm)}`,
    care: [
      'Every bead is a small part that a child under three can choke on: keep beads, needles, scissors and finished purses away from small children. A purse is not a toy.',
      'Breaking a wrong bead: goggles on, a cloth over the bead. Count needles and hooks before and after.',
      'Seal only synthetic ends with heat, and never near solvent glue; air the room when you glue.',
      'Metal frames may contain nickel. Rest eyes and hands every half hour; stop when something hurts.',
      'The usual cautions, not legal advice: if you sell, see the rules where you and your buyers live.',
    ],
  };
};

import { noLength, noPanel } from './refusals.js';

/** Words of `find` and `mend`: help while stringing and crocheting. */
export const place = {
  find: 'find your place in a pattern from the beads that come next on the thread',
  findExamples: `Examples:
  rondure chart fixtures/kingfisher.svg -o bird
  rondure find bird/pattern.json "3A 2B 1A"
  rondure find bird/pattern.json --worked "2A 3B 1C"
`,
  pattern: 'pattern.json, or a chart.svg or chart.png of ours; - reads standard input',
  findBeads: 'the beads, the one nearest the hook first: 3A 2B 1A',
  worked: 'the beads are the last ones worked, the latest at the end',
  panel: 'which panel, by name or number',
  length: 'which length of thread',
  any: 'any',
  first: 'the first',
  none: (f: { beads: string; worked: boolean }) =>
    `${f.beads} comes nowhere like that. Count the runs again; ${f.worked ? 'with beads still on the thread, leave out --worked' : 'with beads that are worked already, add --worked'}; a bead left out or put in by mistake is found with rondure mend.`,
  next: (f: Place) =>
    `${where(f)}: next is stitch ${f.stitch} of round ${f.round}${inWedge(f)}${left(f)}`,
  last: (f: Place) =>
    `${where(f)}: worked up to stitch ${f.stitch} of round ${f.round}${inWedge(f)}${left(f)}`,
  certain: 'Only one place fits.',
  more: (f: { places: string; beads: number | undefined; worked: boolean }) => {
    const way = f.worked ? 'back along the work' : 'on along the thread';
    if (f.beads === undefined) {
      return `${f.places} places fit, and some of them look the same to the end: say which --panel or --length it is.`;
    }
    return `${f.places} places fit. Read ${f.beads === 1 ? '1 bead more' : `up to ${f.beads} beads more`} ${way} to be certain.`;
  },
  andMore: (count: string) => `and ${count} more`,
  mend: 'compare what was strung with the stringing list, and find the smallest repair',
  mendExamples: `Examples:
  rondure chart fixtures/kingfisher.svg -o bird
  rondure mend bird/pattern.json "9C 2B 3A 3B" --so-far
`,
  mendBeads: 'the beads as they were strung, the first one strung first; - reads standard input',
  soFar: 'stringing is not finished: what is still to come is not missing',
  right: (f: { beads: string; length: number; soFar: boolean; panel?: string }) =>
    `All ${f.beads}${f.soFar ? ' strung so far' : ''} are as in the list of length ${f.length}${ofPanel(f)}.`,
  tooMany: (f: { most: number; agree: string; panel?: string }) =>
    `The thread and the list${ofPanel(f)} part after ${f.agree} and differ in more than ${f.most} beads: this is another length, it was read from the wrong end, or stringing goes on. Look at --length, --panel and --so-far.`,
  backwards:
    'Read from its other end the thread fits far better: begin with the bead strung first.',
  wrong: (f: {
    agree: string | undefined;
    edits: number;
    wanted: string;
    strung: string;
    panel?: string;
  }) =>
    `${f.agree === undefined ? '' : `The first ${f.agree} agree${f.panel === undefined ? '' : ` with the list${ofPanel(f)}`}; then `}${f.edits === 1 ? '1 bead needs' : `${f.edits} beads need`} mending (list${f.agree === undefined ? ofPanel(f) : ''} ${f.wanted}, thread ${f.strung}).`,
  repair: {
    missing: (f: Repair) =>
      f.run ? `${inRun(f.run, 'short')}${at(f)}` : `${after(f)}: ${f.wanted} missing${at(f)}`,
    extra: (f: Repair) =>
      f.run ? `${inRun(f.run, 'too many')}${at(f)}` : `${after(f)}: ${f.got} too many${at(f)}`,
    other: (f: Repair) => `${after(f)}: ${f.got} instead of ${f.wanted}${at(f)}`,
    swap: (f: Repair) => `${after(f)}: ${f.got} in the wrong order, ${f.wanted} is wanted${at(f)}`,
  },
  restring: (f: { beads: string; one: boolean }) =>
    `Nothing is crocheted yet? Only ${f.beads} ${f.one ? 'lies' : 'lie'} after the first slip: to take ${f.one ? 'it' : 'them'} off and string anew is the surest way.`,
  ways: {
    missing:
      'Missing: work that stitch without a bead, and sew the bead on afterwards with a fine needle and the same thread.',
    extra:
      'Too many: break the bead with flat pliers when you come to it. Wear goggles, hold a cloth over bead and pliers, pick up the splinters, and feel the thread for a cut. Or leave it whole on the back: work one chain over it, where the lining hides it.',
    other:
      'Wrong colour: when you come to it break the wrong bead (goggles, cloth over it), work the stitch without a bead, and sew the right one on afterwards.',
    swap: 'Wrong order: both beads are there. Work them as they are if nobody will see it, else treat them as two of the wrong colour.',
  },
  broken: 'Broken glass cuts thread and skin and springs into eyes: never without goggles.',
  noPanel,
  noLength,
};

/** A place in a pattern, as `find` tells it; rounds and stitches from 1. */
export interface Place {
  /** Name of the panel, where there are two. */
  panel: string | undefined;
  /** Length of thread, from 1, where there are several. */
  length: number | undefined;
  /** Round, from 1. */
  round: number;
  /** Stitch of the round, from 1. */
  stitch: number;
  /** Wedge, from 1. */
  wedge: number;
  /** Stitch of the wedge, from 1. */
  inWedge: number;
  /** Beads still to be worked, as a sentence has them. */
  left: string;
  /** Beads more that must be read to be certain, where that helps. */
  more: number | undefined;
}

/** One slip of stringing, as `mend` tells it; rounds and stitches from 1. */
export interface Repair {
  /** The run that came out too short or too long, where that is all. */
  run: { number: number; letter: string; wanted: number; got: number } | undefined;
  /** Beads strung before the slip, as a sentence has them. */
  after: string;
  /** What the list wants there. */
  wanted: string;
  /** What is on the thread there. */
  got: string;
  /** Round, from 1. */
  round: number;
  /** Stitch of the round, from 1. */
  stitch: number;
  /** Wedge, from 1. */
  wedge: number;
  /** Stitch of the wedge, from 1. */
  inWedge: number;
}

const after = (f: Repair): string =>
  f.after === '0' ? 'Before the first bead' : `After bead ${f.after}`;

function ofPanel({ panel }: { panel?: string }): string {
  return panel === undefined ? '' : ` of the ${panel} panel`;
}

function where({ panel, length }: Place): string {
  const parts = [
    ...(panel === undefined ? [] : [`${panel} panel`]),
    ...(length === undefined ? [] : [`length ${length}`]),
  ];
  const text = parts.join(', ') || 'here';
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function left(f: Place): string {
  const more =
    f.more === undefined || f.more === 0
      ? ''
      : `; certain after ${f.more === 1 ? '1 bead' : `${f.more} beads`} more`;
  return `, ${f.left} left on the thread${more}`;
}

function at(f: Repair): string {
  return ` (stitch ${f.stitch} of round ${f.round}; wedge ${f.wedge}, stitch ${f.inWedge} in it)`;
}

function inWedge(f: { wedge: number; inWedge: number }): string {
  return ` (wedge ${f.wedge}, stitch ${f.inWedge} in it)`;
}

/** One C short in the first run: 9C in the list, 8C on the thread. */
function inRun(
  { number, letter, wanted, got }: NonNullable<Repair['run']>,
  what: 'short' | 'too many',
): string {
  const off = Math.abs(wanted - got);
  const run = number === 1 ? 'the first run' : `run ${number}`;
  return `${off === 1 ? 'One' : off} ${letter} ${what} in ${run}: ${wanted}${letter} in the list, ${got}${letter} on the thread`;
}

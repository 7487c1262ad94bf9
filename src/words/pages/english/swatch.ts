import { numbersIn } from '../numbers.js';
import type { English } from './spelling.js';

/** How a swatch is to be worked and measured. */
export interface GuideFacts {
  /** Wedges N: 3 to 12. */
  wedges: number;
  /** Rounds R: 2 to 80. */
  rounds: number;
  /** Which stitch of each wedge is doubled. */
  increase: 'first' | 'middle' | 'last';
  /** Spiral or joined rounds. */
  construction: 'spiral' | 'joined';
  /** The hand that holds the hook. */
  hand: 'right' | 'left';
  /** Which way the beads lie. */
  beadsFace: 'away' | 'toward';
  /** Bead size, for instance 11/0. */
  size: string;
  /** Round from which the turn is measured. */
  fromRound: number;
  /** Round up to which it is measured. */
  toRound: number;
  /** Wedge, from 1, whose first stitches are marked. */
  markedWedge: number;
  /** Wedge, from 1, across whose middle the rim is measured. */
  rimWedge: number;
  /** One for every stitch. */
  beads: number;
}

const capital = (text: string) => text[0].toUpperCase() + text.slice(1);

/** What stands on the guide to a swatch. */
export const swatch = ({
  language,
  colour,
  grey,
  millimetre,
  metre,
  callipers,
  stitch,
}: English) => {
  const { count, short } = numbersIn(language);
  return {
    guide: {
      title: 'Measure your stitch',
      describe:
        'How to make and measure a swatch, and a turn gauge to lay it on; to be printed at 100 %.',
      intro:
        'Every hand works a different stitch. A small trial panel, a swatch, tells how high, how wide and how slanting yours is, so that the chart and the finished size fit your hand.',
      steps: (f: GuideFacts) => [
        {
          head: 'Work it.',
          text: `String ${count(f.beads)} beads (${f.size}) of one ${colour} on the ball, and work ${f.rounds} rounds of ${f.wedges} wedges with the thread and hook of the purse, a bead on every stitch (the last sheet tells how the stitch is worked), increase in the ${f.increase} stitch of each wedge, ${f.construction === 'spiral' ? 'in a spiral' : 'every round joined'}, ${f.hand} hand. After round ${f.fromRound} mark the thread 1 ${metre} from the hook.`,
        },
        {
          head: 'Mark it.',
          text: `In round ${f.fromRound} and in round ${f.toRound}, put a loop of bright thread around the first stitch of wedge ${f.markedWedge}${f.markedWedge === 1 ? ' (the first stitch of the round)' : ''}.`,
        },
        {
          head: 'Look at it.',
          text: 'Damp it, pat it out, let it dry. Does it lie flat? If it stands up like a bowl, or its rim waves, write that down and leave out step 4.',
        },
        {
          head: 'Across.',
          text: `The widest place, over the outer edges of the beads, with ${callipers} or between two upright blocks.`,
        },
        {
          head: 'Along the rim.',
          text: `In the middle of wedge ${f.rimWedge}, lay a thread along the last round for 50 mm, over the middles of the beads, and count the stitches from bead middle to bead middle. Halves count.`,
        },
        {
          head: 'Turn.',
          text: `Lay it on the gauge, beads up, its hole on the cross, the marked stitch of round ${f.fromRound} on the line of 0. Lay a ruler from the cross over the marked stitch of round ${f.toRound}: read the degrees, and whether they are with or against the work.`,
        },
        {
          head: 'Thread.',
          text: `How many stitches did the ${metre} make, from the end of round ${f.fromRound} until the mark reached the hook?`,
        },
        { head: 'Beads.', text: 'String 50 beads, push them together, measure the row.' },
      ],
      write: 'Write down',
      blanks: (f: GuideFacts) => [
        'flat, bowl or waves',
        'across, mm',
        'stitches on 50 mm of rim',
        `turn, round ${f.fromRound} to ${f.toRound}, degrees`,
        'with or against the work',
        'stitches from 1 m of thread',
        '50 beads, mm',
        'stitch, 1 to 3 (last sheet)',
      ],
      then: 'Then give these numbers, with what step 1 says, where the chart is made: in the program under “Panel”, “My stitch”.',
      stitchTitle: 'The stitch',
      stitchIntro:
        'Take the one that you will work the purse in, and keep to it: thread, hook, loops and hand make the size. A swatch in one of them says nothing about the others. Write its number on the first sheet.',
      ways: {
        'both-loops': `${capital(stitch)}, under both loops`,
        'bead-side-loop': 'The same under one loop, the one on the side of the beads',
        slip: 'Slip stitch',
      },
      gaugeTitle: 'Turn gauge',
      gaugeAlt:
        'A dial of degrees, 0 at the top and 180 at the bottom, with and against the work; in its middle rounds and wedges to lay the swatch on.',
      round: (r: number) => `round ${r}`,
      lean: (lean: number) => `lean ${short(lean, 2)}`,
      with: 'with the work',
      against: 'against the work',
      scale: `Print at 100 %, “actual size”. Measure the squares: when they are off by more than half a ${millimetre}, print again without scaling.`,
      read: `${capital(grey)}: rounds and wedges of a usual stitch, to lay the piece in the middle. Outside the scale: where the marked stitch comes to lie with a lean of 0, 0.25 and 0.5 stitches.`,
    },
  };
};

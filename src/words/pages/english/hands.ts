import type { FaceWord } from './chart.js';
import type { English } from './spelling.js';

/** What the sentences beside drawings of the handwork depend on. */
export interface HandSaid {
  /** Which way the beads lie. */
  readonly beadsFace: FaceWord;
  /** Spiral or joined rounds. */
  readonly construction: 'spiral' | 'joined';
  /** How the stitch is worked. */
  readonly way: 'both-loops' | 'bead-side-loop' | 'slip';
  /** Wedges N: 3 to 12. */
  readonly wedges: number;
  /** How the frame is fixed. */
  readonly fixing: 'sewn' | 'glued';
  /** Whether stitches without beads lie in the frame. */
  readonly bare: boolean;
  /** What hangs out at each end of a thread, whole centimetres. */
  readonly tailCm: number;
  /** Names of the panels. */
  readonly front: string;
  /** Name of the other panel. */
  readonly back: string;
}

/**
 * Each drawing answers a question that a beginner asks; each of its pictures has a sentence or two,
 * whose numbers are those of the movements in it.
 */
export const hands = ({ centre }: English) => ({
  ring: {
    ask: 'How do I begin?',
    steps: (f: HandSaid) => [
      `(1) Lay the thread in a ring, with a tail of ${f.tailCm} cm.`,
      '(2) Put the hook into the ring and take up the thread that leads to the beads. (3) Draw it through as a loop and make one chain; it is not counted.',
      `Work the ${f.wedges} stitches of round 1 round the ring. (4) Pull the tail: the ring closes, and a small hole stays at the ${centre}. A ring of 3 or 4 chains will do, too.`,
    ],
  },
  'bead-side': {
    ask: 'On which side do the beads lie?',
    steps: (f: HandSaid) => [
      f.beadsFace === 'away'
        ? 'The beads come to lie on the far side of the work: you look at the side without beads.'
        : 'The beads come to lie on your own side of the work: you look at the beads.',
    ],
  },
  stitch: {
    ask: 'How is a stitch worked?',
    steps: (f: HandSaid) => [
      f.beadsFace === 'away'
        ? `(1) Put the hook under ${f.way === 'both-loops' ? 'both loops' : 'the far loop alone'} of the next stitch, from your side to the far side.`
        : `(1) Hold the thread on your own side. Put the hook under ${f.way === 'both-loops' ? 'both loops' : 'the near loop alone'} of the next stitch, from the far side toward you.`,
      '(2) Take the thread over the hook. (3) Draw it through the stitch: two loops are on the hook.',
      '(4) Slide the next bead up close to the work.',
      '(5) Beyond the bead, take the thread over the hook. (6) Draw it through both loops.',
      f.beadsFace === 'away'
        ? 'The stitch is done: its bead sits on the far side.'
        : 'The stitch is done: its bead sits on your side.',
    ],
  },
  'slip-stitch': {
    ask: 'How is a stitch worked?',
    steps: (f: HandSaid) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Put the hook under the loop that holds the bead of the next stitch below, from your side to the far side.'
          : 'Hold the thread on your own side. Put the hook under the loop that holds the bead of the next stitch below, from the far side toward you.'
      } (2) Tip that bead over to the side already worked.`,
      '(3) Slide the next bead up close to the work.',
      '(4) Beyond the bead, take the thread over the hook. (5) Draw it at once through the stitch and through the loop on the hook.',
    ],
  },
  increase: {
    ask: 'What do two letters in square brackets mean?',
    steps: (_: HandSaid) => [
      'Two stitches go into one and the same stitch of the round below: first (1), then (2), each with its own bead.',
    ],
  },
  'round-run': {
    ask: 'How do the rounds run?',
    steps: (f: HandSaid) => [
      f.construction === 'spiral'
        ? 'As a spiral: each round runs on into the next. You see it as you work; a black dot is the first stitch of a round.'
        : 'As rings: each round is closed before the next begins. You see it as you work; a black dot is the first stitch of a round.',
    ],
  },
  marker: {
    ask: 'Where does a round begin?',
    steps: (_: HandSaid) => [
      '(1) As soon as you have worked into the marked stitch, move the marker up into the stitch that you have just made.',
    ],
  },
  'round-end': {
    ask: 'How do I close a round?',
    steps: (_: HandSaid) => [
      '(1) Put the hook into the first stitch of the round and take up the thread. (2) Draw it through the stitch and the loop on the hook: a slip stitch, without a bead.',
      '(3) Make one chain to step up, without a bead. (4) Work the first stitch of the next round into that same first stitch.',
    ],
  },
  'new-length': {
    ask: 'How do I join the next length?',
    steps: (f: HandSaid) => [
      `(1) In the last stitch, once its bead is at the work, take the new thread over the hook, with a tail of ${f.tailCm} cm. (2) Draw it through everything on the hook.`,
      '(3) Lay both tails along the edge and work the next 5 to 10 stitches over them; sew in later what is left of them.',
    ],
  },
  'last-stitches': {
    ask: 'How do I end the last round?',
    steps: (f: HandSaid) => [
      `(1, 2, 3) Make two or three slip stitches down the step, without beads. (4) Cut the thread ${f.tailCm} cm long and draw it through the last loop.`,
    ],
  },
  seam: {
    ask: 'Which stitches are sewn together?',
    steps: (f: HandSaid) => [
      `The last rounds of both panels and the numbers of their stitches; outside: ${f.front}; inside: ${f.back}. Each line joins two stitches that meet. White stitches stay open for the frame.`,
    ],
  },
  'seam-stitch': {
    ask: 'How is the seam sewn?',
    steps: (_: HandSaid) => [
      '(1) Put the needle under both loops of one stitch of each panel, always from the same side, and go on pair by pair.',
    ],
  },
  frame: {
    ask: 'Where do I begin at the frame?',
    steps: (f: HandSaid) => [
      `(1) Begin in the middle and go out to one hinge; then begin in the middle again and go out to the other. ${f.bare ? 'The stitches without beads lie at the rail.' : 'The edge of the panel lies at the rail.'}`,
    ],
  },
  'frame-edge': {
    ask: 'How does the edge hold in the frame?',
    steps: (f: HandSaid) => [
      f.fixing === 'sewn'
        ? '(1) From inside, come out through the edge and the next hole but one. (2) Go back in through the hole before it: back stitch, hole by hole.'
        : '(1) Put glue into the channel. (2) Push in the edge of the panel, with the lining sewn to it. (3) Press paper cord in beside it.',
    ],
  },
  lining: {
    ask: 'How does the lining go in?',
    steps: (f: HandSaid) => [
      '(1) Right sides together, sew from one hinge mark round the bottom to the other.',
      '(2) Leave it wrong side out and turn the open edge down to the outside.',
      '(3) Push it into the purse.',
      f.fixing === 'sewn'
        ? '(4) Inside the purse, sew the folded edge to the edge of the panel, below the holes.'
        : '(4) Inside the purse, sew the folded edge to the edge of the panel.',
    ],
  },
  braid: {
    ask: 'How do I cover the frame seam?',
    steps: (_: HandSaid) => [
      'Last of all, if you like: inside the purse lay half of the braid on each side along the frame seam, its ends turned under by 10 mm at the hinges. (1) Sew both its edges down to lining and panel, the needle passing under the braid.',
    ],
  },
});

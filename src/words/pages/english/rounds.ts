import type { FaceWord, HandWord } from './chart.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';
import type { HandSaid } from './hands.js';
import type { English } from './spelling.js';

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds = (english: English) => {
  const { language, anticlockwise, stitch, centre } = english;
  const { short } = numbersIn(language);
  const steps = hands(english);
  return {
    begin: (f: { wedges: number; tailCm: number }) =>
      `To begin: make a magic ring, or 3 or 4 chains closed into a ring with a slip stitch; then one chain. Chains and slip stitch carry no bead and are not counted (common practice, no source). Work the ${f.wedges} stitches of round 1 into the ring, each with its bead. Draw a magic ring close; a small hole stays at the ${centre}. Leave a tail of ${f.tailCm} cm to sew in.`,
    /** `drawn`: the steps stand beside drawings, and are not said again. */
    stitch: (f: HandSaid & { lean: number; measured: boolean; drawn?: boolean }) =>
      `The stitch: ${f.way === 'slip' ? 'slip stitch' : stitch}, with a bead in each. ${
        f.drawn ? '' : `${steps[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f).join(' ')} `
      }${
        f.lean === 0.5
          ? `Each stitch then usually sits about half a stitch back from the one it is worked into, against the direction of work (lean ${short(0.5, 2)}). The upper loops of a stitch lie beside its middle, so lines of stitches from the ${centre} to the rim slant; the chart allows for that.`
          : `This pattern counts on a lean of ${short(f.lean, 3)} stitch: how far each stitch sits back from the one it is worked into, against the direction of work.`
      } ${
        f.measured
          ? 'So it was measured on a swatch: work with the same hook, thread and beads.'
          : 'Hands differ: measure the lean on a swatch before you begin.'
      } Never turn the work.`,
    direction: (f: { hand: HandWord; beadsFace: FaceWord; clockwise: boolean }) =>
      `The list of rounds is for the ${f.hand} hand with the beads ${
        f.beadsFace === 'away' ? 'away from you' : 'toward you'
      }. On the bead face, which the chart shows and which is the outside of the purse, the work runs ${
        f.clockwise ? 'clockwise' : anticlockwise
      }. ${
        f.beadsFace === 'away'
          ? `You look at the other face, where it runs ${f.clockwise ? anticlockwise : 'clockwise'}.`
          : 'You look at that same face while you work.'
      } Worked by the other hand the panel comes out as its mirror image.`,
    marker:
      'Marker: hang a marker in the first stitch of the round and move it up at the start of every round.',
    increases: (example: string) =>
      `Increases: two letters in square brackets, ${example}, are two stitches worked into one and the same stitch of the round below, in the order in which they are written. There is one such pair in every wedge of every round after the first.`,
    reading:
      'Reading: 3A is three stitches with bead A. A part in round brackets with x 3 behind it is worked 3 times. With each round stand its stitches and beads, and the total of beads worked up to its end: count when a round is done.',
    bare: '2 bare is two stitches without a bead.',
    spiral: 'The rounds run on as a spiral and are not joined.',
    joined:
      'Close every round with a slip stitch into its first stitch and make one chain to step up. The first stitch of the next round goes into that same first stitch. The slip stitches and the step-up chains carry no bead and are not counted.',
    /** After the last round. */
    end: {
      spiral: (f: { tailCm: number }) =>
        `After the last stitch of the last round make two or three slip stitches to smooth the step; they carry no bead and are not counted. Cut the thread ${f.tailCm} cm long and draw it through the last loop.`,
      joined: (f: { tailCm: number }) =>
        `At the end cut the thread ${f.tailCm} cm long and draw it through the last loop.`,
    },
  };
};

type Hand = 'right' | 'left';
type Face = 'away' | 'toward';

/** rounds.txt: the heading, how to work, and what a line means. */
export const rounds = {
  title: (f: { title: string; panel: string }) => `Rounds of ${f.title}, ${f.panel} panel`,
  begin: (wedges: number) =>
    `To begin: make a magic ring, or a short chain closed into a ring, and work the ${wedges} beaded stitches of round 1 into it. Pull the ring close; a small hole stays at the centre. Tails of 15 to 20 cm are long enough to sew in.`,
  stitch: (f: { beadsFace: Face; lean: number }) =>
    `The stitch: single crochet in US terms, which is double crochet in UK terms, with a bead in each. ${
      f.beadsFace === 'away'
        ? 'Slide the bead up close against the work before you draw the thread through: it comes to lie on the face away from you.'
        : 'Bring the bead to your own side with the hook over the thread: it comes to lie on the face toward you.'
    } ${
      f.lean === 0.5
        ? 'Work under both loops in the usual way; each stitch then sits about half a stitch behind the one below (lean 0.5).'
        : `Work every stitch as you did for the swatch that gave a lean of ${f.lean}.`
    } Never turn the work.`,
  direction: (f: { hand: Hand; beadsFace: Face; clockwise: boolean }) =>
    `This list is for the ${f.hand} hand with the beads ${
      f.beadsFace === 'away' ? 'away from you' : 'toward you'
    }. On the bead face, which the chart shows and which is the outside of the purse, the work runs ${
      f.clockwise ? 'clockwise' : 'anticlockwise'
    }. ${
      f.beadsFace === 'away'
        ? `You look at the other face, where it runs ${f.clockwise ? 'anticlockwise' : 'clockwise'}.`
        : 'You look at that same face while you work.'
    } Worked by the other hand the panel comes out as its mirror image.`,
  marker:
    'Marker: hang a marker in the first stitch of the round and move it up at the start of every round.',
  increases: (example: string) =>
    `Increases: two letters in square brackets, ${example}, are two beaded stitches worked into one and the same stitch of the round below, in the order in which they are written. There is one such pair in every wedge of every round after the first.`,
  reading:
    'Reading: 3A is three stitches with bead A. A part in round brackets with x 7 behind it is worked 7 times. In front stand the stitches and beads of the round, and the total of beads worked up to its end: count when a round is done.',
  bare: '2 bare is two stitches without a bead.',
  spiral:
    'The rounds run on as a spiral and are not joined. After the last stitch of the last round make two or three slip stitches to smooth the step; they carry no bead and are not counted.',
  joined:
    'Close every round with a slip stitch into its first stitch and make one chain to step up. The slip stitches and the step-up chains carry no bead and are not counted.',
};

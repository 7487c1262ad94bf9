type Hand = 'right' | 'left';
type Face = 'away' | 'toward';

/** rounds.txt: the heading, how to work, and what a line means. */
export const rounds = {
  title: (f: { title: string; panel: string }) => `Rounds of ${f.title}, ${f.panel} panel`,
  begin: (wedges: number) =>
    `To begin: make a magic ring, or 3 or 4 chains closed into a ring, and work the ${wedges} stitches of round 1 into it, with a bead in each that has a letter. Draw a magic ring close; a small hole stays at the centre. Leave a tail of 15 to 20 cm to sew in.`,
  stitch: (f: { beadsFace: Face; lean: number; measured: boolean }) =>
    `The stitch: single crochet in US terms, which is double crochet in UK terms, with a bead in each. ${
      f.beadsFace === 'away'
        ? 'Put the hook in and draw up a loop. Slide a bead up close to the work, wrap the thread and draw it through both loops: the bead comes to lie on the face away from you.'
        : 'Bring the bead to your own side with the hook over the thread: it comes to lie on the face toward you.'
    } ${
      f.lean === 0.5
        ? 'Work under both loops; each stitch then usually sits about half a stitch behind the one below (lean 0.5).'
        : `This pattern counts on a lean of ${f.lean} stitch: how far each stitch sits behind the one below.`
    } ${
      f.measured
        ? 'So you measured it on your swatch: work with the same hook, thread and beads.'
        : 'Hands differ: measure the lean on a swatch before you begin.'
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
    `Increases: two letters in square brackets, ${example}, are two stitches worked into one and the same stitch of the round below, in the order in which they are written. There is one such pair in every wedge of every round after the first.`,
  reading:
    'Reading: 3A is three stitches with bead A. A part in round brackets with x 3 behind it is worked 3 times. In front stand the stitches and beads of the round, and the total of beads worked up to its end: count when a round is done.',
  bare: '2 bare is two stitches without a bead.',
  stitchSize: (f: { size: string; widthMm: number; heightMm: number }) =>
    `${f.size}Stitch ${f.widthMm.toFixed(2)} mm wide, round ${f.heightMm.toFixed(2)} mm high.`,
  onePanel: 'This is one panel; a purse takes two.',
  ofTwo: (f: { panel: string; other: string; file: string }) =>
    `This is the ${f.panel} panel of two; the list of the ${f.other} panel is ${f.file}, and sewing.txt says how the two are sewn together.`,
  beadSize: (f: { size: string; diameterMm: number | undefined }) =>
    f.diameterMm === undefined ? `Beads ${f.size}. ` : `Beads ${f.size} (${f.diameterMm} mm). `,
  care: 'Take care: beads, needles and the purse are not for small children, who can choke on small parts. Wear goggles when you break a bead. Count needles and hooks before and after. Rest eyes and hands often. Where you live or sell, local rules come first.',
  spiral:
    'The rounds run on as a spiral and are not joined. After the last stitch of the last round make two or three slip stitches to smooth the step; they carry no bead and are not counted. Cut the thread 20 cm long and draw it through the last loop.',
  joined:
    'Close every round with a slip stitch into its first stitch and make one chain to step up. The first stitch of the next round goes into that same first stitch. The slip stitches and the step-up chains carry no bead and are not counted. At the end cut the thread 20 cm long and draw it through the last loop.',
};

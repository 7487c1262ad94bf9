/** An empty chart to colour by hand, and its photo read back. */
export const coloured = {
  title: 'Colour by hand',
  how: 'Print an empty chart of this panel, colour it with crayons or pens, and read a photo of it back.',
  saved: (name: string): string =>
    `${name} is saved. Print it at 100 %, colour it, and come back with a photo.`,
  which: 'The chart that you coloured',
  whichHow: 'Wedges and rounds stand at the top of its page.',
  blank: ({ title, wedges, rounds }: { title: string; wedges: string; rounds: string }): string =>
    `${title}: ${wedges} wedges, ${rounds} rounds`,
  openBlank: 'Open another blank',
  colours: 'Colours, at most',
  photo: 'Its photo',
  photoHow:
    'All of the page, lying flat in even light, with its four corner marks. Drop the photo here, or:',
  choose: 'Choose a photo',
  drop: 'Let go to read the photo',
  goOn: ({ name, n, of }: { name: string; n: string; of: string }): string =>
    `Go on with ${name}, ${n} of ${of}`,
  reading: 'Reading the coloured chart …',
  stop: 'Stop',
  noCorners:
    'The four round corner marks were not found: photograph the whole page, flat and sharp, with all four marks in sight, and see that the right chart is chosen above.',
  notColoured:
    'No coloured cell was found: see that the right chart is chosen above and that its cells are well covered.',
  blankTaken: 'That is the empty chart itself, and it is chosen now. What is missing is its photo.',
  uneven:
    'A shadow lies on the page, so that more cells may be misread: look the panel over, or photograph it again in even light.',
  many: 'Very many cells are doubtful. See that the right chart was chosen.',
  count: ({ n, of }: { n: string; of: string }): string => `${n} of ${of}`,
  place: ({ round, wedge, place }: { round: string; wedge: string; place: string }): string =>
    `Round ${round}, wedge ${wedge}, its stitch ${place}`,
  reasons: {
    between: 'Its colour lies between two beads.',
    uneven: 'It is in two colours.',
    unlike: 'Its colour is unlike all others on the page.',
    partly: 'It is only partly coloured.',
    outside: 'It lies outside the photo.',
  },
  patch: 'The photo around it; its outline is drawn in',
  ask: 'Which is it?',
  asRead: 'read so',
  white: 'Left white',
  other: 'Another bead',
  rest: 'Take the rest as read',
  keysHow: (n: string): string => `Keys: 1 to ${n} choose, the left arrow goes back.`,
  done: 'Every cell is settled',
  counts: ({ coloured, white }: { coloured: string; white: string }): string =>
    `Coloured cells: ${coloured}. White ones: ${white}.`,
  whiteAsk: 'White cells are',
  whiteOpen: 'Not decided yet',
  whiteHow: 'What is not decided yet can be laid with the brush.',
  lay: 'Lay it on the table',
  laid: (title: string): string =>
    `“${title}” lies on the table. Undo brings back what lay there before.`,
  steps: { read: 'read a coloured chart' },
};

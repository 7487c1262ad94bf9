type Range = { least: string; most: string };
type Named = { name: string };

/** What is wrong with what was opened, typed or measured, as the page says it: one sentence of what, where and what to do. */
export const english = {
  shape: (f: Range) =>
    `This measure of the panel can be ${f.least} to ${f.most}: change it in Panel.`,
  corners:
    'A panel with corners needs the increase in the first or the last stitch of each wedge: choose that in Panel, or a round edge.',
  notOurs: (f: Named) =>
    `${f.name} does not hold a sound pattern of Rondure: open another copy of it, or make it again from the picture.`,
  notOursAt: (f: Named & { place: string }) =>
    `${f.name} is not a sound pattern of Rondure (at ${f.place}): open another copy of it, or make it again from the picture.`,
  tooNew: (f: Named) =>
    `${f.name} was written by a newer Rondure: reload this page, then open it again.`,
  noLetter: (f: { most: string }) =>
    `A pattern has at most ${f.most} bead colours, and this one has them all: merge two of them first.`,
  beadsTyped: (f: { got: string }) =>
    `“${f.got}” cannot be read as beads: write runs such as 3A 2B 1A.`,
  beadsNone: 'No beads are given: write runs such as 3A 2B 1A.',
  beadsMany: (f: { most: string }) =>
    `More than ${f.most} beads are given, more than a panel can hold: check the counts.`,
  measured: (f: Range) =>
    `One of the measures cannot be right: with these beads it lies between ${f.least} and ${f.most}. Measure again, and check rounds, wedges and bead size.`,
  turn: 'The marked stitch would wander farther than stitches can lean: check which way it went, and mark the first stitch of the same wedge in every round.',
  pointsFew:
    'The points do not show how the stitches turn: point at the first stitch of a wedge on the last round, and on a round further in.',
  pointsLine: 'The points do not settle how the panel lies: spread those on the rim all around it.',
  pointsLean:
    'By these points stitches would lean farther than they can: check the round and the wedge of each, and that the photo shows the beads.',
  nothingMeasured: 'Nothing is measured yet: fill in one measure at least.',
  across: (f: Range) =>
    `A panel of this stitch can be ${f.least} to ${f.most} mm across (2 to 80 rounds): choose another size, or another bead size.`,
  nothingToBead:
    'No stitch would carry a bead, since the picture does not reach the panel: pull it under the panel, or choose a bead for what lies around it.',
  stock: (f: { missing: string }) =>
    `The beads in the jars are ${f.missing} too few for this panel: allow more colours, or make the panel smaller.`,
  stockBuy: (f: Named & { missing: string; beads: string }) =>
    `The beads in the jars are ${f.missing} too few for this panel: buy ${f.beads} of ${f.name}, or make the panel smaller.`,
  stockPlain: (f: Named & { needed: string; most: string }) =>
    `The plain back takes ${f.needed} beads of ${f.name}, and the jar may give ${f.most}: choose another bead for the back, or make the panels smaller.`,
  colour: (f: { got: string }) =>
    `“${f.got}” is not a colour: write it as six digits, for instance d9b36a.`,
  noBeadLeft: 'No bead is left to choose from: leave out fewer of them.',
  keptMany: (f: { kept: string; most: string }) =>
    `Beads that must be used: ${f.kept}; colours that are allowed: ${f.most}. Allow more colours, or keep fewer beads.`,
  letterMissing: (f: { character: string }) =>
    `The letters of the pages have no “${f.character}”: leave it out of the title and of the names of beads.`,
  size: (f: { got: string; known: string }) =>
    `The bead size “${f.got}” is not known: use one of ${f.known}, or give the diameter of each bead.`,
  paletteEmpty: (f: Named) =>
    `${f.name} holds no beads: it needs a line of column names, and a line for each bead with its colour at least.`,
  paletteColumn: (f: Named) =>
    `${f.name} has no column of colours: name one column hex, with colours such as #d9b36a.`,
  paletteNoTable: (f: Named) => `${f.name} is no plain table: open it, and save it as CSV.`,
  paletteUnread: (f: Named) =>
    `${f.name} cannot be read: save it again in the program that wrote it.`,
  paletteLong: (f: Named & { most: string }) =>
    `${f.name} is too long (at most ${f.most}): keep the beads that you might use.`,
  paletteSize: (f: Named & { size: string; found: string }) =>
    `${f.name} has no beads of size ${f.size}, only of ${f.found}: choose one of these sizes.`,
  paletteRow: (f: Named & { line: string; got: string }) =>
    `Line ${f.line} of ${f.name}: “${f.got}” cannot be used there. Correct it, and open the file again.`,
  paletteTwice: (f: Named & { line: string; id: string; first: string }) =>
    `Line ${f.line} of ${f.name} has the id “${f.id}” of line ${f.first} again: give every bead an id of its own.`,
  jarsNone: (f: Named) =>
    `No beads are seen on white paper in ${f.name}: lay heaps apart on white paper, in even light, and photograph them from above.`,
  jarsGrid: (f: Named & { rows: string; columns: string }) =>
    `The beads in ${f.name} do not lie in ${f.rows} rows of ${f.columns}: check both numbers, and leave a finger’s width of paper between the heaps.`,
  fileEmpty: (f: Named) => `${f.name} is empty: copy or download it once more.`,
  fileBig: (f: Named & { most: string }) =>
    `${f.name} is too large, at most ${f.most} MB are read: save a smaller copy.`,
  format: (f: Named) =>
    `${f.name} is not a picture that is read here: save it as JPEG or PNG, and open that.`,
  damaged: (f: Named) =>
    `${f.name} is cut short or damaged: copy or download it once more, or open and save it again in a picture program.`,
  pixels: (f: Named & { width: string; height: string; most: string }) =>
    `${f.name} holds ${f.width} × ${f.height} pixels, and at most ${f.most} million are read: save a smaller copy; 2000 pixels a side are plenty.`,
  invisible: (f: Named) =>
    `Nothing is to be seen in ${f.name}, since all of it is transparent: save it with its layers switched on.`,
  drawing: (f: Named) =>
    `${f.name} takes too much to draw: save it as PNG in a drawing program, and open that.`,
  marks: (f: Named) =>
    `The four round corner marks of the chart are not to be found in ${f.name}: photograph the whole page, flat and sharp, with all four marks clean and in sight.`,
  uncoloured: (f: Named) =>
    `No cell of the chart in ${f.name} is coloured: check that it is the right photo.`,
  frameReach: (f: Range) =>
    `No panel suits a frame of this width: with this stitch it can be ${f.least} to ${f.most} mm wide.`,
  frameWide: (f: { rounds: string; from: string; to: string }) =>
    `The frame is too wide for a panel of ${f.rounds} rounds: take ${f.from} to ${f.to} rounds.`,
  frameRail: (f: { rounds: string }) =>
    `The rail of the frame is too long for a panel of ${f.rounds} rounds: check the frame’s width and height, or take more rounds.`,
  lining: (f: Range) =>
    `This measure of the lining finds no room: it can be ${f.least} to ${f.most} mm.`,
  undo: 'That cannot be done with these beads: undo the last step, and try another way.',
};

/** The same in every language: one that lacks a sentence does not compile. */
export type FaultWords = typeof english;

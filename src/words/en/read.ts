const plural = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** Words of `read`. */
export const read = {
  about: 'read a blank chart that was coloured by hand, from a scan or a photograph',
  photo: 'the scan or photograph: JPEG, PNG, WebP, TIFF or AVIF; - reads standard input',
  examples: `Examples:
  rondure blank --rounds 10 -o empty
  rondure read fixtures/coloured.jpg --blank empty/blank.json --dry-run
  rondure read fixtures/coloured.jpg --blank empty/blank.json -o star
`,
  options: {
    blank: 'blank.json of the chart that was coloured',
    colours: 'most bead colours to read, 1 to 24',
    unpainted: 'what uncoloured cells become: a bead, or "bare"',
    unpaintedDefault: 'not decided yet',
    titleDefault: "the blank chart's title",
  },
  reading: 'Reading the coloured chart …',
  done: (f: { title: string; folder: string; dry: boolean }) =>
    f.dry ? `“${f.title}” (trial run, nothing written)` : `“${f.title}” is in ${f.folder}`,
  counts: (f: { stitches: number; painted: number; unpainted: number }) =>
    `  ${plural(f.stitches, 'stitch', 'stitches')}: ${f.painted} coloured, ${f.unpainted} left white`,
  group: (f: { letter: string; name: string; stitches: number; readHex: string; next?: string }) =>
    `  ${f.letter}  ${f.name}: ${plural(f.stitches, 'stitch', 'stitches')}, coloured about ${f.readHex}${f.next === undefined ? '' : ` (next nearest bead: ${f.next})`}`,
  noDoubts: 'No stitch is in doubt.',
  doubts: (f: { count: number }) =>
    `${plural(f.count, 'stitch is', 'stitches are')} in doubt; look at ${f.count === 1 ? 'it' : 'them'} on your page (wedge 1 begins at the start line):`,
  doubt: (f: {
    round: number;
    stitch: number;
    wedge: number;
    place: number;
    read: string;
    reason: string;
  }) =>
    `  round ${f.round}, stitch ${f.stitch} (wedge ${f.wedge}, number ${f.place} in it): read as ${f.read}; ${f.reason}`,
  moreDoubts: (f: { count: number; file: string | undefined }) =>
    `  and ${f.count} more${f.file === undefined ? '' : `, all of them in ${f.file}`}`,
  reasons: {
    between: (f: { other: string }) => `its colour lies between this and ${f.other}`,
    uneven: (f: { other: string }) => `part of the cell looks like ${f.other}`,
    unlike: (_: object) => 'its colour is unlike the other cells read so',
    partly: (_: object) => 'it is only partly coloured',
    outside: (_: object) => 'it lies outside the photograph',
  },
  litUnevenly:
    'A shadow or uneven light lies on the page, and cells may have been misread without being named: photograph it again in even light.',
  unpainted: 'uncoloured',
  anotherBead: 'another bead',
};

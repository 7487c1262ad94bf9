import { numbersIn } from '../pages/numbers.js';

const { count: number } = numbersIn('en-GB');
const many = (count: number, one: string, more = `${one}s`) =>
  `${count} ${count === 1 ? one : more}`;

/** What the columns are called in a sentence. */
const columns: Record<string, string> = {
  id: 'id',
  name: 'name',
  size: 'size',
  diameterMm: 'diameter',
  beadsPerGram: 'beads per gram',
};

/** Words of the `beads` command and of its sample card. */
export const beads = {
  command: 'look through a palette, make a sample card, or read colours from a photograph',
  file: 'your beads: CSV, JSON or GIMP palette; - reads standard input',
  examples: `Examples:
  rondure beads palettes/harbour.csv
  rondure beads palettes/drawers.csv -o card
  rondure beads --from-picture fixtures/jars.jpg --rows 3 --columns 4 -o mybeads
`,
  options: {
    output: 'a new folder for the sample card (SVG, PNG) and beads.csv',
    size: 'bead size where the palette says none; beads of other sizes are left out',
    fromPicture: 'read the colours of beads laid out on white paper',
    rows: 'rows of heaps in the picture, 1 to 60',
    columns: 'heaps in each row, 1 to 60',
    force: 'replace an earlier sample card in the folder; other files stay',
    json: 'print the palette as one JSON object',
  },
  steps: { reading: 'Reading the picture …', drawing: 'Drawing the sample card …' },
  none: 'none',
  off: 'off',
  value: (f: { column: string; value: string | number }) =>
    f.column === 'diameterMm' ? `${f.value} mm` : String(f.value),
  formats: { csv: 'CSV', json: 'JSON', gpl: 'GIMP palette', photo: 'photograph' },
  heading: (f: { where: string; count: number; format: string }) =>
    `${f.where === '-' ? 'The standard input' : f.where} (${f.format}): ${many(f.count, 'bead')}`,
  tableHead: ['id', 'name', 'colour', 'finish', 'size', 'in stock'],
  grams: (f: { grams: number; beads: number | undefined }) =>
    f.beads === undefined ? `${f.grams} g` : `${number(f.beads)} beads (${f.grams} g)`,
  count: (count: number) => `${number(count)} ${count === 1 ? 'bead' : 'beads'}`,
  filled: (f: { column: string; count: number; all: boolean; values: readonly string[] }) =>
    `${columns[f.column] ?? f.column} of ${f.all ? 'every bead' : many(f.count, 'bead')}${f.values.length > 0 ? ` (${f.values.join(', ')})` : ''}`,
  filledHead:
    'Filled in, since the palette does not say (sizes are common practice: measure your own):',
  fromColour: 'the id or the colour',
  fromRow: 'the number of the row',
  sameColourHead: 'The same colour twice:',
  sameNameHead: 'The same name twice:',
  nearHead: (f: { count: number }) =>
    `Hard to tell apart (a difference under 2): ${many(f.count, 'pair')}`,
  near: (f: { one: string; other: string; difference: string }) =>
    `${f.difference}  ${f.one} and ${f.other}`,
  more: (count: number) => `and ${count} more (--json lists them)`,
  bead: (f: { id: string; name: string }) => (f.id === f.name ? f.id : `${f.id} ${f.name}`),
  and: ' and ',
  written: (f: { folder: string; files: readonly string[] }) =>
    `The sample card is in ${f.folder}: ${f.files.join(', ')}`,
  note: 'Note:',
  jar: (f: { row: number; column: number }) => `row ${f.row} column ${f.column}`,
  card: {
    title: (f: { title: string }) => `Samples: ${f.title}`,
    description: (f: { count: number; page: number; pages: number }) =>
      `Sample card of ${many(f.count, 'bead')}, page ${f.page} of ${f.pages}: a patch of colour for each bead with its name, id, size and finish.`,
    about: (f: { count: number; page: number; pages: number }) =>
      `${many(f.count, 'bead')}${f.pages > 1 ? `, page ${f.page} of ${f.pages}` : ''}`,
    under: (f: { id: string; size: string | undefined; finish: string | undefined }) =>
      [f.id, f.size, f.finish].filter((part) => part !== undefined).join(' · '),
    note: 'These are printed colours, not glass: screens and printers differ. Lay a few beads of each jar in its white ring, in daylight, and compare.',
  },
};

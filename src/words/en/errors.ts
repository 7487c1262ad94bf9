import { contradictions, expectedNumber, optionExpected } from './expected.js';
import type { Contradiction, ExpectedNumber, OptionExpected } from './expected.js';
import { liningImpossible } from './lining-impossible.js';
import { listProblemSaid } from './list-problems.js';
import type { ListProblem } from './list-problems.js';
import { Named, named } from './named-file.js';
import { rowErrors, rowFaultSaid } from './palette.js';
import type { RowFault } from './palette.js';
import { valueFault } from './pattern.js';
import type { ValueFault } from './pattern.js';
import { pictureFormats } from './picture-formats.js';
import { problemSaid } from './problems.js';
import type { SaidProblem } from './problems.js';
import { noLength, noLetterFree, noPanel, unlikeList } from './refusals.js';
import { swatchErrors } from './swatch-errors.js';
import { usageSaid } from './usage.js';
import type { UsageProblem } from './usage.js';

/** What was probably meant by a slip of the keys. */
const meant = (near: string | undefined) => (near === undefined ? '' : ` Did you mean “${near}”?`);

/** One problem, or several, a line each. */
const allOf = (said: readonly string[]) =>
  `${said.length === 1 ? 'one problem' : `${said.length} problems`}:${said.map((one) => `\n  ${one}`).join('')}`;

/** What a purchase weighs and costs, as far as it is known. */
const bought = (f: {
  grams: number | undefined;
  packets: number | undefined;
  cost: number | undefined;
}) => {
  const parts = [
    f.grams === undefined ? [] : `${f.grams} g`,
    f.packets === undefined ? [] : `${f.packets} ${f.packets === 1 ? 'packet' : 'packets'}`,
    f.cost === undefined ? [] : `for ${f.cost.toFixed(2)}`,
  ].flat();
  return parts.length > 0 ? `, ${parts.join(', ')}` : '';
};

/**
 * One clear sentence for each error code: what, where, and what to do. The parameter is the
 * error's facts. Keys are stable: programs read them.
 */
export const errors = {
  'shape-impossible': (f: { field: string; got: unknown; expected: ExpectedNumber }) =>
    `The panel cannot have ${f.field} ${String(f.got)}: use ${expectedNumber(f.expected)}.`,
  'polygon-needs-end-increase': () =>
    'A polygon outline needs the increase in the first or the last stitch of each wedge: use --increase first or last, or --outline circle.',
  'pattern-not-json': (f: { where: string; detail: string }) =>
    `${f.where} is not readable as JSON (${f.detail}): open it in the program that wrote it, or make it again from the picture.`,
  'pattern-not-ours': (f: { where: string }) =>
    `${f.where} is not a Rondure pattern: its "format" should be "rondure-pattern".`,
  'pattern-too-new': (f: { where: string; version: number; known: number }) =>
    `${f.where} was written by a newer Rondure (pattern version ${f.version}, this one reads up to ${f.known}): update Rondure.`,
  'pattern-invalid': (f: {
    where: string;
    path: string;
    problem: ValueFault | { readonly kind: 'pattern'; readonly problem: SaidProblem };
    more: number;
  }) =>
    `${f.where} is not a valid pattern: ${f.path ? `${f.path}: ` : ''}${f.problem.kind === 'pattern' ? problemSaid(f.problem.problem).replace(/\.$/, '') : valueFault(f.problem)}${f.more > 0 ? ` (and ${f.more} more)` : ''}. Correct it (rondure check names everything that is wrong), or make the pattern again from the picture.`,
  'pattern-broken': (f: { where: string; problems: readonly SaidProblem[] }) =>
    `${f.where} has ${allOf(f.problems.map(problemSaid))}`,
  'pattern-without-wish': (f: { where: string }) =>
    `${f.where} does not say how it was asked for, so there is nothing to go on from: it was typed in, or made by an earlier Rondure. Make it again from its picture.`,
  'wish-not-ours': (f: { where: string }) =>
    `${f.where} is neither a Rondure pattern nor a Rondure wish: its "format" should be "rondure-pattern" or "rondure-wish".`,
  'wish-too-new': (f: { where: string; version: number; known: number }) =>
    `${f.where} was written by a newer Rondure (wish version ${f.version}, this one reads up to ${f.known}): update Rondure.`,
  'wish-invalid': (f: { where: string; path: string; problem: ValueFault }) =>
    `${f.where} is not a valid wish: ${f.path ? `${f.path}: ` : ''}${valueFault(f.problem)}. Correct it, or give the pattern that was made.`,
  'from-needs-back': (f: { where: string; file: string }) =>
    `The second panel of ${f.where} shows the picture ${f.file}: give that file with --back.`,
  'pattern-not-inside': (f: { name: string; format: 'png' | 'svg' }) =>
    `${Named(f.name)} is ${f.format === 'png' ? 'a PNG picture' : 'an SVG drawing'} without a Rondure pattern inside: give pattern.json, or chart.svg or chart.png as Rondure wrote them.`,
  'text-not-unicode': (f: { name: string }) =>
    `${Named(f.name)} is not plain text that can be read here: save it as text in UTF-8.`,
  'page-not-built': () =>
    'The page is not there: npm run build makes it. Run that in Rondure’s folder, then try again.',
  'port-taken': (f: { port: number }) =>
    `Another program uses port ${f.port}: give another number with --port, or leave it out.`,
  usage: (f: { problem: UsageProblem }) => usageSaid(f.problem),
  'option-value': (f: { option: string; got: string; expected: OptionExpected; near?: string }) =>
    `${f.option} cannot be “${f.got}”: give ${optionExpected(f.expected)}.${meant(f.near)}`,
  'options-contradict': (f: { first: string; second: string; why: Contradiction }) =>
    `${f.first} and ${f.second} contradict each other (${contradictions[f.why]}): leave one of them out.`,
  'bead-unknown': (f: { option: string; got: string; near?: string }) =>
    `${f.option} names “${f.got}”, which is not a bead of this palette: use an id or a name from its list.${meant(f.near)}`,
  'bead-kept-and-left-out': (f: { id: string }) =>
    `The bead “${f.id}” is both kept and left out: name it in one place only.`,
  'letter-not-in-pattern': (f: { letter: string; letters: readonly string[] }) =>
    `The pattern has no bead ${f.letter}: its letters are ${f.letters.join(', ') || 'none'}.`,
  'merge-into-itself': (f: { from: string; into: string }) =>
    `${f.from} and ${f.into} are the same bead already: name two different letters.`,
  'swap-already-there': (f: { letter: string; id: string; other: string }) =>
    `The bead “${f.id}” is in the pattern already, as ${f.other}: use --merge ${f.letter}=${f.other} to give its stitches to ${f.other}.`,
  'recolour-nothing-left': () =>
    'Every bead of the pattern is left out, so that no colour is left: keep at least one.',
  'no-letter-free': noLetterFree,
  'list-unlike': unlikeList,
  'beads-unreadable': (f: { got: string }) =>
    f.got === ''
      ? 'No beads are given: write runs such as 3A 2B 1A.'
      : `“${f.got}” cannot be read as beads: write runs such as 3A 2B 1A.`,
  'beads-too-many': (f: { most: number }) =>
    `More than ${f.most} beads are given, more than a panel can hold: check the counts.`,
  'panel-unknown': (f: { got: string; panels: readonly string[] }) => noPanel(f),
  'length-unknown': (f: { got: number; lengths: number }) => noLength(f),
  'measurement-impossible': (f: Parameters<typeof swatchErrors.impossible>[0]) =>
    swatchErrors.impossible(f),
  'turn-impossible': (f: Parameters<typeof swatchErrors.turn>[0]) => swatchErrors.turn(f),
  'photo-points-too-few': (f: { rims: number }) => swatchErrors.photoFew(f),
  'photo-points-in-line': () => swatchErrors.photoLine,
  'photo-lean-impossible': (f: { lean: number }) => swatchErrors.photoLean(f),
  'swatch-measures-nothing': () => swatchErrors.nothing,
  'swatch-not-ours': (f: { where: string }) => swatchErrors.notOurs(f),
  'swatch-too-new': (f: { where: string; version: number; known: number }) =>
    swatchErrors.tooNew(f),
  'swatch-invalid': (f: { where: string; path: string; problem: ValueFault }) =>
    swatchErrors.invalid(f),
  'across-out-of-reach': (f: { gotMm: number; leastMm: number; mostMm: number }) =>
    `A panel ${f.gotMm} mm across cannot be made with this stitch: it can be ${f.leastMm.toFixed(1)} to ${f.mostMm.toFixed(1)} mm (2 to 80 rounds). Choose another size or another bead size.`,
  'nothing-to-bead': () =>
    'No stitch would carry a bead, because the picture does not reach the panel: check --place, --zoom and --shift, or give a --background colour.',
  'stock-too-small': (f: {
    missing: number;
    needed: number;
    most: number;
    moreColoursHelp: boolean;
    purchase:
      | {
          id: string;
          name: string;
          beads: number;
          grams: number | undefined;
          packets: number | undefined;
          cost: number | undefined;
        }
      | undefined;
  }) =>
    `The beads in stock are ${f.missing} too few: this panel needs ${f.needed}, and the ${f.most === 1 ? 'one colour that it may have holds' : `${f.most} colours that it may have hold`} ${f.needed - f.missing} at most, with a reserve left in each jar (one in ten, at least 30). ${f.purchase ? `The cheapest cure: buy ${f.purchase.beads} of ${f.purchase.name} (${f.purchase.id})${bought(f.purchase)}. Or` : 'No purchase of one bead alone mends that:'} ${f.moreColoursHelp ? 'allow more --colours, or ' : ''}make the panel smaller.`,
  'stock-too-small-for-plain': (f: { id: string; name: string; needed: number; most: number }) =>
    `The plain back takes ${f.needed} beads ${f.name} (${f.id}), and the jar may give ${f.most} at most, with a reserve left in it (one in ten, at least 30): buy more of it, choose another bead for --back, or make the panels smaller.`,
  interrupted: () => 'Interrupted: nothing was written.',
  'colour-not-hex': (f: { got: string }) =>
    `"${f.got}" is not a colour: write it as six digits, for instance d9b36a.`,
  'colour-not-finite': (f: { where: 'stitches' | 'palette'; row: number }) =>
    `Colour ${f.row} of the ${f.where} has a value that is not a number: check its L, a and b.`,
  'colours-impossible': (f: { got: number }) =>
    `A panel cannot have ${f.got} colours: ask for a whole number from 1 up.`,
  'palette-all-left-out': () =>
    'No bead is left to choose from: leave out fewer beads, or use a palette with more of them.',
  'palette-too-small-to-keep': (f: { kept: number; most: number }) =>
    `${f.kept} beads must be used (kept, or as background), but only ${f.most === 1 ? '1 colour is' : `${f.most} colours are`} allowed: raise --colours to ${f.kept}, or keep fewer beads.`,
  'bead-not-in-palette': (f: { row: number; rows: number }) =>
    `The palette has no bead ${f.row}: its beads are numbered 1 to ${f.rows}.`,
  'weights-impossible': (f: { row: number; got: number }) =>
    `Stitch ${f.row} has the weight ${f.got}: a weight is 0 or more.`,
  'glyph-missing': (f: {
    character: string;
    code: string;
    script: string | undefined;
    canAdd: boolean;
  }) =>
    `The bundled lettering has no "${f.character}" (${f.code}${f.script === undefined ? '' : `, ${f.script} script`}): ${
      f.canAdd
        ? `give a font that has it with --font, or leave that character out of title and names.`
        : 'leave that character out of the title and of the bead names.'
    }`,
  'script-unset': (f: { character: string; code: string; script: string | undefined }) =>
    `"${f.character}" (${f.code}) is a letter of the ${f.script ?? 'unknown'} script, whose letters join or run from right to left, which cannot be set yet: write that title or name in another script.`,
  'font-unreadable': (f: { file: string; why: 'kind' | 'collection' | 'web' | 'damaged' }) =>
    `The font ${f.file} cannot be used: ${
      {
        kind: 'it is neither a TrueType nor an OpenType font',
        collection: 'it is a collection of fonts, take a single one out of it',
        web: 'it is a web font, take the .ttf or .otf of it',
        damaged: 'its tables are damaged',
      }[f.why]
    }. Give a .ttf or .otf file.`,
  'font-forbids': (f: { file: string }) =>
    `The font ${f.file} may not be put into documents in part (so its OS/2 table says, fsType): take a font whose licence allows it, for instance one under the SIL Open Font License.`,
  'rounds-none': (f: { where: string }) =>
    `${f.where} holds no list of rounds: a round should start with R1, R2 and so on, then a colon.`,
  'rounds-broken': (f: { where: string; problems: readonly ListProblem[] }) =>
    `${f.where} has ${allOf(f.problems.map(listProblemSaid))}`,
  'rounds-unreadable': (f: { where: string; line: number; got: string; expected: string }) =>
    `Line ${f.line} of ${f.where} cannot be read at “${f.got}”: expected ${f.expected === '3A' ? 'a number and a letter, such as 3A' : f.expected}.`,
  'size-unknown': (f: { got: string; known: readonly string[] }) =>
    `The bead size “${f.got}” is not in our table: use one of ${f.known.join(', ')}, or give the diameter of each bead in the palette.`,
  'palette-empty': (f: { where: string }) =>
    `${Named(f.where)} holds no beads: it needs a line of column names and a line for each bead, at least with its colour.`,
  'palette-no-colour-column': (f: { where: string; found: readonly string[] }) =>
    `${Named(f.where)} has no column of colours${f.found.length > 0 ? ` (its first line reads ${f.found.join(', ')})` : ''}: name one column hex, with colours such as #d9b36a, or give columns L, a and b.`,
  ...rowErrors,
  'palette-not-text': (f: {
    where: string;
    kind: 'spreadsheet' | 'pdf' | 'page' | 'richText' | 'picture';
  }) => {
    const is = {
      spreadsheet: 'a spreadsheet: open it and save it as CSV',
      pdf: 'a PDF: copy its table into a spreadsheet and save that as CSV',
      page: 'a web page or drawing: copy its table into a spreadsheet and save that as CSV',
      richText: 'a text with formatting: save it as plain text, or as CSV from a spreadsheet',
      picture: 'a picture: rondure beads --from-picture reads colours from photographs of beads',
    };
    return `${Named(f.where)} is ${is[f.kind]}.`;
  },
  'palette-unusable': (f: { where: string; problems: readonly RowFault[] }) =>
    `${Named(f.where)} has ${f.problems.length === 1 ? 'one cell' : `${f.problems.length} cells`} that cannot be used:\n${f.problems.map((one) => `  ${rowFaultSaid(one)}`).join('\n')}`,
  'card-too-long': (f: { count: number; most: number }) =>
    `A sample card of ${f.count} beads would fill too many pages: it can hold ${f.most}. Split the palette.`,
  'jars-none': (f: { name: string }) =>
    `No beads are seen on white paper in ${named(f.name)}: lay heaps of beads apart on white paper, in even light, photograph them from above, and cut the picture to the paper.`,
  'jars-not-in-grid': (f: {
    name: string;
    rows: number;
    columns: number;
    empty: readonly string[];
  }) =>
    `The beads in ${named(f.name)} do not lie in ${f.rows} rows of ${f.columns}${f.empty.length > 0 ? ` (nothing is seen at ${f.empty.join(', ')})` : ''}: check --rows and --columns, and leave a finger's width of paper between the heaps.`,
  'palette-not-json': (f: { where: string; detail: string | ValueFault }) =>
    `${Named(f.where)} begins like JSON but cannot be read as JSON (${typeof f.detail === 'string' ? f.detail : valueFault(f.detail)}): save it again in the program that wrote it.`,
  'palette-no-beads-in-json': (f: { where: string }) =>
    `${Named(f.where)} is JSON without a list of beads: give a list such as [{ "name": "barley", "hex": "#d9b36a" }], or a pattern.json.`,
  'palette-too-long': (f: { where: string; most: number; of: 'beads' | 'lines' }) =>
    `${Named(f.where)} holds more than ${f.most} ${f.of}: keep the beads that you might use.`,
  'palette-no-bead-of-size': (f: { where: string; size: string; found: readonly string[] }) =>
    `${Named(f.where)} has no beads of size ${f.size} (it has ${f.found.join(', ')}): choose one of its sizes with --size.`,

  // files that are read; `-` is the standard input
  'file-missing': (f: { name: string }) =>
    `${Named(f.name)} is not there: check the name and the folder.`,
  'file-is-folder': (f: { name: string }) =>
    `${Named(f.name)} is a folder: give the name of one file in it.`,
  'file-unreadable': (f: { name: string; detail: string }) =>
    `${Named(f.name)} cannot be read (${f.detail}): check that you may open it.`,
  'file-empty': (f: { name: string }) =>
    `${Named(f.name)} is empty: copy or download it once more.`,
  'file-too-big': (f: { name: string; megabytes: number; limitMegabytes: number }) =>
    `${Named(f.name)} holds ${f.megabytes} MB or more, and at most ${f.limitMegabytes} MB are read: save a smaller copy.`,
  'stdin-empty': (_: object) =>
    'Nothing came in on the standard input: give the name of a file instead of "-", or pipe one in.',

  // pictures
  'picture-format-not-read': (f: { name: string; format: keyof typeof pictureFormats }) =>
    `${Named(f.name)} is ${pictureFormats[f.format]}, which is not read here: give a picture saved as JPEG, PNG, WebP, GIF, TIFF, AVIF or SVG.`,
  'picture-damaged': (f: { name: string; format: keyof typeof pictureFormats; detail: string }) =>
    `${Named(f.name)} is ${pictureFormats[f.format]}, but it is cut short or damaged: copy or download it once more, or open and save it again in a picture program.`,
  'picture-too-large': (f: {
    name: string;
    width: number;
    height: number;
    limitMegapixels: number;
  }) =>
    `${Named(f.name)} holds ${f.width} × ${f.height} pixels, and at most ${f.limitMegapixels} million are read of a picture stored like this one: save a smaller copy; 2000 pixels a side are plenty.`,
  'mask-shape-differs': (f: {
    name: string;
    mask: { width: number; height: number };
    picture: { width: number; height: number };
  }) =>
    `The mask ${f.name} is ${f.mask.width} × ${f.mask.height} pixels, and the picture is ${f.picture.width} × ${f.picture.height}: give both the same proportions, best by painting the mask over a copy of the picture.`,
  'picture-invisible': (f: { name: string }) =>
    `Nothing is to be seen in ${named(f.name)}, since all of it is transparent: save it with its layers switched on.`,
  'svg-entities': (f: { name: string }) =>
    `${Named(f.name)} holds entities that stand for other text, which can swell without end: save it as a plain SVG in a drawing program.`,
  'svg-nested': (f: { name: string }) =>
    `${Named(f.name)} holds drawings packed inside each other again and again, which can swell without end: save it as PNG in a drawing program, and give that.`,
  'svg-pictures-too-large': (f: { name: string; megapixels: number; limitMegapixels: number }) =>
    `The pictures inside ${named(f.name)} hold ${f.megapixels} million pixels, and at most ${f.limitMegapixels} million are read: put smaller copies into it, or save it as PNG and give that.`,
  'svg-too-heavy': (f: { name: string; megabytes: number }) =>
    `${Named(f.name)} takes more than ${f.megabytes} MB of memory to draw: simplify it, or save it as PNG and give that.`,
  'svg-too-slow': (f: { name: string; seconds: number }) =>
    `${Named(f.name)} was not drawn within ${f.seconds} seconds: simplify it, or save it as PNG and give that.`,
  'png-text-damaged': (f: { keyword: string }) =>
    `The text "${f.keyword}" inside the PNG is damaged: use another copy of the file.`,

  // a coloured blank chart that is read
  'corner-marks-not-found': (f: { name: string; found: number }) =>
    `The four round corner marks of the blank chart are not to be found in ${named(f.name)} (${f.found === 0 ? 'nothing looks like one' : `${f.found} dark round ${f.found === 1 ? 'spot is' : 'spots are'} there, but no four that fit`}): photograph the whole page, flat and sharp, with all four marks clean and in sight${f.found >= 4 ? ', and check that blank.json belongs to this page' : ''}.`,
  'blank-not-coloured': (f: { name: string }) =>
    `No cell of the chart in ${named(f.name)} is coloured: check that it is the right photograph.`,

  // purse frames
  'frame-measure-impossible': (f: {
    what: FrameMeasure;
    gotMm: number;
    leastMm: number;
    mostMm: number;
  }) =>
    `A purse frame cannot have ${frameMeasure[f.what]} of ${tenths(f.gotMm)} mm: measure again; here it lies between ${tenths(f.leastMm)} and ${tenths(f.mostMm)} mm.`,
  'frame-out-of-reach': (f: { widthMm: number; leastMm: number; mostMm: number }) =>
    `No panel of 2 to 80 rounds suits a frame ${tenths(f.widthMm)} mm wide: with this stitch and ratio it must be between ${f.leastMm} and ${f.mostMm} mm.`,
  'frame-too-wide': (f: {
    widthMm: number;
    rounds: number;
    wornMm: number;
    from: number;
    to: number;
  }) =>
    `The frame is ${tenths(f.widthMm)} mm wide, and a panel of ${f.rounds} rounds only ${tenths(f.wornMm)} mm as it is worn: take ${f.from === f.to ? `${f.from} rounds` : `${f.from} to ${f.to} rounds`}, or leave out --rounds and --across.`,
  'frame-rail-too-long': (f: {
    railMm: number;
    rounds: number;
    rimMm: number;
    leastRounds?: number;
  }) =>
    `The rail of the frame is ${tenths(f.railMm)} mm long, and the rim of a panel of ${f.rounds} rounds ${tenths(f.rimMm)} mm all round, of which a tenth at least must be left to sew together: check the frame's width and height${f.leastRounds === undefined ? '' : `, or take --rounds ${f.leastRounds} or more`}.`,
  'frame-not-ours': (f: { where: string }) =>
    `${Named(f.where)} is not a frame of ours: make one with rondure frame.`,
  'frame-too-new': (f: { where: string; version: number }) =>
    `${Named(f.where)} was written by a newer Rondure (frame version ${f.version}): update Rondure, or make the frame anew with rondure frame.`,
  'frame-invalid': (f: { where: string; path: string; problem: ValueFault; more: number }) =>
    `${Named(f.where)}: ${f.path}: ${valueFault(f.problem)}${f.more > 0 ? ` (and ${f.more} more)` : ''}.`,

  // the folder that is written
  'lining-impossible': (f: {
    what: keyof typeof liningImpossible;
    gotMm: number;
    leastMm: number;
    mostMm: number;
    panelMm?: number | undefined;
  }) => liningImpossible[f.what]({ ...f, panelMm: f.panelMm }),
  'output-exists': (f: { dir: string }) =>
    `${f.dir} is there already: choose another name with -o, or replace the files in it with --force.`,
  'output-not-ours': (f: {
    dir: string;
    found: 'file' | 'folder' | 'link';
    mark?: 'pattern' | 'card' | 'listing';
  }) =>
    `${f.dir} ${{ file: 'is a file', folder: `is a folder without a ${{ pattern: 'pattern', card: 'sample card', listing: 'listing' }[f.mark ?? 'pattern']} of ours in it`, link: 'is a link that leads nowhere' }[f.found]}, so it is left as it is: choose another name with -o.`,
  'output-file-exists': (f: { file: string }) =>
    `${f.file} is there already: choose another name with -o, or replace it with --force.`,
  'output-file-not-ours': (f: { file: string; found: 'file' | 'folder' | 'link' | 'special' }) =>
    `${f.file} is ${{ file: 'a file that this command did not make', folder: 'the name of a folder', link: 'a link that leads nowhere', special: 'no plain file' }[f.found]}, so it is left as it is: choose another name with -o.`,
  'output-is-here': (f: { dir: string }) =>
    `${f.dir} cannot be replaced while you work inside it: go one folder up and try again from there.`,
  'output-parent-not-folder': (f: { dir: string; parent: string }) =>
    `${f.dir} cannot be made, since ${f.parent} is not a folder: choose another place with -o.`,
  'output-name-bad': (f: { dir: string }) =>
    `${f.dir} cannot be the name of a folder here: choose a shorter or plainer one with -o.`,
  'output-not-writable': (f: { dir: string; detail: string }) =>
    `${f.dir} cannot be written (${f.detail}): choose a place with -o where you may write.`,
  'output-disk-full': (f: { dir: string }) =>
    `There is no room left on the disk for ${f.dir}: make room, or choose another place with -o.`,
};

const frameMeasure = {
  width: 'a width',
  height: 'a height',
  corner: 'a corner radius',
  hinge: 'a distance between the hinges',
  channel: 'a channel depth',
  holes: 'a distance between the holes',
};
export type FrameMeasure = keyof typeof frameMeasure;
const tenths = (mm: number): string => String(Math.round(mm * 10) / 10);

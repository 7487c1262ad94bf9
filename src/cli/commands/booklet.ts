import { extname } from 'node:path';
import type { Command } from 'commander';
import { RondureError } from '../../core/errors.js';
import type { FurtherFont } from '../../core/pages/surface/font.js';
import type { PrintPaper } from '../../core/pages/surface/print-sheet.js';
import { checkFileFree } from '../../node/output/output-file.js';
import type { LanguageChoice, Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { languageOption } from '../options/language-option.js';
import { underGroup } from '../options/described.js';
import { option, shown } from '../options/option-makers.js';
import { printOptions, refusePrintContradictions } from '../options/output-options.js';
import { Progress } from '../said/progress.js';
import { title } from '../options/values.js';
import { writeFileGuarded } from '../run/write-file.js';

interface BookletOptions {
  output?: string;
  paper?: PrintPaper;
  author?: string;
  licence?: string;
  date?: string;
  contact?: string;
  time?: string;
  photo?: string;
  listing?: string;
  language?: LanguageChoice;
  font?: string[];
  print?: 'colour' | 'color' | 'grey' | 'gray';
  large?: true;
  hand?: 'right' | 'left';
  force?: true;
  json?: true;
  quiet?: true;
}

/** `booklet PATTERN`: everything on pages to print or to sell. */
export function addBookletCommand(program: Command, words: Words, io: Io): void {
  const said = words.booklet.options;
  const command = program
    .command('booklet')
    .description(words.booklet.about)
    .argument('<PATTERN>', words.lining.pattern)
    .addHelpText('before', words.booklet.examples);
  const line = (flags: string, text: string) =>
    option(flags, text).argParser(title(flags.split(' ')[0]));
  const options = [
    ...underGroup(words, 'files', [
      option('-o, --output <FILE>', said.output),
      shown(option('--listing <DIR>', said.listing), said.listingDefault),
    ]),
    ...underGroup(words, 'printing', [
      shown(option('--paper <PAPER>', said.paper).choices(['a4', 'letter']), 'a4'),
      shown(
        option('--print <HOW>', said.print).choices(['colour', 'grey', 'color', 'gray']),
        'colour',
      ),
      shown(option('--large', said.large), words.cli.options.off),
      shown(option('--hand <HAND>', said.hand).choices(['right', 'left']), said.handDefault),
      shown(line('--author <TEXT>', said.author), said.authorDefault),
      shown(line('--licence <TEXT>', said.licence), said.licenceDefault),
      shown(option('--date <DAY>', said.date).argParser(dayOf), said.dateDefault),
      shown(line('--contact <TEXT>', said.contact), said.contactDefault),
      shown(line('--time <TEXT>', said.time), said.timeDefault),
      shown(option('--photo <FILE>', said.photo), said.photoDefault),
      languageOption(words),
      shown(option('--font <FILE>', said.font).argParser(gather), said.fontDefault),
      ...printOptions(words),
      shown(option('--force', said.force), words.cli.options.off),
    ]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) =>
    writeBooklet(file, command.opts<BookletOptions>(), words, io),
  );
}

async function writeBooklet(
  file: string,
  options: BookletOptions,
  words: Words,
  io: Io,
): Promise<void> {
  const {
    output,
    paper = 'a4',
    language = ['en-GB'],
    font = [],
    author,
    licence,
    date,
    contact,
    time,
    hand,
    listing,
  } = options;
  const print = options.print?.startsWith('gr') ? 'grey' : 'colour';
  const edition = { grey: print === 'grey', large: options.large === true, otherHand: hand };
  refusePrintContradictions(options);
  if (output === undefined)
    throw new RondureError('usage', { problem: { kind: 'no-booklet-file' } });
  if (extname(output).toLowerCase() !== '.pdf') {
    const expected = { kind: 'name-of-pdf' } as const;
    throw new RondureError('option-value', { option: '--output', got: output, expected });
  }
  const writing = { force: options.force === true, isOurs };
  await checkFileFree(output, writing);
  const shop = listing === undefined ? undefined : await shopFolder(listing, writing.force, io);
  const { readPattern } = await import('../../node/read/read-pattern.js');
  const pattern = await readPattern(file);
  const { makeBooklet, makeListing } = await import('../run/make-booklet.js');
  const fonts = await ownFonts(font);
  const photo =
    options.photo === undefined ? undefined : await photoOf(options.photo, edition.grey);
  const about = { author, licence, date, contact, time, photo };
  const wish = { paper, languages: language, fonts, edition, ...about };
  const progress = new Progress(io.progress, options.quiet === true || options.json === true);
  progress.say(words.cli.steps.booklet);
  const { bytes, pages } = await makeBooklet(pattern, wish).finally(() => progress.clear());
  const pictures = listing === undefined ? undefined : await makeListing(pattern, wish, pages);
  await writeFileGuarded(output, bytes, writing, io);
  if (shop && pictures) await shop(pictures);
  if (options.quiet) return;
  if (!options.json) {
    io.out(`${words.booklet.made({ file: output, pages, paper })}\n`);
    if (listing !== undefined) io.out(`${words.booklet.listed({ dir: listing })}\n`);
    return;
  }
  const made = { schema: 'rondure-booklet', version: 1, title: pattern.title, file: output };
  const given = {
    author: author ?? null,
    licence: licence ?? null,
    date: date ?? null,
    contact: contact ?? null,
    time: time ?? null,
    listing: listing ?? null,
  };
  io.out(
    `${JSON.stringify({ ...made, paper, languages: language, pages, print, large: edition.large, hand: hand ?? pattern.shape.hand, ...given }, null, 2)}\n`,
  );
}

/**
 * What writes a shop's page into a folder that may have it. Its modules can draw and write more than
 * a booklet needs: they are loaded only where there is such a folder.
 */
async function shopFolder(dir: string, force: boolean, io: Io) {
  const [{ listingFolder: kind }, { checkOutputFree }, { writeSet }] = await Promise.all([
    import('../../node/output/listing-files.js'),
    import('../../node/output/output-folder.js'),
    import('../run/write-set.js'),
  ]);
  await checkOutputFree(dir, force, kind);
  return (files: Parameters<typeof writeSet>[1]) => writeSet(dir, files, { force, kind }, io);
}

async function photoOf(file: string, grey: boolean) {
  const { readPhoto } = await import('../../node/read/read-photo.js');
  return readPhoto(file, grey);
}

/** Every value of an option that is given several times. */
const gather = (value: string, earlier: readonly string[] = []): string[] => [...earlier, value];

async function ownFonts(files: readonly string[]): Promise<FurtherFont[]> {
  if (files.length === 0) return [];
  const { ownFont } = await import('../../node/read/own-font.js');
  return Promise.all(files.map((file, n) => ownFont(file, n)));
}

/** A day of the calendar, as it was typed. */
function dayOf(got: string): string {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(got) ? new Date(`${got}T00:00:00Z`) : undefined;
  if (day && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(got)) return got;
  throw new RondureError('option-value', {
    option: '--date',
    got: got.replace(/\s+/g, ' '),
    expected: { kind: 'day' },
  });
}

const isOurs = (older: Uint8Array): boolean =>
  /^%PDF-[^]*\(Rondure booklet\)/.test(Buffer.from(older).toString('latin1'));

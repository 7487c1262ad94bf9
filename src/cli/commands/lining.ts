import { extname } from 'node:path';
import type { Command } from 'commander';
import { RondureError } from '../../core/errors.js';
import type { LiningSheet } from '../../core/pages/lining/lining-piece.js';
import type { PrintPaper } from '../../core/pages/surface/print-sheet.js';
import { liningLimits, planLining, usualLining } from '../../core/purse/lining/plan.js';
import type { LiningWish } from '../../core/purse/lining/plan.js';
import { checkFileFree } from '../../node/output/output-file.js';
import { languages, wordsIn } from '../../words/index.js';
import type { Language, Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { decimal, option, shown } from '../options/option-makers.js';
import { printOptions, refusePrintContradictions } from '../options/output-options.js';
import { panelNamed } from '../options/panel-option.js';
import { length, lengthBetween } from '../options/values.js';
import { writeFileGuarded } from '../run/write-file.js';

interface LiningOptions {
  output?: string;
  panel?: string;
  measured?: number;
  allowance?: number;
  ease?: number;
  opening?: number;
  gap?: number;
  paper?: PrintPaper;
  language?: Language;
  force?: true;
  json?: true;
  quiet?: true;
}

/** `lining PATTERN`: a cutting template at true size. */
export function addLiningCommand(program: Command, words: Words, io: Io): void {
  const said = words.lining.options;
  const { allowanceMm, easeMm, openingPercent, gapMm } = liningLimits;
  const between = (flags: string, text: string, { least, most }: { least: number; most: number }) =>
    option(flags, text).argParser(lengthBetween(flags.split(' ')[0], least, most));
  const command = program
    .command('lining')
    .description(words.lining.about)
    .argument('<PATTERN>', words.lining.pattern)
    .addHelpText('before', words.lining.examples);
  const options = [
    ...underGroup(words, 'files', [option('-o, --output <FILE>', said.output)]),
    ...underGroup(words, 'making', [
      shown(option('--panel <PANEL>', said.panel), said.panelDefault),
      shown(
        option('--measured <SIZE>', said.measured).argParser(length('--measured')),
        said.measuredDefault,
      ),
      shown(between('--allowance <SIZE>', said.allowance, allowanceMm), '5mm'),
      shown(between('--ease <SIZE>', said.ease, easeMm), '0'),
      shown(
        decimal('--opening <PERCENT>', said.opening, openingPercent.least, openingPercent.most),
        said.openingDefault,
      ),
      shown(between('--gap <SIZE>', said.gap, gapMm), '0'),
    ]),
    ...underGroup(words, 'printing', [
      shown(option('--paper <PAPER>', said.paper).choices(['a4', 'letter']), 'a4'),
      shown(option('--language <LANGUAGE>', said.language).choices(languages), 'en-GB'),
      ...printOptions(words),
      shown(option('--force', said.force), words.cli.options.off),
    ]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string) => makeLining(file, command, words, io));
}

async function makeLining(file: string, command: Command, words: Words, io: Io): Promise<void> {
  const options = command.opts<LiningOptions>();
  const { output } = options;
  refusePrintContradictions(options);
  if (output === undefined)
    throw new RondureError('usage', { problem: { kind: 'no-lining-file' } });
  const ending = extname(output).toLowerCase();
  if (ending !== '.pdf' && ending !== '.svg') {
    const expected = { kind: 'name-of-pdf-or-svg' } as const;
    throw new RondureError('option-value', { option: '--output', got: output, expected });
  }
  const pdf = ending === '.pdf';
  const isOurs = pdf ? isOurPdf : isOurSvg;
  const writing = { force: options.force === true, isOurs };
  await checkFileFree(output, writing);
  const { readPattern } = await import('../../node/read/read-pattern.js');
  const pattern = await readPattern(file);
  const panel = options.panel === undefined ? 0 : panelNamed(pattern, options.panel);
  const lining = planLining(pattern, { panel, ...wishOf(options) });
  const { fontsForPages } = await import('../../node/font/fonts.js');
  const { language = 'en-GB' } = options;
  const { words: said } = await wordsIn([language]);
  const sheet: LiningSheet = {
    lining,
    title: pattern.title,
    ...(pattern.panels.length > 1 && { panel: pattern.panels[panel].name }),
    words: said,
    fonts: await fontsForPages(language, []),
  };
  const paper = options.paper ?? 'a4';
  const { liningPdf } = await import('../../booklet/lining-pdf.js');
  const { liningSvg } = await import('../../core/pages/lining/lining-svg.js');
  const made = pdf
    ? await liningPdf(sheet, paper, language)
    : { bytes: liningSvg(sheet, paper), pages: 1 };
  await writeFileGuarded(output, made.bytes, writing, io);
  if (options.quiet) return;
  const facts = {
    file: output,
    cutMm: lining.cutAcrossMm,
    seamMm: lining.seamAcrossMm,
    estimate: lining.measuredMm === undefined,
    pages: made.pages,
    paper,
    pdf,
  };
  if (options.json) io.out(liningJson(facts, sheet));
  else io.out(`${words.lining.made(facts)}\n`);
}

function wishOf(options: LiningOptions): LiningWish {
  const { measured, allowance, ease, opening, gap } = options;
  return {
    allowanceMm: allowance ?? usualLining.allowanceMm,
    easeMm: ease ?? usualLining.easeMm,
    ...(measured !== undefined && { measuredMm: measured }),
    ...(opening !== undefined && { openingShare: opening / 100 }),
    ...(gap !== undefined && { gapMm: gap }),
  };
}

function liningJson(
  facts: { file: string; pages: number; paper: PrintPaper; estimate: boolean },
  { lining, title, panel }: LiningSheet,
): string {
  const mm = (value: number) => Math.round(value * 1000) / 1000;
  const object = {
    schema: 'rondure-lining',
    version: 1,
    title,
    panel: panel ?? null,
    file: facts.file,
    paper: facts.paper,
    pages: facts.pages,
    pieces: lining.pieces,
    estimate: facts.estimate,
    modelAcrossMm: mm(lining.modelAcrossMm),
    measuredMm: lining.measuredMm ?? null,
    seamAcrossMm: mm(lining.seamAcrossMm),
    cutAcrossMm: mm(lining.cutAcrossMm),
    allowanceMm: lining.allowanceMm,
    easeMm: lining.easeMm,
    openingShare: lining.openingShare,
    openingFrom: lining.openingFrom,
    gapMm: mm(lining.gapMm),
  };
  return JSON.stringify(object, null, 2) + '\n';
}

const textOf = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1');
const isOurPdf = (older: Uint8Array): boolean => /^%PDF-[^]*\(Rondure\)/.test(textOf(older));
const isOurSvg = (older: Uint8Array): boolean => /<svg [^]*<path id="cut-line"/.test(textOf(older));

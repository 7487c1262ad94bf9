import type { Command, Option } from 'commander';
import { RondureError } from '../../core/errors.js';
import { defaultSize } from '../../core/beads/palette/sizes.js';
import { shapeLimits } from '../../core/panel/limits.js';
import { languages } from '../../words/index.js';
import type { Language, Words } from '../../words/index.js';
import { underGroup } from './described.js';
import { decimal, option, shown, whole } from './option-makers.js';
import { outputOption, printOptions, contradict } from './output-options.js';
import type { OutputOptions } from './output-options.js';
import { shapeOptions } from './shape-options.js';
import type { ShapeOptions } from './shape-options.js';
import { turnValue } from './swatch-values.js';
import type { TurnValue } from './swatch-values.js';
import { length } from './values.js';

/** The options of `swatch` as commander hands them over. */
export interface SwatchOptions extends OutputOptions, Omit<ShapeOptions, 'rounds' | 'lean'> {
  rounds?: number;
  rimStitches?: number;
  rimMm: number;
  turn?: TurnValue;
  fromRound?: number;
  toRound?: number;
  markedWedge: number;
  threadMm?: number;
  threadStitches?: number;
  fiftyBeads?: number;
  beadMm?: number;
  lies: 'flat' | 'cups' | 'ruffles';
  ruler: number;
  protractor: number;
  guide?: true;
  paper: 'a4' | 'letter';
  language?: Language;
  photo?: string;
  points?: string;
  pixels: number;
  rulerLength?: number;
}

/** Options of the shape that say how a swatch is worked; the rest is what it tells. */
const asWorked = ['size', 'increase', 'outline', 'construction', 'hand', 'beadsFace', 'stitch'];

/** Adds every option of `swatch`, each with its default shown in help. */
export function addSwatchOptions(command: Command, words: Words): void {
  const said = words.swatch.options;
  const { none, off } = words.cli.options;
  const { wedges, rounds } = shapeLimits;
  const mm = (flags: string, text: string) =>
    option(flags, text).argParser(length(/--[a-z-]+/.exec(flags)![0]));
  const output = outputOption(words);
  output.flags = '-o, --output <FILE>';
  output.description = said.output;
  const worked = shapeOptions(words)
    .filter((one) => asWorked.includes(one.attributeName()))
    .map((one) => (one.long === '--size' ? shown(one, defaultSize) : one))
    .map((one) => (one.long === '--stitch' ? shown(one, none) : one));
  const options: Option[] = [
    output,
    ...underGroup(words, 'shape', [
      whole('--wedges <N>', said.wedges, wedges.least, wedges.most).default(7),
      shown(whole('--rounds <R>', said.rounds, rounds.least, rounds.most), said.roundsDefault),
      ...worked,
      shown(mm('--across <SIZE>', said.across), none),
    ]),
    ...underGroup(words, 'measured', [
      shown(
        decimal('--rim-stitches <COUNT>', said.rimStitches, 1, wedges.most * rounds.most),
        none,
      ),
      decimal('--rim-mm <MM>', said.rimMm, 1, 1000).default(50),
      shown(option('--turn <HOW FAR>', said.turn).argParser(turnValue('--turn')), none),
      shown(whole('--from-round <A>', said.fromRound, 1, rounds.most - 1), '2'),
      shown(whole('--to-round <B>', said.toRound, rounds.least, rounds.most), said.toRoundDefault),
      whole('--marked-wedge <K>', said.markedWedge, 1, wedges.most).default(1),
      shown(decimal('--thread-mm <MM>', said.threadMm, 1, 1_000_000), none),
      shown(decimal('--thread-stitches <COUNT>', said.threadStitches, 1, 100_000), none),
      shown(mm('--fifty-beads <SIZE>', said.fiftyBeads), none),
      shown(decimal('--bead-mm <MM>', said.beadMm, 0.5, 20), said.beadDefault),
      option('--lies <HOW>', said.lies).choices(['flat', 'cups', 'ruffles']).default('flat'),
      mm('--ruler <SIZE>', said.ruler).default(0.5, '0.5mm'),
      decimal('--protractor <DEGREES>', said.protractor, 0.01, 45).default(2),
      shown(option('--photo <PHOTO>', said.photo), none),
      shown(option('--points <POINTS>', said.points), none),
      decimal('--pixels <PIXELS>', said.pixels, 0.01, 1000).default(3),
      shown(mm('--ruler-length <SIZE>', said.rulerLength), none),
    ]),
    ...underGroup(words, 'printing', [
      shown(option('--guide', said.guide), off),
      option('--paper <PAPER>', said.paper).choices(['a4', 'letter']).default('a4'),
      shown(option('--language <LANGUAGE>', said.language).choices(languages), 'en-GB'),
      ...printOptions(words),
      shown(option('--force', said.force), off),
      shown(option('--dry-run', said.dryRun), off),
    ]),
  ];
  for (const one of options) command.addOption(one);
}

/** Refuses options of `swatch` that need another or contradict each other. */
export function refuseSwatchContradictions(command: Command): void {
  const options = command.opts<SwatchOptions>();
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
  const needs = (key: string, name: string, other: string, there: boolean) => {
    if (given(key) && !there) {
      throw new RondureError('usage', { problem: { kind: 'needs', option: name, needs: other } });
    }
  };
  for (const [key, name] of measures) {
    if (options.guide && given(key)) contradict('--guide', name, 'guide-comes-first');
  }
  needs('language', '--language', '--guide', options.guide === true);
  const rounds = options.rounds !== undefined;
  needs('across', '--across', '--rounds', rounds);
  needs('rimStitches', '--rim-stitches', '--rounds', rounds);
  needs('turn', '--turn', '--rounds', rounds);
  needs('photo', '--photo', '--rounds', rounds);
  needs('rimMm', '--rim-mm', '--rim-stitches', given('rimStitches'));
  needs('threadMm', '--thread-mm', '--thread-stitches', given('threadStitches'));
  needs('threadStitches', '--thread-stitches', '--thread-mm', given('threadMm'));
  needs('photo', '--photo', '--points', given('points'));
  needs('points', '--points', '--photo', given('photo'));
  needs('rulerLength', '--ruler-length', '--photo', given('photo'));
  if (given('photo') && given('turn')) contradict('--photo', '--turn', 'two-leans');
  if (options.outline === 'polygon' && options.increase === 'middle') {
    throw new RondureError('polygon-needs-end-increase', undefined);
  }
  const finest = 5;
  if (options.ruler > finest) {
    throw new RondureError('option-value', {
      option: '--ruler',
      got: `${options.ruler} mm`,
      expected: { kind: 'precision', most: finest },
    });
  }
  const last = options.rounds ?? shapeLimits.rounds.most;
  const to = options.toRound ?? last;
  const within = (option: string, got: number, least: number, most: number) => {
    if (got >= least && got <= most) return;
    const expected = { kind: 'whole', least, most } as const;
    throw new RondureError('option-value', { option, got: String(got), expected });
  };
  within('--to-round', to, shapeLimits.rounds.least, last);
  within('--from-round', options.fromRound ?? 1, 1, to - 1);
  within('--marked-wedge', options.markedWedge, 1, options.wedges);
}

const measures = [
  ['across', '--across'],
  ['rimStitches', '--rim-stitches'],
  ['turn', '--turn'],
  ['threadMm', '--thread-mm'],
  ['fiftyBeads', '--fifty-beads'],
  ['photo', '--photo'],
] as const;

import type { Command } from 'commander';
import { defaultDetail } from '../core/importance/stitch-importance.js';
import { darkWinsFromCover } from '../core/sampling/drawing.js';
import type { Words } from '../words/index.js';
import { bookletOptions } from './booklet-option.js';
import type { BookletOptions } from './booklet-option.js';
import { frameOptions } from './frame-options.js';
import { decimal, option, shown, whole } from './option-makers.js';
import { outputOption, printOptions, writeOptions } from './output-options.js';
import type { OutputOptions } from './output-options.js';
import { shapeOptions } from './shape-options.js';
import type { ShapeOptions } from './shape-options.js';
import { threadOptions } from './thread-options.js';
import type { ThreadOptions } from './thread-options.js';
import { list, shift, title } from './values.js';

/** The options of `chart` as commander hands them over; keys are the long names in camel case. */
export interface ChartOptions extends ShapeOptions, OutputOptions, ThreadOptions, BookletOptions {
  beads?: string;
  colours: number;
  colors?: number;
  place?: 'fit' | 'fill' | 'inside';
  zoom: number;
  shift: [number, number];
  rotate: number;
  mirror?: true;
  repeat?: true;
  art: 'auto' | 'photo' | 'drawing';
  paper?: true;
  ink: number;
  detail: number;
  mask?: string;
  back?: string;
  background: string;
  keep?: string[];
  leaveOut?: string[];
  proof: 'off' | 'normal' | 'long';
  useStock?: true;
  tidy: number;
  dither?: number;
  title?: string;
  frame?: string;
  bareRounds?: number;
}

/** Adds every option of `chart`, each with its default shown in help. */
export function addChartOptions(command: Command, words: Words): Command {
  const said = words.cli.options;
  const options = [
    outputOption(words),
    shown(option('--beads <FILE>', said.beads), said.beadsDefault),
    whole('--colours <K>', said.colours, 1, 24).default(8),
    whole('--colors <K>', said.colors, 1, 24),
    ...shapeOptions(words),
    shown(
      option('--place <HOW>', said.place).choices(['fit', 'fill', 'inside']),
      said.placeDefault,
    ),
    decimal('--zoom <FACTOR>', said.zoom, 0.01, 100).default(1),
    option('--shift <X,Y>', said.shift).argParser(shift('--shift')).default([0, 0], '0,0'),
    decimal('--rotate <DEGREES>', said.rotate, -3600, 3600).default(0),
    shown(option('--mirror', said.mirror), said.off),
    shown(option('--repeat', said.repeat), said.off),
    option('--art <KIND>', said.art).choices(['auto', 'photo', 'drawing']).default('auto'),
    shown(option('--paper', said.paper), said.off),
    decimal('--ink <PERCENT>', said.ink, 1, 100).default(100 * darkWinsFromCover),
    decimal('--detail <AMOUNT>', said.detail, 0, 1).default(defaultDetail),
    shown(option('--mask <FILE>', said.mask), said.none),
    shown(option('--back <WHAT>', said.back), said.none),
    option('--background <WHAT>', said.background).default('ffffff'),
    shown(option('--keep <BEADS>', said.keep).argParser(list), said.none),
    shown(option('--leave-out <BEADS>', said.leaveOut).argParser(list), said.none),
    option('--proof <HOW>', said.proof).choices(['off', 'normal', 'long']).default('normal'),
    shown(option('--use-stock', said.useStock), said.off),
    decimal('--tidy <PERCENT>', said.tidy, 0, 100).default(3),
    shown(decimal('--dither <STRENGTH>', said.dither, 0, 1), said.off),
    ...frameOptions(words),
    shown(option('--title <TEXT>', said.title).argParser(title('--title')), said.titleDefault),
    ...threadOptions(words),
    ...bookletOptions(words),
    ...printOptions(words),
    ...writeOptions(words),
  ];
  for (const one of options) command.addOption(one);
  return command;
}

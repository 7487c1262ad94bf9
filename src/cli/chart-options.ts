import { Option } from 'commander';
import type { Command } from 'commander';
import type { Words } from '../words/index.js';
import { length, list, numberBetween, shift, title, wholeNumber } from './values.js';

/** The options of `chart` as commander hands them over; keys are the long names in camel case. */
export interface ChartOptions {
  output: string;
  beads?: string;
  colours: number;
  colors?: number;
  wedges: number;
  rounds: number;
  across?: number;
  size?: string;
  roundHeight?: number;
  stitchWidth?: number;
  increase: 'last' | 'middle' | 'first';
  lean: number;
  outline?: 'polygon' | 'circle';
  construction: 'spiral' | 'joined';
  hand: 'right' | 'left';
  beadsFace: 'away' | 'toward';
  start?: number;
  place: 'fit' | 'fill' | 'inside';
  zoom: number;
  shift: [number, number];
  rotate: number;
  mirror?: true;
  repeat?: true;
  art: 'auto' | 'photo' | 'drawing';
  paper?: true;
  background: string;
  keep?: string[];
  leaveOut?: string[];
  title?: string;
  json?: true;
  quiet?: true;
  force?: true;
  dryRun?: true;
}

/** Adds every option of `chart`, each with its default shown in help. */
export function addChartOptions(command: Command, words: Words): Command {
  const said = words.cli.options;
  const add = (flags: string, text: string) => new Option(flags, text);
  const whole = (flags: string, text: string, least: number, most: number) =>
    add(flags, text).argParser(wholeNumber(longName(flags), least, most));
  const decimal = (flags: string, text: string, least: number, most: number) =>
    add(flags, text).argParser(numberBetween(longName(flags), least, most));
  const shown = (option: Option, text: string) => option.default(undefined, text);

  const options = [
    add('-o, --output <DIR>', said.output),
    shown(add('--beads <FILE>', said.beads), said.beadsDefault),
    whole('--colours <K>', said.colours, 1, 24).default(8),
    whole('--colors <K>', said.colors, 1, 24),
    whole('--wedges <N>', said.wedges, 3, 12).default(7),
    whole('--rounds <R>', said.rounds, 2, 80).default(20),
    shown(add('--across <SIZE>', said.across).argParser(length('--across')), said.acrossDefault),
    shown(add('--size <SIZE>', said.size), said.sizeDefault),
    shown(decimal('--round-height <MM>', said.roundHeight, 0.1, 50), said.stitchDefault),
    shown(decimal('--stitch-width <MM>', said.stitchWidth, 0.1, 50), said.stitchDefault),
    add('--increase <PLACE>', said.increase).choices(['last', 'middle', 'first']).default('last'),
    decimal('--lean <L>', said.lean, -1, 1).default(0.5),
    shown(
      add('--outline <KIND>', said.outline).choices(['polygon', 'circle']),
      said.outlineDefault,
    ),
    add('--construction <KIND>', said.construction).choices(['spiral', 'joined']).default('spiral'),
    add('--hand <HAND>', said.hand).choices(['right', 'left']).default('right'),
    add('--beads-face <WAY>', said.beadsFace).choices(['away', 'toward']).default('away'),
    shown(decimal('--start <DEGREES>', said.start, -3600, 3600), said.startDefault),
    add('--place <HOW>', said.place).choices(['fit', 'fill', 'inside']).default('fill'),
    decimal('--zoom <FACTOR>', said.zoom, 0.01, 100).default(1),
    add('--shift <X,Y>', said.shift).argParser(shift('--shift')).default([0, 0], '0,0'),
    decimal('--rotate <DEGREES>', said.rotate, -3600, 3600).default(0),
    shown(add('--mirror', said.mirror), said.off),
    shown(add('--repeat', said.repeat), said.off),
    add('--art <KIND>', said.art).choices(['auto', 'photo', 'drawing']).default('auto'),
    shown(add('--paper', said.paper), said.off),
    add('--background <WHAT>', said.background).default('ffffff'),
    shown(add('--keep <BEADS>', said.keep).argParser(list), said.none),
    shown(add('--leave-out <BEADS>', said.leaveOut).argParser(list), said.none),
    shown(add('--title <TEXT>', said.title).argParser(title('--title')), said.titleDefault),
    shown(add('--json', said.json), said.off),
    shown(add('--quiet', said.quiet), said.off),
    shown(add('--force', said.force), said.off),
    shown(add('--dry-run', said.dryRun), said.off),
  ];
  for (const option of options) command.addOption(option);
  return command;
}

function longName(flags: string): string {
  return /--[a-z-]+/.exec(flags)![0];
}

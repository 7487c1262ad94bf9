import type { Command } from 'commander';
import { oneLine } from '../../core/pages/lists/lines.js';
import { findPlaces } from '../../core/thread/find/find-place.js';
import type { FoundPlace } from '../../core/thread/find/find-place.js';
import { typedRuns } from '../../core/thread/find/typed-runs.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { panelLengths } from '../../core/thread/lengths.js';
import type { Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { option, shown, whole } from '../options/option-makers.js';
import { panelNamed, requireLength } from '../options/panel-option.js';
import { grouped } from '../said/summary.js';

interface FindOptions {
  worked?: true;
  panel?: string;
  length?: number;
  json?: true;
}

const mostShown = 8;

/** `find PATTERN BEADS`: where in the pattern the maker is. */
export function addFindCommand(program: Command, words: Words, io: Io): void {
  const said = words.place;
  const command = program
    .command('find')
    .description(said.find)
    .argument('<PATTERN>', said.pattern)
    .argument('<BEADS...>', said.findBeads)
    .helpOption('-h, --help', words.cli.options.help)
    .addHelpText('before', said.findExamples)
    .addHelpText('after', `\n${words.cli.exitCodes}`);
  const options = [
    shown(option('--worked', said.worked), words.cli.options.off),
    shown(option('--panel <PANEL>', said.panel), said.any),
    ...underGroup(words, 'thread', [
      shown(whole('--length <NUMBER>', said.length, 1, 9999), said.any),
    ]),
    ...underGroup(words, 'printing', [
      shown(option('--json', words.cli.options.json), words.cli.options.off),
    ]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string, beads: string[]) => {
    const options = command.opts<FindOptions>();
    const { readPattern } = await import('../../node/read/read-pattern.js');
    const pattern = await readPattern(file);
    const wanted = typedRuns(
      beads.join(' '),
      pattern.beads.map(({ letter }) => letter),
    );
    const panel = options.panel === undefined ? undefined : panelNamed(pattern, options.panel);
    if (options.length !== undefined) {
      const panels = panel === undefined ? pattern.panels.keys() : [panel];
      requireLength(pattern, panels, options.length);
    }
    const places = findPlaces(pattern, {
      beads: wanted,
      worked: options.worked === true,
      ...(panel !== undefined && { panel }),
      ...(options.length !== undefined && { length: options.length }),
    });
    if (options.json) io.out(findJson(pattern, places));
    else io.out(findText(pattern, places, { beads: beads.join(' '), ...options }, words));
  });
}

function findJson(pattern: Pattern, places: readonly FoundPlace[]): string {
  const object = {
    schema: 'rondure-places',
    version: 1,
    certain: places.length === 1,
    places: places.map(({ panel, certainAfter, ...place }) => ({
      panel: pattern.panels[panel].name,
      ...place,
      certainAfter: certainAfter ?? null,
    })),
  };
  return JSON.stringify(object, null, 2) + '\n';
}

function findText(
  pattern: Pattern,
  places: readonly FoundPlace[],
  asked: FindOptions & { beads: string },
  words: Words,
): string {
  const said = words.place;
  const worked = asked.worked === true;
  if (places.length === 0) {
    return `${said.none({ beads: oneLine(asked.beads).slice(0, 200), worked })}\n`;
  }
  const say = worked ? said.last : said.next;
  const several = pattern.panels.length > 1;
  const lines = places.slice(0, mostShown).map((place) => {
    const one = panelLengths(pattern, place.panel).length === 1;
    return `  ${say({
      panel: several ? pattern.panels[place.panel].name : undefined,
      length: one ? undefined : place.length,
      round: place.round,
      stitch: place.stitch,
      wedge: place.wedge,
      inWedge: place.inWedge,
      left: words.lists.beads(place.left),
      more: places.length === 1 ? undefined : place.certainAfter,
    })}`;
  });
  if (places.length > mostShown) {
    lines.push(`  ${said.andMore(grouped(places.length - mostShown))}`);
  }
  const after = places.map(({ certainAfter }) => certainAfter);
  const beads = after.includes(undefined) ? undefined : Math.max(...(after as number[]));
  const told =
    places.length === 1
      ? said.certain
      : said.more({ places: grouped(places.length), beads, worked });
  return `${told}\n${lines.join('\n')}\n`;
}

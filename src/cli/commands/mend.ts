import type { Command } from 'commander';
import { mendString, mostEdits } from '../../core/thread/find/mend.js';
import type { Mending, Repair } from '../../core/thread/find/mend.js';
import { typedRuns } from '../../core/thread/find/typed-runs.js';
import { wrapped } from '../../core/pages/lists/lines.js';
import { runsOf } from '../../core/pages/lists/runs.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { textOf } from '../../node/read/read-text.js';
import type { Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { underGroup } from '../options/described.js';
import { option, shown, whole } from '../options/option-makers.js';
import { contradict } from '../options/output-options.js';
import { panelNamed, requireLength } from '../options/panel-option.js';
import { grouped } from '../said/summary.js';

interface MendOptions {
  panel?: string;
  length: number;
  soFar?: true;
  json?: true;
}

/** Beads after a slip that are taken off in a few minutes (judged by hand). */
const soonOff = 100;
const mostShown = 12;

/** `mend PATTERN BEADS`: what was really strung, against the stringing list. */
export function addMendCommand(program: Command, words: Words, io: Io): void {
  const said = words.place;
  const command = program
    .command('mend')
    .description(said.mend)
    .argument('<PATTERN>', said.pattern)
    .argument('<BEADS...>', said.mendBeads)
    .helpOption('-h, --help', words.cli.options.help)
    .addHelpText('before', said.mendExamples)
    .addHelpText('after', `\n${words.cli.exitCodes}`);
  const options = [
    shown(option('--panel <PANEL>', said.panel), said.first),
    ...underGroup(words, 'thread', [whole('--length <NUMBER>', said.length, 1, 9999).default(1)]),
    shown(option('--so-far', said.soFar), words.cli.options.off),
    ...underGroup(words, 'printing', [
      shown(option('--json', words.cli.options.json), words.cli.options.off),
    ]),
  ];
  for (const one of options) command.addOption(one);
  command.action(async (file: string, beads: string[]) => {
    const options = command.opts<MendOptions>();
    const piped = beads.length === 1 && beads[0] === '-';
    if (piped && file === '-') contradict('PATTERN -', 'BEADS -', 'input');
    const { readPattern } = await import('../../node/read/read-pattern.js');
    const pattern = await readPattern(file);
    const text = piped ? textOf(await readBytes('-'), '-') : beads.join(' ');
    const strung = typedRuns(
      text,
      pattern.beads.map(({ letter }) => letter),
    );
    const panel = options.panel === undefined ? 0 : panelNamed(pattern, options.panel);
    requireLength(pattern, [panel], options.length);
    const { length } = options;
    const soFar = options.soFar === true;
    const found = mendString(pattern, { strung, panel, length, soFar });
    if (options.json) io.out(mendJson(found));
    else {
      const named = pattern.panels.length > 1 && { panel: pattern.panels[panel].name };
      io.out(mendText(found, { length, soFar, ...named }, words));
    }
  });
}

function mendJson(found: Mending): string {
  const { edits, ...rest } = found;
  const object = { schema: 'rondure-mending', version: 1, edits: edits ?? null, ...rest };
  return JSON.stringify(object, null, 2) + '\n';
}

function mendText(
  found: Mending,
  asked: { length: number; soFar: boolean; panel?: string },
  words: Words,
): string {
  const said = words.place;
  const beads = (count: number) => words.lists.beads(count);
  if (found.edits === 0) return `${said.right({ beads: beads(found.strung), ...asked })}\n`;
  const lines: string[] = [];
  if (found.betterBackwards) lines.push(said.backwards);
  if (found.edits === undefined) {
    lines.push(said.tooMany({ ...asked, most: mostEdits, agree: beads(found.agreeUpTo) }));
    return `${lines.map((line) => wrapped(line)).join('\n')}\n`;
  }
  lines.push(
    said.wrong({
      ...asked,
      // Where a run is short no single bead of it is the first that is wrong.
      agree: found.repairs[0].run?.number === 1 ? undefined : beads(agreesUpTo(found)),
      edits: found.edits,
      wanted: beads(found.wanted),
      strung: beads(found.strung),
    }),
  );
  const { repairs } = found;
  for (const repair of repairs.slice(0, mostShown)) {
    lines.push(`  ${said.repair[repair.kind](shownRepair(repair))}`);
  }
  if (repairs.length > mostShown) {
    lines.push(`  ${said.andMore(grouped(repairs.length - mostShown))}`);
  }
  const [first] = repairs;
  if (first.comeOff <= soonOff)
    lines.push(said.restring({ beads: beads(first.comeOff), one: first.comeOff === 1 }));
  const kinds = [...new Set(repairs.map(({ kind }) => kind))];
  for (const kind of kinds) lines.push(said.ways[kind]);
  if (kinds.some((kind) => kind === 'extra' || kind === 'other')) lines.push(said.broken);
  return `${lines.map((line) => (line.startsWith('  ') ? line : wrapped(line))).join('\n')}\n`;
}

/** Beads that agree from the start, up to the run in which the first slip lies. */
function agreesUpTo({ agreeUpTo, repairs: [first] }: Mending): number {
  return first.run ? Math.min(agreeUpTo, first.after) : agreeUpTo;
}

function shownRepair({ after, wanted, got, run, ...place }: Repair) {
  const runs = (letters: string) =>
    runsOf(letters)
      .map(({ letter, count }) => `${count}${letter}`)
      .join(' ');
  const { round, stitch, wedge, inWedge } = place;
  return {
    ...{ round, stitch, wedge, inWedge },
    ...{ after: grouped(after), wanted: runs(wanted), got: runs(got) },
    run: run && { ...run, letter: (wanted || got)[0] },
  };
}

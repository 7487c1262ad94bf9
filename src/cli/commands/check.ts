import type { Command } from 'commander';
import { brokenError, findProblems } from '../../core/pattern/read/find-problems.js';
import { warningSentence } from '../../core/errors.js';
import { problemSentence } from '../../core/pattern/read/check.js';
import { patternReport } from '../../core/pattern/report.js';
import { thumbnailWarnings } from '../../core/pattern/thumbnail-warnings.js';
import { framePlans } from '../../core/purse/frame/plan.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { nameIn } from '../../node/read/read-text.js';
import type { Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import { printOptions, refusePrintContradictions } from '../options/output-options.js';
import type { OutputOptions } from '../options/output-options.js';
import { grouped } from '../said/summary.js';

/** Version of the object printed by `check --json`. */
export const checkSchema = 1;

/** `check PATTERN`: everything that is wrong in a pattern; exit code 3 when something is. */
export function addCheckCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('check')
    .description(words.edits.check)
    .argument('<PATTERN>', words.edits.redrawPattern)
    .addHelpText('before', words.edits.checkExamples);
  for (const one of printOptions(words)) command.addOption(one);
  command.action(async (file: string) => {
    const options = command.opts<OutputOptions>();
    refusePrintContradictions(options);
    const { patternTextIn } = await import('../../node/read/read-pattern.js');
    const where = nameIn(file);
    const text = patternTextIn(await readBytes(file), file);
    const { problems, notes, pattern } = findProblems(text, where);
    if (pattern === undefined) throw brokenError(where, problems);
    // Whatever redraw would refuse or leave out is told here too.
    const { requireGlyphs } = await import('../../node/output/pattern-files.js');
    await requireGlyphs(pattern);
    framePlans(pattern);
    const { title, shape } = pattern;
    const report = patternReport(pattern);
    const told = [
      ...notes.map((note) => ({ ...note, message: problemSentence(words, note) })),
      ...thumbnailWarnings(pattern).map((note) => ({
        ...note,
        message: warningSentence(words, note),
      })),
    ];
    if (options.json) {
      const { wedges, rounds } = shape;
      const { stitches, beads, colours } = report;
      const panels = report.panels.map(({ name, stitches: all, beads: strung }) => ({
        name,
        stitches: all,
        beads: strung,
      }));
      const counts = { wedges, rounds, stitches, beads, colours, panels };
      const head = { schema: 'rondure-check', version: checkSchema, file, sound: true, title };
      io.out(JSON.stringify({ ...head, ...counts, notes: told }, null, 2) + '\n');
    } else if (!options.quiet) {
      const panels = report.panels.map(({ name, ...counts }) => ({
        panel: name,
        stitches: grouped(counts.stitches),
        beads: grouped(counts.beads),
      }));
      const lines = [words.edits.sound({ ...shape, title, panels })];
      for (const { message } of told) lines.push(`${words.cli.summary.warning} ${message}`);
      io.out(lines.join('\n') + '\n');
    }
  });
}

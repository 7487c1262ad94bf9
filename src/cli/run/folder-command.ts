import type { Pattern } from '../../core/pattern/pattern.js';
import { thumbnailWarnings } from '../../core/pattern/thumbnail-warnings.js';
import { colourChanges } from '../../core/pattern/stitches.js';
import { threadWarnings } from '../../core/thread/fit.js';
import { checkOutputFree } from '../../node/output/output-folder.js';
import type { Words } from '../../words/index.js';
import { bookletFile, refuseBookletContradictions } from '../options/booklet-option.js';
import type { BookletOptions } from '../options/booklet-option.js';
import { bookletAmong, olderBooklet } from './booklet-among.js';
import type { Io } from './io.js';
import type { OutputOptions } from '../options/output-options.js';
import { Progress } from '../said/progress.js';
import { summaryJson, summaryText } from '../said/summary.js';
import type { SummaryReport } from '../said/summary.js';
import { refuseThreadContradictions, withThread } from '../options/thread-options.js';
import type { ThreadOptions } from '../options/thread-options.js';
import { writeSet } from './write-set.js';

/** What a command made, before it is drawn and written. */
export interface Made {
  pattern: Pattern;
  report: SummaryReport;
  /** Size across that was asked for, millimetres. */
  wishMm?: number | undefined;
}

/**
 * The common course of every command that ends in a folder of pattern files: look whether the
 * folder can be written, make the pattern, draw and write its files, and tell what was done.
 */
export async function runFolderCommand(
  options: OutputOptions & ThreadOptions & BookletOptions,
  words: Words,
  io: Io,
  make: (progress: Progress) => Promise<Made>,
): Promise<void> {
  refuseThreadContradictions(options);
  refuseBookletContradictions(options);
  const progress = new Progress(io.progress, options.quiet === true || options.json === true);
  const folder = options.dryRun ? undefined : options.output;
  const force = options.force === true;
  try {
    if (options.output !== undefined) await checkOutputFree(options.output, force);
    // What draws the files is loaded while the pattern is made.
    const [made, { patternFiles, requireGlyphs }] = await Promise.all([
      make(progress),
      import('../../node/output/pattern-files.js'),
    ]);
    const { report, wishMm } = made;
    const pattern = withThread(made.pattern, options);
    report.warnings.push(...threadWarnings(pattern));
    report.warnings.push(...thumbnailWarnings(pattern));
    await requireGlyphs(pattern);
    let files: string[] = [];
    if (folder !== undefined) {
      const drawn = await patternFiles(pattern, words, (step) =>
        progress.say(words.cli.steps[step]),
      );
      if (options.booklet) {
        progress.say(words.cli.steps.booklet);
        drawn.set(bookletFile, await bookletAmong(pattern, options));
      }
      report.warnings.push(...olderBooklet(folder, options));
      progress.say(words.cli.steps.writing);
      await writeSet(folder, drawn, { force }, io);
      files = [...drawn.keys()].sort();
    }
    progress.clear();
    const changes = colourChanges(pattern, 0);
    const result = { pattern, report, colourChanges: changes, wishMm, folder, files };
    if (options.json) io.out(summaryJson(result, words));
    else if (!options.quiet) io.out(summaryText(result, words));
  } finally {
    progress.clear();
  }
}

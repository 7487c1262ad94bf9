import type { Command } from 'commander';
import type { ChartOptions } from './chart-options.js';
import { backFile } from './back-option.js';
import { refuseFrameContradictions } from './frame-options.js';
import { contradict, refuseInputTwice, refuseOutputContradictions } from './output-options.js';
import { refuseShapeContradictions } from './shape-options.js';

/** Options that lay the picture of the back. */
const backPlacing = [
  '--back-place',
  '--back-zoom',
  '--back-shift',
  '--back-rotate',
  '--back-mirror',
] as const;

/** Refuses options that say two things about one question, before any work is done. */
export function refuseContradictions(command: Command, picture: string): void {
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
  const options = command.opts<ChartOptions>();
  const { art, dither, useStock } = options;
  const photo = art === 'photo';
  refuseBoth(given('colours') && given('colors'), '--colours', '--colors', 'spelling');
  refuseBoth(options.paper && photo, '--paper', '--art photo', 'paper-is-drawing');
  refuseBoth(dither !== undefined && useStock, '--dither', '--use-stock', 'dither-stock');
  refuseBoth(given('tidy') && given('dither'), '--tidy', '--dither', 'dither-tidy');
  refuseBoth(given('edges') && given('dither'), '--edges', '--dither', 'dither-edges');
  refuseBoth(given('ink') && options.paper, '--ink', '--paper', 'ink');
  refuseBoth(given('ink') && photo, '--ink', '--art photo', 'ink');
  refuseInputTwice('PICTURE', picture, options.beads);
  refuseInputTwice('PICTURE', picture, options.mask, '--mask');
  refuseInputTwice('PICTURE', picture, options.from, '--from');
  refuseInputTwice('--from', options.from, options.beads);
  refuseInputTwice('--mask', options.mask ?? '', options.beads);
  const subject = subjectFile(options.subject) ?? '';
  refuseInputTwice('PICTURE', picture, subject, '--subject');
  refuseInputTwice('--mask', options.mask ?? '', subject, '--subject');
  refuseInputTwice('--subject', subject, options.beads);
  const back = backFile(options.back);
  const plainBack = options.back === undefined || /^plain:/i.test(options.back);
  for (const name of backPlacing) {
    const key = name
      .replace(/^--b/, 'b')
      .replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
    const said = `--back ${options.back ?? ''}`.trim();
    refuseBoth(plainBack && given(key), name, said, 'back-without-picture');
  }
  refuseInputTwice('--subject', subject, back, '--back');
  refuseInputTwice('PICTURE', picture, back, '--back');
  refuseInputTwice('--mask', options.mask ?? '', back, '--back');
  refuseInputTwice('--back', back ?? '', options.beads);
  refuseFrameContradictions(options, picture);
  refuseShapeContradictions(command);
  refuseOutputContradictions(options);
}

function refuseBoth(
  are: boolean | undefined,
  ...[first, second, why]: Parameters<typeof contradict>
): void {
  if (are) contradict(first, second, why);
}

/** The file that `--subject` names, where it names one. */
export function subjectFile(text: string | undefined): string | undefined {
  return text?.toLowerCase() === 'plain' ? undefined : text;
}

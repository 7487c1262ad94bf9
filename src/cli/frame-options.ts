import type { Option } from 'commander';
import { RondureError } from '../core/errors.js';
import type { Frame } from '../core/pattern/schema.js';
import { readBytes } from '../node/read-bytes.js';
import { nameIn, textOf } from '../node/read-text.js';
import type { Words } from '../words/index.js';
import { option, shown, whole } from './option-makers.js';
import { refuseInputTwice } from './output-options.js';

/** The options of a command that fits a panel to a frame, as commander hands them over. */
export interface FrameOptions {
  frame?: string;
  bareRounds?: number;
}

/** `--frame` and `--bare-rounds`. */
export function frameOptions(words: Words): Option[] {
  const said = words.frame.options;
  return [
    shown(option('--frame <FILE>', said.frame), words.cli.options.none),
    shown(whole('--bare-rounds <COUNT>', said.bareRounds, 0, 20), said.bareDefault),
  ];
}

/** Refuses bare rounds without a frame, and two options that would both read standard input. */
export function refuseFrameContradictions(
  { frame, bareRounds, beads, mask }: FrameOptions & { beads?: string; mask?: string },
  picture: string,
  words: Words,
): void {
  if (bareRounds !== undefined && frame === undefined) {
    throw new RondureError('usage', { problem: words.frame.why.bareAlone });
  }
  refuseInputTwice('PICTURE', picture, frame, '--frame');
  refuseInputTwice('--mask', mask, frame, '--frame');
  refuseInputTwice('--beads', beads, frame, '--frame');
}

/** The frame that `--frame` names, with the bare rounds that the maker asks for. */
export async function frameFor(options: FrameOptions, words: Words): Promise<Frame | undefined> {
  const { frame: file, bareRounds } = options;
  if (file === undefined) return undefined;
  const { parseFrame } = await import('../core/frame/frame-file.js');
  const frame = parseFrame(textOf(await readBytes(file), file), nameIn(file), words);
  return { ...frame, ...(bareRounds !== undefined && { bareRounds }) };
}

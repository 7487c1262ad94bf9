import { RondureError } from '../../core/errors.js';
import { wishLimits } from '../../core/pattern/wish-limits.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { nameIn, textOf } from '../../node/read/read-text.js';
import { inGroup, text, whole } from './described.js';
import type { ValuesOf } from './described.js';
import { refuseInputTwice } from './output-options.js';

/** `--frame` and `--bare-rounds`, of a command that fits a panel to a frame. */
export const frameTable = inGroup('frame', {
  frame: text('--frame <FILE>', { said: 'none', word: (words) => words.frame.options.frame }),
  bareRounds: whole('--bare-rounds <COUNT>', wishLimits.bareRounds, {
    said: (words) => words.frame.options.bareDefault,
    word: (words) => words.frame.options.bareRounds,
    from: ({ bareRounds }) => bareRounds,
  }),
});

/** Their values. */
export interface FrameOptions extends ValuesOf<typeof frameTable> {}

/** Refuses bare rounds without a frame, and two options that would both read standard input. */
export function refuseFrameContradictions(
  {
    frame,
    bareRounds,
    beads,
    mask,
    from,
  }: FrameOptions & { beads?: string; mask?: string; from?: string },
  picture: string,
): void {
  if (bareRounds !== undefined && frame === undefined && from === undefined) {
    throw new RondureError('usage', { problem: { kind: 'bare-rounds-without-frame' } });
  }
  refuseInputTwice('PICTURE', picture, frame, '--frame');
  refuseInputTwice('--mask', mask, frame, '--frame');
  refuseInputTwice('--beads', beads, frame, '--frame');
}

/** The frame that `--frame` names, with the bare rounds that the maker asks for. */
export async function frameFor(options: FrameOptions): Promise<Frame | undefined> {
  const { frame: file, bareRounds } = options;
  if (file === undefined) return undefined;
  const { parseFrame } = await import('../../core/purse/frame/frame-file.js');
  const frame = parseFrame(textOf(await readBytes(file), file), nameIn(file));
  return { ...frame, ...(bareRounds !== undefined && { bareRounds }) };
}

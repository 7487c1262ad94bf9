import type { Command } from 'commander';
import { RondureError } from '../../core/errors.js';
import type { Mask } from '../../core/picture/importance/mask.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import type { ByHand } from '../../core/brush/by-hand.js';
import type { MakerWish } from '../../core/pattern/wished.js';
import { patternTextIn } from '../../node/read/read-pattern.js';
import { readBytes } from '../../node/read/read-bytes.js';
import { nameIn } from '../../node/read/read-text.js';
import { chartTable } from './chart-options.js';
import type { ChartOptions } from './chart-options.js';
import type { Table } from './described.js';

/** What an earlier wish gives besides the values of options. */
export interface FromUse {
  readonly frame?: Frame | undefined;
  readonly mask?: Mask | undefined;
  readonly subject?: Mask | undefined;
  /** Bead diameter of the palette that was used, millimetres; where no other beads are asked for. */
  readonly beadDiameterMm?: number | undefined;
  /** What the maker laid by hand after the choice. */
  readonly hand?: Omit<ByHand, 'palette'>;
  /** Title of a pattern of this picture. */
  title(pictureName: string): string | undefined;
}

/**
 * Reads the file of `--from` and fills in every option that it answers and that was not typed.
 *
 * Throws what `readBytes`, `patternTextIn` and `parseWish` throw, and `from-needs-back`.
 */
export async function useFrom(command: Command): Promise<FromUse> {
  const { from, beads, size } = command.opts<ChartOptions>();
  if (from === undefined) return { title: () => undefined };
  const { parseWish } = await import('../../core/pattern/read/wish-file.js');
  const { paintedOf } = await import('../../core/pattern/maker-wish.js');
  const text = patternTextIn(await readBytes(from), from);
  const { wish, pattern, frame } = parseWish(text, nameIn(from));
  const typed = (key: keyof ChartOptions) => command.getOptionValueSource(key) === 'cli';
  const answers = answersOf(wish);
  for (const key of ruledOut(typed)) delete answers[key];
  for (const [key, answer] of Object.entries(answers)) {
    if (answer !== undefined && !typed(key as keyof ChartOptions)) {
      command.setOptionValueWithSource(key, answer, 'from');
    }
  }
  const { back } = wish;
  if (typeof back === 'object' && 'file' in back && !typed('back')) {
    throw new RondureError('from-needs-back', { where: nameIn(from), file: back.file });
  }
  return {
    frame: typed('frame') ? undefined : frame,
    mask: typed('mask') ? undefined : paintedOf(wish.mask),
    subject: typed('subject') || wish.subject === 'plain' ? undefined : paintedOf(wish.subject),
    hand: { instead: wish.instead, laid: wish.laid },
    beadDiameterMm:
      beads === undefined && size === undefined ? wish.shape.beadDiameterMm : undefined,
    title: (pictureName) =>
      pattern?.panels[0].picture?.file === pictureName ? pattern.title : undefined,
  };
}

/** The values of options that a wish stands for. */
function answersOf(wish: MakerWish): Partial<ChartOptions> {
  return Object.fromEntries(
    Object.entries(chartTable as Table).map(([key, { from }]) => [key, from?.(wish)]),
  );
}

/** Answers that something typed leaves no room for. */
function ruledOut(typed: (key: keyof ChartOptions) => boolean): (keyof ChartOptions)[] {
  const rules: [typed: keyof ChartOptions, out: (keyof ChartOptions)[]][] = [
    ['rounds', ['across']],
    ['across', ['rounds']],
    ['frame', ['rounds', 'across', 'bareRounds']],
    ['increase', ['outline']],
    ['lean', ['outline']],
    ['colors', ['colours']],
    ['art', ['paper']],
    ['tidy', ['dither']],
    ['dither', ['tidy', 'useStock']],
    ['useStock', ['dither']],
  ];
  return rules.flatMap(([key, out]) => (typed(key) ? out : []));
}

import { computed, signal } from '@preact/signals';
import { undecided } from '../../core/beads/bead.js';
import { colouredPattern } from '../../core/blank/coloured-pattern.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { plainWish } from '../sample/sample.js';
import type { Piece } from '../store/piece.js';
import { look, pieces, tell } from '../store/store.js';
import { words } from '../words.js';
import { forgetSheet, keepSheet } from './kept-sheet.js';
import type { Doubtful } from './messages.js';
import type { Sheet } from './reader.js';
import { colouring } from './state.js';

export const sheet = signal<Sheet | undefined>(undefined);
/** What the maker said of doubtful cells: a palette index, or `undecided` for white; by stitch. */
export const answers = signal<ReadonlyMap<number, number>>(new Map());
/** Which doubtful cell is looked at; as many as there are: all are settled. */
export const at = signal(0);
/** What white cells become: a palette index, `bare` or `undecided`. */
export const white = signal(undecided);

const none: readonly Doubtful[] = [];
export const doubtful = computed(() => sheet.value?.reader.read.doubtful ?? none);

/** What every cell is, as far as it is known: `undecided` where it is white. */
export const beadOf = computed(() => {
  const of = sheet.value?.reader.read.beadOf.slice() ?? new Int16Array();
  for (const [stitch, bead] of answers.value) of[stitch] = bead;
  return of;
});

/** A photo was read: what was said of it before is taken up again. */
export function begin(next: Sheet, said: ReadonlyMap<number, number> = new Map()): void {
  end();
  sheet.value = next;
  answers.value = said;
  const all = next.reader.read.doubtful;
  const first = all.findIndex(({ stitch }) => !said.has(stitch));
  at.value = first === -1 ? all.length : first;
  white.value = undecided;
  void keepSheet(next, said);
}

/** Says what the cell that is looked at is, and goes on to the next. */
export function settle(bead: number): void {
  const cell = doubtful.peek()[at.peek()];
  if (!cell) return;
  answers.value = new Map(answers.peek()).set(cell.stitch, bead);
  at.value++;
  void keepSheet(sheet.peek()!, answers.peek());
}

export function back(): void {
  at.value = Math.max(0, at.peek() - 1);
}

/** Leaves what is not settled as it was read. */
export function takeRest(): void {
  at.value = doubtful.peek().length;
}

/**
 * Lays the chart on the table in place of what lies there, as one step.
 *
 * @throws RondureError `no-letter-free`
 */
export function lay(): void {
  const { blank, beads } = sheet.peek()!;
  const cut = new Set(
    doubtful
      .peek()
      .filter(({ reason, stitch }) => reason === 'outside' && !answers.peek().has(stitch))
      .map(({ stitch }) => stitch),
  );
  const of = beadOf
    .peek()
    .map((bead, s) => (bead === undecided && !cut.has(s) ? white.peek() : bead));
  const { pattern } = colouredPattern({ blank, title: blank.title, beads }, of);
  const say = words.peek().coloured;
  pieces.change(say.steps.read, (now) => withColoured(now, pattern));
  void forgetSheet();
  leave();
  look({ litStitch: -1, litBead: undefined, overlay: 0, panel: 0 });
  tell(say.laid(pattern.title));
}

/** The piece as the chart alone gives it; beads and pages stay as they are. */
function withColoured({ palette, pages }: Piece, pattern: Pattern): Piece {
  const { wedges, rounds, increase, lean, construction, hand, beadsFace } = pattern.shape;
  const shape = { wedges, rounds, increase, lean, construction, hand, beadsFace };
  return {
    title: pattern.title,
    sample: false,
    opened: pattern,
    palette,
    ...(pattern.swatch && { swatch: pattern.swatch }),
    ...(pages && { pages }),
    wish: { ...plainWish, shape },
    laid: {},
  };
}

/** The photo is put away; what was said of it is kept. */
export function end(): void {
  sheet.peek()?.reader.close();
  sheet.value = undefined;
}

/** Back to the table. */
export function leave(): void {
  end();
  colouring.value = false;
}

import { computed, signal } from '@preact/signals';
import { whenSaid } from '../fault.js';
import { samplePiece } from '../sample/sample.js';
import type { Chart, ChartPanel } from './chart.js';
import { keepHistory } from './history.js';
import type { Piece } from './piece.js';
import { firstView } from './view.js';
import type { View } from './view.js';

/**
 * Where all state lives. `piece` is what is kept and undone; `chart` is what the worker made of it;
 * `view` is how it is looked at, which no undo touches.
 */
export const pieces = keepHistory<Piece>(samplePiece());
/** The piece on the table. */
export const piece = pieces.now;
/** The newest chart of it; undefined until the first is there. */
export const chart = signal<Chart | undefined>(undefined);
/** Whether beads are being chosen for the present wish. */
export const choosing = signal(false);
export const view = signal<View>(firstView());
/** One sentence for the maker: what went wrong, or what was done. */
interface Told {
  readonly text: string;
  readonly kind: 'note' | 'trouble';
  /** Whether it is over once what is wished can be made again. */
  readonly passes?: boolean;
}

export const told = signal<Told | undefined>(undefined);
/** Whether a picture is being opened. */
export const opening = signal(false);

/** The panel that is looked at. */
export const shownPanel = computed(() => panelOf(chart.value, view.value.panel));

/** A panel of a chart; its last one where it has fewer. */
export function panelOf(made: Chart | undefined, panel: number): ChartPanel | undefined {
  return made?.panels[Math.min(panel, made.panels.length - 1)];
}

/** Whether the panel is shown as in a mirror; where beads lie toward the maker, bead face and working side are one. */
export const mirrored = computed(
  () => view.value.workingFace && chart.value?.shape.beadsFace === 'away',
);

/** Changes the view, part by part. */
export function look(part: Partial<View>): void {
  view.value = { ...view.peek(), ...part };
}

/** Opens a step. What was said of the one before is done with; what went wrong still stands there. */
export function openStep(step: string): void {
  if (told.peek()?.kind === 'note') told.value = undefined;
  look({ step });
}

/** Changes what is wished, as one step. */
export function wish(name: string, part: Partial<Piece['wish']>): void {
  pieces.change(name, (now) => ({ ...now, wish: { ...now.wish, ...part } }));
}

/** Counts what was said, or was over: a sentence whose words are still fetched must be the newest to be said. */
let tellings = 0;

export function tell(text: string): void {
  tellings++;
  told.value = { text, kind: 'note' };
}

/**
 * @param trouble a sentence, or an error, which is said in the language of the page
 * @param passes whether it is over as soon as what is wished can be made again
 */
export function tellTrouble(trouble: unknown, passes = false): void {
  const own = ++tellings;
  const say = (text: string) => {
    told.value = { text, kind: 'trouble', ...(passes && { passes }) };
  };
  if (typeof trouble === 'string') return say(trouble);
  // What is said meanwhile is newer.
  whenSaid(trouble, (text) => own === tellings && say(text));
}

/** What is wished can be made: what was said against an earlier wish is over. */
export function troublePassed(): void {
  tellings++;
  if (told.peek()?.passes) told.value = undefined;
}

import { computed, effect, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { seenBy } from './seen.js';
import { chart, panelOf, piece, pieces, view } from './store.js';

/**
 * While a finger pulls, it stands still when nothing new has come for so long, milliseconds: longer than a
 * slow machine takes for a move, or all that waits would come in between two.
 */
const stillMs = 300;

/** What waits, while a finger pulls, until it stands still: so that the panel alone follows it. */
function calm<T>(lively: ReadonlySignal<T>): ReadonlySignal<T> {
  const calmed = signal(lively.peek());
  let timer: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const now = lively.value;
    clearTimeout(timer);
    // The first one is waited for by nobody longer than need be.
    if (!pieces.held.value || calmed.peek() === undefined) calmed.value = now;
    else timer = setTimeout(() => (calmed.value = lively.peek()), stillMs);
  });
  return calmed;
}

/** The chart as mat and thread show it. */
export const calmChart = calm(chart);

/** The panel of it that is looked at. */
export const calmPanel = computed(() => panelOf(calmChart.value, view.value.panel));

/** The same chart as the eyes of the view see it. */
export const calmSeen = computed(() => seenBy(calmChart.value, view.value.eyes));

/** The piece as a card shows it whose numbers the panel changes. */
export const calmPiece = calm(piece);

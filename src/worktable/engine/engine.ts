import { batch, effect, untracked } from '@preact/signals';
import { letterBeads } from '../../core/beads/lettering.js';
import type { PanelWish } from '../../core/make.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { lettersInWorkingOrder } from '../../core/pattern/stitches.js';
import { countsOf, laysOf } from '../store/chart.js';
import type { Piece } from '../store/piece.js';
import { chart, choosing, piece, pieces, tellTrouble, troublePassed } from '../store/store.js';
import { isKeptChart } from '../sample/kept-chart.js';
import { words } from '../words.js';
import type { Answer, Ask } from './messages.js';
import { finished, laidUpon } from './finish.js';
import type { Chosen } from './finish.js';
import { errorOf } from './failure.js';
import { panelWish } from './panel-wish.js';
import { takeSpare } from '../picture-in/spare.js';

/**
 * Keeps `chart` true to `piece`: every change goes to the worker as the parts that are new. While a
 * gesture lasts the worker follows; when it rests, the choice settles. One ask is under way at a
 * time, and the next is always the newest wish.
 */
export function startEngine(): void {
  const worker = new Worker(new URL('./chart-worker.ts', import.meta.url), { type: 'module' });
  let number = 0;
  let known: Partial<PanelWish> = {};
  let palettes: Piece['palette']['beads'][] = [];
  let busy = false;
  /** What was chosen for the newest wish, before the maker's hand; undefined until it has settled. */
  let chosen: Chosen | undefined;
  /** A chart that lies there without its picture; what was chosen for the wish before it is kept apart, for an undo. */
  let opened: Chosen | undefined;
  let waiting: { wish: PanelWish; settle: boolean } | undefined;
  let unfinished = false;

  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    if (data.number === number) {
      if (data.kind === 'settled') chosen = data;
      batch(() => take(data, palettes[0]));
      if (data.kind !== 'followed') choosing.value = false;
    }
    busy = false;
    send();
  };
  worker.onerror = () => tellTrouble(words.value.errors.workerEnded);

  function send(): void {
    if (busy || !waiting || document.hidden) return;
    const { wish, settle } = waiting;
    waiting = undefined;
    const part = newParts(known, wish);
    known = wish;
    chosen = undefined;
    palettes = [wish.beads as Piece['palette']['beads']];
    busy = true;
    const [ask, given] = withSpare({ number: ++number, part, settle });
    worker.postMessage(ask, given);
  }

  // A window that nobody sees works on nothing; the newest wish is taken up again when it is seen.
  document.addEventListener('visibilitychange', () => {
    if (document.hidden && busy) {
      worker.postMessage({ number: ++number, part: {}, settle: false, rest: true } satisfies Ask);
      busy = false;
      unfinished = true;
    } else if (!document.hidden) {
      const wish = unfinished ? panelWish(piece.peek()) : undefined;
      unfinished = false;
      if (wish) waiting ??= { wish, settle: !pieces.held.peek() };
      send();
    }
  });

  let last: { piece: Piece; resting: boolean } | undefined;
  effect(() => {
    const now = piece.value;
    const resting = !pieces.held.value;
    // What hands have done changes no bead.
    const same = last?.resting === resting && sameBeads(last.piece, now);
    last = { piece: now, resting };
    if (same) return;
    untracked(() => {
      const wish = panelWish(now);
      if (!wish) {
        waiting = undefined;
        choosing.value = false;
        number++;
        if (!now.opened) return;
        if (opened?.pattern !== now.opened) opened = { pattern: now.opened };
        if (resting) show(opened);
        return;
      }
      // Only the maker's hand did something: nothing is to be chosen anew.
      if (chosen && !waiting && Object.keys(newParts(known, wish)).length === 0) {
        if (resting) show(chosen);
        return;
      }
      choosing.value = true;
      waiting = { wish, settle: resting };
      send();
    });
  });
}

function take(answer: Answer, beads: Piece['palette']['beads']): void {
  if (answer.kind === 'failed') {
    tellTrouble(errorOf(answer.error), true);
    // What was chosen for an older wish is not saved as if it were this one.
    if (chart.peek()) chart.value = { ...chart.peek()!, settled: undefined };
    return;
  }
  troublePassed();
  if (answer.kind === 'settled') {
    show(answer);
  } else {
    // The sample's chart lies there as it will settle.
    if (isKeptChart(chart.peek()) && !pieces.held.peek()) return;
    const lays = laysOf(
      answer.shape,
      answer.panels.map((panel) => panel.startDegrees),
    );
    const { laid, all } = laidUpon(answer.panels, piece.peek(), beads);
    const lettered = letterBeads(all, Int16Array.from(laid.flatMap((beadOf) => [...beadOf])));
    const rank = new Map(lettered.order.map((index, n) => [index, n]));
    const panels = laid.map((beadOf, n) => ({
      ...lays[n],
      place: answer.panels[n].place,
      beadOf: beadOf.map((index) => rank.get(index) ?? index),
    }));
    chart.value = {
      shape: answer.shape,
      panels,
      beads: lettered.beads,
      counts: countsOf(lettered.beads.length, panels),
      settled: undefined,
    };
  }
}

/** Shows what was chosen as the maker's hand has it. */
function show(chosen: Chosen): void {
  try {
    const made = finished(chosen, piece.peek());
    chart.value = { ...chartOfPattern(made.pattern), settled: made };
  } catch (error) {
    tellTrouble(error);
    if (chart.peek()) chart.value = { ...chart.peek()!, settled: undefined };
  }
}

/** A chart as a pattern has it. */
export function chartOfPattern(pattern: Pattern) {
  const lays = laysOf(
    pattern.shape,
    pattern.panels.map((panel) => panel.startDegrees),
  );
  const place = new Map(pattern.beads.map(({ letter }, n) => [letter, n]));
  place.set('.', -1);
  const panels = pattern.panels.map((panel, n) => ({
    ...lays[n],
    place: panel.picture?.place,
    beadOf: Int16Array.from(lettersInWorkingOrder(panel), (mark) => place.get(mark) ?? -2),
  }));
  return {
    shape: pattern.shape,
    panels,
    beads: pattern.beads,
    counts: countsOf(pattern.beads.length, panels),
    settled: { pattern },
  };
}

/** Whether nothing changed that the beads hang on. */
function sameBeads(before: Piece, now: Piece): boolean {
  const keys = new Set([...Object.keys(before), ...Object.keys(now)]) as Set<keyof Piece>;
  for (const apart of ['work', 'pages'] as const) keys.delete(apart);
  return [...keys].every((key) => before[key] === now[key]);
}

/** The ask with the second copy of its picture, which is given away instead of copied. */
function withSpare(ask: Ask): [Ask, Transferable[]] {
  const { picture } = ask.part;
  const data = picture && takeSpare(picture);
  if (!data) return [ask, []];
  const { width, height } = picture;
  return [
    { ...ask, part: { ...ask.part, picture: { width, height, data } } },
    [data.buffer as ArrayBuffer],
  ];
}

/** A back without pixels. */
const isSmall = (back: PanelWish['back']): boolean =>
  back === undefined || back === 'same' || 'plain' in back;

/** What differs, by value where it is small and by identity where it is pixels or beads. */
function newParts(known: Partial<PanelWish>, wish: PanelWish): Ask['part'] {
  const keys = new Set([...Object.keys(known), ...Object.keys(wish)]) as Set<keyof PanelWish>;
  const large: ReadonlySet<string> = new Set(['picture', 'beads', 'mask', 'back']);
  const differs = (key: keyof PanelWish) =>
    large.has(key) && !(key === 'back' && isSmall(known.back) && isSmall(wish.back))
      ? known[key] !== wish[key]
      : JSON.stringify(known[key]) !== JSON.stringify(wish[key]);
  return Object.fromEntries([...keys].filter(differs).map((key) => [key, wish[key]]));
}

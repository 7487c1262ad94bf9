import { computed, signal } from '@preact/signals';
import type { Pattern } from '../../../core/pattern/pattern.js';
import { lettersInWorkingOrder } from '../../../core/pattern/stitches.js';
import {
  beginWork,
  goneOver,
  lengthToString,
  progressOf,
  putAt,
  sameToHands,
  untouched,
  withProgress,
} from '../../../core/work/progress.js';
import type { PanelAt, PanelProgress, StitchNote, Work } from '../../../core/work/progress.js';
import { beadsOnThread, workableMarks } from '../../../core/work/on-thread.js';
import { stringPlans } from '../../../core/work/stringing-steps.js';
import { chart, piece, pieces } from '../../store/store.js';

/** The pattern of the chart, once its beads are chosen. */
const charted = computed(() => chart.value?.settled?.pattern);

/** The work of the piece on the table; fresh as long as no bead of it was strung. */
export const work = computed((): Work | undefined => {
  const kept = piece.value.work;
  const pattern = charted.value;
  if (!kept) return pattern && beginWork(pattern);
  return pattern && untouched(kept) ? goneOver(kept, pattern) : kept;
});

/** The pattern that is worked: as it was when the first bead was strung. */
export const workPattern = computed((): Pattern | undefined => work.value?.pattern);

/** The chart, where it says something else than what is being worked. */
export const changedChart = computed((): Pattern | undefined => {
  const [now, begun] = [charted.value, work.value];
  return now && begun && !sameToHands(now, begun.pattern) ? now : undefined;
});

/** What is open: the table, or one of the two things that hands do. */
export const atWork = computed(() => (work.value ? piece.value.work?.open : undefined));

/** What is remembered of the panel at hand. */
export const progress = computed(
  (): PanelProgress | undefined => work.value && progressOf(work.value),
);

/** The lengths of the panel at hand, each as it is strung. */
export const plans = computed(() => {
  const now = work.value;
  return now ? plansOf(now.pattern, now.at.panel) : [];
});

const kept = new WeakMap<Pattern, ReturnType<typeof stringPlans>[]>();
function plansOf(pattern: Pattern, panel: number) {
  const known = kept.get(pattern) ?? [];
  kept.set(pattern, known);
  return (known[panel] ??= stringPlans(pattern, panel));
}

/** The marks of the panel at hand, in working order. */
export const marks = computed(() => {
  const now = work.value;
  return now ? lettersInWorkingOrder(now.pattern.panels[now.at.panel]) : '';
});

/** The length that is strung now, from 0: the one chosen, or the first with beads to string. */
const chosenLength = signal<{ at: PanelAt; length: number } | undefined>(undefined);
export const stringLength = computed(() => {
  const now = work.value;
  if (!now) return 0;
  const chosen = chosenLength.value;
  if (chosen && chosen.at.panel === now.at.panel && chosen.at.copy === now.at.copy)
    return Math.min(chosen.length, plans.value.length - 1);
  return lengthToString(now.pattern, now.at.panel, progressOf(now)) ?? plans.value.length - 1;
});

export function chooseLength(length: number): void {
  const now = work.peek();
  if (now) chosenLength.value = { at: now.at, length };
}

/** Beads on the thread of the length that is strung now. */
export const strung = computed(() => progress.value?.strung[stringLength.value] ?? 0);

/** Stitch of each bead of the length that is strung now, the first strung first. */
export const strungStitches = computed((): readonly number[] => {
  const plan = plans.value[stringLength.value];
  if (!plan) return [];
  return beadsOnThread(marks.value, plan.length)
    .map(({ stitch }) => stitch)
    .reverse();
});

/** What is really on the thread of each length, the bead that is worked first at the front. */
export const threads = computed(() => {
  const notes = progress.value?.notes ?? [];
  return plans.value.map(({ length }) => beadsOnThread(marks.value, length, notes));
});

/** The marks as they can be worked: bare where a bead is to be sewn on. */
export const workable = computed(() => workableMarks(marks.value, progress.value?.notes ?? []));

/** What help is open. */
export const helping = signal<'find' | 'check' | 'wrong' | 'note' | undefined>(undefined);

/** Changes what is remembered, without a step of the table's undo. */
export function markWork(recipe: (now: Work) => Work): void {
  const now = work.peek();
  if (now) pieces.mark((one) => ({ ...one, sample: false, work: recipe(now) }));
}

export function markProgress(part: Partial<PanelProgress>): void {
  markWork((now) => withProgress(now, part));
}

/** So many beads are on the thread of the length that is strung now. */
export function putStrung(beads: number): void {
  const { strung: before = [], checked = [], notes = [] } = progress.peek() ?? {};
  const { fromStitch = 0 } = plans.peek()[stringLength.peek()]?.length ?? {};
  const off = strungStitches.peek()[beads] ?? -1;
  const length = stringLength.peek();
  // Another length is shown only when the maker asks for it.
  chooseLength(length);
  markProgress({
    strung: putAt(before, length, beads),
    checked: putAt(checked, length, Math.min(beads, checked[length] ?? 0)),
    // What is off the thread again has no slips any more.
    notes: notes.flatMap((note) =>
      note.stitch >= fromStitch && note.stitch <= off ? withoutSlip(note) : [note],
    ),
    ...counted(),
  });
}

/** A note without what it says of a slip; nothing where that was all. */
export function withoutSlip({ sewOn: _sewOn, extra: _extra, ...note }: StitchNote): StitchNote[] {
  return note.text === '' ? [] : [note];
}

/** So many stitches of the panel at hand are worked. */
export function putWorked(worked: number): void {
  tapped.value = -1;
  jumpedFrom.value = undefined;
  markProgress({ worked, ...counted() });
}

/** The work goes on at another place; the one before is remembered. */
export function jumpTo(worked: number): void {
  const before = progress.peek()?.worked ?? 0;
  putWorked(worked);
  jumpedFrom.value = worked === before ? undefined : before;
}

/** Where the work stood before it went on elsewhere. */
export const jumpedFrom = signal<number | undefined>(undefined);

let lastTap = 0;
/** A pause of more than this is no work, milliseconds. */
const longestPauseMs = 120_000;

/** The time since the tap before, where time is counted. */
function counted(): Partial<PanelProgress> {
  const now = performance.now();
  const since = lastTap === 0 ? 0 : now - lastTap;
  lastTap = now;
  if (!work.peek()?.timed || since > longestPauseMs) return {};
  return { seconds: (progress.peek()?.seconds ?? 0) + since / 1000 };
}

/** The stitch of the panel that was tapped, from 0, or -1. */
export const tapped = signal(-1);

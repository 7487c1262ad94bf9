import { batch, computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { changesBetween, withChanges } from './patch.js';
import type { Change } from './patch.js';

/** One step that can be undone: what the maker did, and what it changed. */
export interface Done {
  /** For the eye and the ear: `move the picture`. */
  readonly name: string;
  readonly changes: readonly Change[];
}

/** A gesture under way: however often it changes the piece, it becomes one step. */
export interface Gesture<T> {
  change(recipe: (now: T) => T): void;
  /** Keeps it as one step; without changes none is kept. */
  end(): void;
  /** Takes back what it changed. */
  drop(): void;
}

/** What has been done to a value, and what of that was taken back. */
export interface Past {
  readonly done: readonly Done[];
  readonly undone: readonly Done[];
}

/** A value with its history, without end in both directions. */
export interface Kept<T> {
  readonly now: ReadonlySignal<T>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Counts steps, taken back ones too: for whoever saves after each. */
  readonly steps: ReadonlySignal<number>;
  /** Whether a gesture is under way. */
  readonly held: ReadonlySignal<boolean>;
  /** One step. */
  change(name: string, recipe: (now: T) => T): void;
  /** Changes it without a step: what hands have done away from the table is kept, and no undo touches it. */
  mark(recipe: (now: T) => T): void;
  /** Counts such changes: for whoever saves after each. */
  readonly marks: ReadonlySignal<number>;
  begin(name: string): Gesture<T>;
  /** The name of what was taken back, or done again. */
  undo(): string | undefined;
  redo(): string | undefined;
  /** Steps that can be undone, the oldest first, and those that can be done again, the next one last. */
  readonly past: ReadonlySignal<Past>;
  /** The gesture under way, as the step that it would become; undefined without one. */
  midway(): Done | undefined;
  /** Another piece, with its own history or none yet. */
  open(value: T, past?: Past): void;
}

export function keepHistory<T>(first: T): Kept<T> {
  const now = signal(first);
  const done = signal<readonly Done[]>([]);
  const undone = signal<readonly Done[]>([]);
  const steps = signal(0);
  const held = signal(false);
  const marks = signal(0);
  let under: { name: string; from: T } | undefined;

  function finish(): void {
    if (!under) return;
    const { name, from } = under;
    under = undefined;
    held.value = false;
    const changes = changesBetween(from, now.peek());
    if (changes.length === 0) return;
    done.value = [...done.peek(), { name, changes }];
    undone.value = [];
    steps.value++;
  }

  function begin(name: string): Gesture<T> {
    finish();
    const own = (under = { name, from: now.peek() });
    held.value = true;
    return {
      change(recipe) {
        if (under === own) now.value = recipe(now.peek());
      },
      end() {
        if (under === own) finish();
      },
      drop() {
        if (under !== own) return;
        now.value = own.from;
        under = undefined;
        held.value = false;
      },
    };
  }

  function go(from: typeof done, to: typeof done, way: 'before' | 'after'): string | undefined {
    finish();
    const step = from.peek().at(-1);
    if (!step) return undefined;
    from.value = from.peek().slice(0, -1);
    to.value = [...to.peek(), step];
    now.value = withChanges(now.peek(), step.changes, way);
    steps.value++;
    return step.name;
  }

  return {
    now,
    steps,
    held,
    canUndo: computed(() => done.value.length > 0),
    canRedo: computed(() => undone.value.length > 0),
    change(name, recipe) {
      const gesture = begin(name);
      gesture.change(recipe);
      gesture.end();
    },
    mark(recipe) {
      finish();
      batch(() => {
        now.value = recipe(now.peek());
        marks.value++;
      });
    },
    marks,
    begin,
    undo: () => go(done, undone, 'before'),
    redo: () => go(undone, done, 'after'),
    midway() {
      const changes = under ? changesBetween(under.from, now.peek()) : [];
      return under && changes.length > 0 ? { name: under.name, changes } : undefined;
    },
    past: computed(() => ({ done: done.value, undone: undone.value })),
    open(value, past) {
      under = undefined;
      batch(() => {
        held.value = false;
        done.value = past?.done ?? [];
        undone.value = past?.undone ?? [];
        now.value = value;
      });
    },
  };
}

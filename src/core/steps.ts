/** Where a long job stands; `bound` is what a choice cannot fall below, as far as it is known. */
export interface Stage {
  /** What is being done. */
  readonly stage: 'panel' | 'picture' | 'colours' | 'beads' | 'proof' | 'finish' | 'pattern';
  /** Of a proof: below this no choice can come. */
  readonly bound?: number;
}

/**
 * A long job in small steps: each `next()` works for some milliseconds and says where it stands; it
 * can be dropped at any time. How far a step goes is counted in work, never in time, so that the
 * result is the same whoever runs it.
 */
export type Steps<T> = Generator<Stage, T, void>;

/** Runs a job to its end. */
export function drain<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

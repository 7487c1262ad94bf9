/** Some equal marks in a row: a letter, `.` for bare or `_` for undecided. */
export interface Run {
  readonly letter: string;
  readonly count: number;
}

/** Cuts marks into runs of equal ones: `AAB` gives 2 A, 1 B. */
export function runsOf(marks: string): Run[] {
  const runs: { letter: string; count: number }[] = [];
  for (const letter of marks) {
    const last = runs.at(-1);
    if (last?.letter === letter) last.count++;
    else runs.push({ letter, count: 1 });
  }
  return runs;
}

/** The marks that runs stand for. */
export function expandRuns(runs: readonly Run[]): string {
  return runs.map(({ letter, count }) => letter.repeat(count)).join('');
}

/** Cuts the marks of round r into its wedges, r marks each. */
export function wedgesOf(marks: string, r: number): string[] {
  const wedges: string[] = [];
  for (let i = 0; i < marks.length; i += r) wedges.push(marks.slice(i, i + r));
  return wedges;
}

/** Equal neighbours told once: [x, x, y] gives x twice, y once. */
export function folded<T>(items: readonly T[]): { item: T; times: number }[] {
  const out: { item: T; times: number }[] = [];
  for (const item of items) {
    const last = out.at(-1);
    if (last?.item === item) last.times++;
    else out.push({ item, times: 1 });
  }
  return out;
}

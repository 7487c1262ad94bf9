/** One place in a tree of plain data that changed; undefined: it was, or is, not there. */
export interface Change {
  readonly path: readonly string[];
  readonly before: unknown;
  readonly after: unknown;
}

/** Parts of a piece that are replaced, never changed inside: nothing looks into them. */
const wholes: ReadonlySet<string> = new Set([
  'picture',
  'backPicture',
  'opened',
  'palette',
  'minded',
]);

/** What changed between two trees; parts that are the same object are not looked into. */
export function changesBetween(before: unknown, after: unknown, path: string[] = []): Change[] {
  if (Object.is(before, after)) return [];
  const whole = path.length === 1 && wholes.has(path[0]);
  if (whole || !isPlain(before) || !isPlain(after)) return [{ path, before, after }];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) => changesBetween(before[key], after[key], [...path, key]));
}

/** The tree with every change taken back, or made again. */
export function withChanges<T>(tree: T, changes: readonly Change[], way: 'before' | 'after'): T {
  return changes.reduce((one, change) => withOne(one, change.path, change[way]) as T, tree);
}

function withOne(tree: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value;
  const next = { ...(tree as Record<string, unknown>) };
  const put = withOne(next[key], rest, value);
  if (put === undefined) delete next[key];
  else next[key] = put;
  return next;
}

function isPlain(value: unknown): value is Record<string, unknown> {
  return (
    typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype
  );
}

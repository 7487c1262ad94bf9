import type { Steps } from './steps.js';

/**
 * The same function, which remembers its last answer: asked again with arguments that are alike, it
 * gives the very same object. Whoever gets it must not write into it.
 */
export function remembered<A extends readonly unknown[], T>(
  make: (...from: A) => T,
): (...from: A) => T {
  let last: { from: A; made: T } | undefined;
  return (...from) => {
    if (!last || !alike(last.from, from)) last = { from, made: make(...from) };
    return last.made;
  };
}

/**
 * The same, which remembers one answer for each first argument, an object, as long as that lives.
 */
export function rememberedFor<K extends object, A extends readonly unknown[], T>(
  make: (key: K, ...from: A) => T,
): (key: K, ...from: A) => T {
  const kept = new WeakMap<K, { from: A; made: T }>();
  return (key, ...from) => {
    let last = kept.get(key);
    if (!last || !alike(last.from, from)) {
      kept.set(key, (last = { from, made: make(key, ...from) }));
    }
    return last.made;
  };
}

/**
 * The same for a job in steps. A job that was dropped half-way goes on where it stood when it is
 * asked for again with arguments that are alike.
 */
export function rememberedSteps<A extends readonly unknown[], T>(
  make: (...from: A) => Steps<T>,
): (...from: A) => Steps<T> {
  let last: { from: A; run: Steps<T>; made?: { value: T } } | undefined;
  return function* (...from) {
    if (!last || !alike(last.from, from)) last = { from, run: make(...from) };
    const own = last;
    while (!own.made) {
      try {
        const step = own.run.next();
        if (step.done) own.made = { value: step.value };
        else yield step.value;
      } catch (error) {
        if (last === own) last = undefined;
        throw error;
      }
    }
    return own.made.value;
  };
}

/**
 * Whether two values say the same: plain records and lists by what is in them, everything else
 * (pixels, functions, numbers, text) by being the very same.
 */
export function alike(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (Array.isArray(one)) {
    if (!Array.isArray(other) || one.length !== other.length) return false;
    return one.every((value, n) => alike(value, other[n]));
  }
  if (!isPlain(one) || !isPlain(other)) return false;
  const keys = Object.keys(one);
  if (keys.length !== Object.keys(other).length) return false;
  return keys.every((key) => key in other && alike(one[key], other[key]));
}

function isPlain(value: unknown): value is Record<string, unknown> {
  return (
    typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype
  );
}

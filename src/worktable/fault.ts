import { signal } from '@preact/signals';
import { RondureError } from '../core/errors.js';
import type { Language } from '../words/pages/languages.js';
import { loadFaults } from '../words/worktable/faults/load.js';
import { language } from './words.js';

/** How errors of the core are said, in the language in which one was last said. */
const known = signal<{ of: Language; say: (error: RondureError) => string } | undefined>(undefined);
let asked: { of: Language; done: Promise<void> } | undefined;

function fetchWords(of: Language): Promise<void> {
  if (asked?.of === of) return asked.done;
  const fetched = async () => {
    const [say, { faultSentence }] = await Promise.all([
      loadFaults[of](),
      import('./fault-sentences.js'),
    ]);
    known.value = { of, say: (error) => faultSentence(say, error) ?? error.message };
  };
  const done = fetched().catch(() => {
    // Without a line to fetch them by, the core's own words must do; the next error asks again.
    asked = undefined;
  });
  asked = { of, done };
  return done;
}

/** An error's sentence in the language of the page; in English while its words are fetched. */
export function saidNow(error: unknown): string {
  if (!(error instanceof RondureError)) return error instanceof Error ? error.message : `${error}`;
  const { value } = known;
  if (value?.of === language.value) return value.say(error);
  void fetchWords(language.value);
  return error.message;
}

/** Hands on an error's sentence in the language of the page: at once, or when its words are there. */
export function whenSaid(error: unknown, take: (sentence: string) => void): void {
  const of = language.peek();
  if (!(error instanceof RondureError) || known.peek()?.of === of) take(saidNow(error));
  else void fetchWords(of).then(() => take(saidNow(error)));
}

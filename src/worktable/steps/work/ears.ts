import { effect, signal } from '@preact/signals';
import { language, words } from '../../words.js';

/** What there is of the Web Speech API in some browsers. */
interface Ears extends EventTarget {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  processLocally?: boolean;
  start(): void;
  abort(): void;
}
type Heard = Event & {
  readonly resultIndex: number;
  readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }>>;
};

const make = () => {
  const there = globalThis as unknown as Record<string, (new () => Ears) | undefined>;
  return there.SpeechRecognition ?? there.webkitSpeechRecognition;
};

export const canListen = () => make() !== undefined;
/** Whether the page listens. */
export const listening = signal(false);
/** Why it stopped, where it did so by itself. */
export const deaf = signal(false);

/** Listens for the words for on and back as long as `listening` is on; ends with what is returned. */
export function startEars(does: { next(): void; back(): void }): () => void {
  let ears: Ears | undefined;
  const stop = effect(() => {
    const on = listening.value;
    void language.value;
    ears?.abort();
    ears = undefined;
    const Make = make();
    if (!on || !Make) return;
    deaf.value = false;
    const now = (ears = new Make());
    now.lang = language.peek();
    now.continuous = true;
    now.interimResults = false;
    // Where the device itself can listen, nothing that is said leaves it.
    if ('processLocally' in now) now.processLocally = true;
    now.addEventListener('result', (event) => {
      const { results, resultIndex } = event as Heard;
      const heard = results[resultIndex]?.[0]?.transcript.toLowerCase() ?? '';
      const { next, back } = words.peek().work.heard;
      const says = (some: readonly string[]) => some.some((word) => heard.includes(word));
      if (says(back)) does.back();
      else if (says(next)) does.next();
    });
    now.addEventListener('error', (event) => {
      const { error } = event as Event & { error?: string };
      if (error === 'no-speech' || error === 'aborted') return;
      deaf.value = true;
      listening.value = false;
    });
    // It ends by itself after a silence: it goes on as long as it is wanted.
    now.addEventListener('end', () => ears === now && listening.peek() && now.start());
    now.start();
  });
  return () => {
    stop();
    ears?.abort();
    ears = undefined;
  };
}

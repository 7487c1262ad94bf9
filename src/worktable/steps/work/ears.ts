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
interface MakeEars {
  new (): Ears;
  available?(of: { langs: string[]; processLocally: boolean }): Promise<string>;
}
type Heard = Event & {
  readonly resultIndex: number;
  readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }>>;
};

const make = () => {
  const there = globalThis as unknown as Record<string, MakeEars | undefined>;
  return there.SpeechRecognition ?? there.webkitSpeechRecognition;
};

export const canListen = () => make() !== undefined;
/** Whether the page listens. */
export const listening = signal(false);
/** Why it stopped, where it did so by itself. */
export const deaf = signal(false);

/** A browser that ends at once each time is not asked again faster than this. */
const pauseMs = 300;

/** Listens for the words for on and back as long as `listening` is on and the page is seen; ends with what is returned. */
export function startEars(does: { next(): void; back(): void }): () => void {
  const hidden = signal(document.hidden);
  const look = () => (hidden.value = document.hidden);
  document.addEventListener('visibilitychange', look);
  let ears: Ears | undefined;
  const stop = effect(() => {
    const on = listening.value && !hidden.value;
    const lang = language.value;
    const before = ears;
    ears = undefined;
    before?.abort();
    const Make = make();
    if (!on || !Make) return;
    deaf.value = false;
    const now = (ears = new Make());
    const start = () => ears === now && now.start();
    now.lang = lang;
    now.continuous = true;
    now.interimResults = false;
    now.addEventListener('result', (event) => {
      const { results, resultIndex } = event as Heard;
      for (let n = resultIndex; n < results.length; n++) {
        const way = wordIn(results[n][0]?.transcript ?? '');
        if (way) does[way]();
      }
    });
    now.addEventListener('error', (event) => {
      const { error } = event as Event & { error?: string };
      if (error === 'no-speech' || error === 'aborted') return;
      deaf.value = true;
      listening.value = false;
    });
    // It ends by itself after a silence: it goes on as long as it is wanted.
    now.addEventListener('end', () => ears === now && setTimeout(start, pauseMs));
    // Where the device itself can listen, nothing that is said leaves it.
    void canLocally(Make, lang).then((locally) => {
      if (locally) now.processLocally = true;
      start();
    });
  });
  return () => {
    stop();
    document.removeEventListener('visibilitychange', look);
    const last = ears;
    ears = undefined;
    last?.abort();
  };
}

async function canLocally(Make: MakeEars, lang: string): Promise<boolean> {
  try {
    return (await Make.available?.({ langs: [lang], processLocally: true })) === 'available';
  } catch {
    return false;
  }
}

/** Words that one may say to the page; a longer sentence is meant for somebody else. */
const mostWords = 3;

/** Which way a short utterance leads. */
function wordIn(transcript: string): 'next' | 'back' | undefined {
  const heard = transcript.toLowerCase().trim();
  const spoken: readonly string[] = heard.match(/[\p{L}\p{M}’']+/gu) ?? [];
  const { next, back } = words.peek().work.heard;
  // Japanese and Chinese set no spaces.
  const says = (word: string) =>
    /[\p{Script=Han}\p{Script=Hiragana}]/u.test(word)
      ? heard.length <= 4 * mostWords && heard.includes(word)
      : spoken.length <= mostWords && spoken.includes(word);
  if (back.some(says)) return 'back';
  return next.some(says) ? 'next' : undefined;
}

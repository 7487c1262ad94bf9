// Stand-ins for what few test browsers have, to be put into a page before it starts. They follow the interfaces
// of the standards, from memory: Screen Wake Lock API (W3C), Web Speech API (W3C, formerly WICG) and Page
// Visibility (HTML, 6.2). What they were asked lies in `globalThis.senses`.

export interface Senses {
  /** Each wake lock that was asked for: whether it is held. */
  locks: { type: string; released: boolean }[];
  /** Requests for one that were refused. */
  refused: number;
  spoken: { text: string; lang: string; voice: string | undefined }[];
  cancelled: number;
  ears: { lang: string; processLocally: boolean | undefined; on: boolean }[];
}

/** How the stand-ins behave. */
export interface SensesWish {
  /** Whether a wake lock is refused, as by a battery that is nearly empty. */
  readonly refuseLock?: boolean;
  /** How long a wake lock takes to be granted. */
  readonly lockMs?: number;
  readonly without?: readonly ('wakeLock' | 'speech' | 'recognition')[];
  readonly voices?: readonly { lang: string; name: string; localService: boolean }[];
  /** What `SpeechRecognition.available` says of listening on the device; undefined: it is not there. */
  readonly locally?: string;
  /** The error with which listening ends as soon as it is begun. */
  readonly deafBy?: string;
}

export function putSenses(wish: SensesWish): void {
  const senses: Senses = { locks: [], refused: 0, spoken: [], cancelled: 0, ears: [] };
  const own = globalThis as unknown as Record<string, unknown>;
  own.senses = senses;
  const define = (of: object, name: string, value: unknown) =>
    Object.defineProperty(of, name, { value, configurable: true, writable: true });
  const takeAway = (of: object, name: string) => {
    for (let at: object | null = of; at; at = Object.getPrototypeOf(at) as object | null)
      delete (at as Record<string, unknown>)[name];
  };

  // Page Visibility: `hide(true)` is what a phone does when another app comes to the front.
  let hidden = false;
  Object.defineProperty(document, 'hidden', { get: () => hidden });
  Object.defineProperty(document, 'visibilityState', {
    get: () => (hidden ? 'hidden' : 'visible'),
  });
  const held = new Set<Sentinel>();
  own.hide = (now: boolean) => {
    hidden = now;
    // "Handling document loss of visibility": every lock of the document is released.
    if (hidden) for (const one of [...held]) one.letGo();
    document.dispatchEvent(new Event('visibilitychange', { bubbles: true }));
  };

  class Sentinel extends EventTarget {
    readonly type = 'screen';
    private readonly noted = { type: 'screen', released: false };
    constructor() {
      super();
      senses.locks.push(this.noted);
      held.add(this);
    }
    get released() {
      return this.noted.released;
    }
    letGo() {
      if (this.noted.released) return;
      this.noted.released = true;
      held.delete(this);
      this.dispatchEvent(new Event('release'));
    }
    async release() {
      await Promise.resolve();
      this.letGo();
    }
  }
  if (wish.without?.includes('wakeLock')) takeAway(navigator, 'wakeLock');
  else
    define(navigator, 'wakeLock', {
      async request(type: string) {
        await new Promise((done) => setTimeout(done, wish.lockMs ?? 20));
        if (type !== 'screen') throw new TypeError(type);
        if (hidden || wish.refuseLock) {
          senses.refused++;
          throw new DOMException('', 'NotAllowedError');
        }
        return new Sentinel();
      },
    });

  // Speech synthesis.
  class Utterance extends EventTarget {
    lang = '';
    voice: { name: string } | null = null;
    rate = 1;
    pitch = 1;
    volume = 1;
    constructor(public text = '') {
      super();
    }
  }
  const ended = (one: Utterance, error: string) =>
    one.dispatchEvent(Object.assign(new Event('error'), { error }));
  let saying: Utterance | undefined;
  const synthesis = Object.assign(new EventTarget(), {
    pending: false,
    paused: false,
    get speaking() {
      return saying !== undefined;
    },
    getVoices: () => wish.voices ?? [],
    pause() {},
    resume() {},
    cancel() {
      senses.cancelled++;
      const one = saying;
      saying = undefined;
      if (one) ended(one, 'canceled');
    },
    speak(one: Utterance) {
      const { text, lang, voice } = one;
      senses.spoken.push({ text, lang, voice: voice?.name });
      saying = one;
      if (wish.voices === undefined) setTimeout(() => ended(one, 'synthesis-unavailable'));
    },
  });
  if (wish.without?.includes('speech')) {
    takeAway(globalThis, 'speechSynthesis');
    takeAway(globalThis, 'SpeechSynthesisUtterance');
  } else {
    define(globalThis, 'speechSynthesis', synthesis);
    define(globalThis, 'SpeechSynthesisUtterance', Utterance);
  }

  // Speech recognition.
  const begun = new Set<Recognition>();
  class Recognition extends EventTarget {
    static available = wish.locally === undefined ? undefined : () => Promise.resolve(wish.locally);
    lang = '';
    continuous = false;
    interimResults = false;
    maxAlternatives = 1;
    processLocally = false;
    private noted: Senses['ears'][number] | undefined;
    start() {
      if (this.noted?.on) throw new DOMException('', 'InvalidStateError');
      const { lang, processLocally } = this;
      senses.ears.push((this.noted = { lang, processLocally, on: true }));
      begun.add(this);
      if (wish.deafBy) setTimeout(() => this.fail(wish.deafBy!));
    }
    private fail(error: string) {
      this.dispatchEvent(Object.assign(new Event('error'), { error }));
      this.end();
    }
    end() {
      if (!this.noted?.on) return;
      this.noted.on = false;
      setTimeout(() => this.dispatchEvent(new Event('end')));
    }
    stop() {
      this.end();
    }
    abort() {
      if (this.noted?.on) this.fail('aborted');
    }
  }
  takeAway(globalThis, 'SpeechRecognition');
  takeAway(globalThis, 'webkitSpeechRecognition');
  if (!wish.without?.includes('recognition')) define(globalThis, 'SpeechRecognition', Recognition);
  /** Somebody says something; earlier results stay in the list, as the standard has it. */
  const results: { transcript: string }[][] = [];
  own.say = (transcript: string) => {
    results.push([{ transcript }]);
    [...begun]
      .at(-1)
      ?.dispatchEvent(
        Object.assign(new Event('result'), { resultIndex: results.length - 1, results }),
      );
  };
  /** A silence ends it. */
  own.silence = () => [...begun].at(-1)?.end();
}

import { signal } from '@preact/signals';
import { language } from '../../words.js';

/** Whether steps are read aloud. */
export const aloud = signal(false);
/** Whether there is no voice for the page's language. */
export const voiceless = signal(false);

/** Whether the browser can read aloud. */
export const canSpeak = () => typeof speechSynthesis !== 'undefined';

/** The step at hand: by what it is known, and what is said of it. */
let now = { key: '', sentence: '' };
/** Kept until it is spoken: some browsers forget one that nobody holds. */
let spoken: SpeechSynthesisUtterance | undefined;

/** Reads a step aloud, once, and breaks off the one before. */
export function speakUp(key: string, sentence: string): void {
  if (key === now.key) return;
  now = { key, sentence };
  utter();
}

/** Begins with the step at hand, or breaks off. */
export function turnVoice(on: boolean): void {
  aloud.value = on;
  voiceless.value = false;
  if (on) utter();
  else hush();
}

/** Breaks off; what comes next is new. */
export function endVoice(): void {
  now = { key: '', sentence: '' };
  hush();
}

function hush(): void {
  spoken = undefined;
  if (canSpeak()) speechSynthesis.cancel();
}

function utter(): void {
  if (!aloud.peek() || !canSpeak()) return;
  hush();
  if (now.sentence === '') return;
  const voices = speechSynthesis.getVoices();
  const voice = voiceFor(language.peek(), voices);
  // Where the list is empty it may only be late: the language alone finds a voice then.
  voiceless.value = voices.length > 0 && !voice;
  if (voiceless.peek()) return;
  const said = (spoken = new SpeechSynthesisUtterance(now.sentence));
  said.lang = voice?.lang ?? language.peek();
  if (voice) said.voice = voice;
  said.rate = 0.9;
  said.addEventListener('error', ({ error }) => {
    const why = /^(.*-unavailable|synthesis-failed|network|not-allowed)$/;
    if (said === spoken && why.test(error)) voiceless.value = true;
  });
  speechSynthesis.speak(said);
}

/** A voice of the language: of the same country and on the device first, so that it speaks without a network, too. */
function voiceFor(
  wanted: string,
  voices: readonly SpeechSynthesisVoice[],
): SpeechSynthesisVoice | undefined {
  const { language: tongue, region } = new Intl.Locale(wanted).maximize();
  // Some devices write de_DE.
  const tags = (voice: SpeechSynthesisVoice) => voice.lang.toLowerCase().split(/[-_]/);
  const score = (voice: SpeechSynthesisVoice) =>
    (voice.localService ? 2 : 0) + (tags(voice).includes(region?.toLowerCase() ?? '') ? 1 : 0);
  return voices
    .filter((voice) => tags(voice)[0] === tongue)
    .reduce<SpeechSynthesisVoice | undefined>(
      (best, one) => (best && score(best) >= score(one) ? best : one),
      undefined,
    );
}

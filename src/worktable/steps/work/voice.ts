import { signal } from '@preact/signals';
import { language } from '../../words.js';

/** Whether steps are read aloud. */
export const aloud = signal(false);

/** Whether the browser can read aloud. */
export const canSpeak = () => typeof speechSynthesis !== 'undefined';

let last = '';

/** Reads a sentence in the page's language, and breaks off the one before. */
export function speakUp(sentence: string): void {
  if (!aloud.peek() || !canSpeak() || sentence === last) return;
  last = sentence;
  speechSynthesis.cancel();
  const spoken = new SpeechSynthesisUtterance(sentence);
  spoken.lang = language.peek();
  spoken.rate = 0.9;
  speechSynthesis.speak(spoken);
}

export function turnVoice(on: boolean): void {
  aloud.value = on;
  last = '';
  if (!on && canSpeak()) speechSynthesis.cancel();
}

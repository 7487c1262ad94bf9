import { computed, signal } from '@preact/signals';
import { english } from '../words/worktable/english/index.js';
import type { WorktableWords } from '../words/worktable/index.js';
import { loadWorktable } from '../words/worktable/load.js';
import { languages } from '../words/pages/languages.js';
import type { Language } from '../words/pages/languages.js';

/** The language of the page. */
export const language = signal<Language>('en-GB');
/** Its words; English until they are there. */
export const words = signal<WorktableWords>(english);

/** Languages that the page can be in. */
export const spoken = languages;

/** The page in another language. */
export async function speak(wanted: Language): Promise<void> {
  words.value = await loadWorktable[wanted]();
  language.value = wanted;
  document.documentElement.lang = wanted;
}

const key = 'rondure-language';

/** The page in a language that the reader chose: it stays so in this browser. */
export async function speakFromNowOn(wanted: Language): Promise<void> {
  try {
    localStorage.setItem(key, wanted);
  } catch {
    // a browser that keeps nothing: it holds until the page is closed
  }
  await speak(wanted);
}

/** The language that the reader chose before, else the first of the device's that the page speaks. */
export function firstLanguage(wishes: readonly string[]): Language {
  try {
    const kept = localStorage.getItem(key);
    return spoken.find((one) => one === kept) ?? wantedLanguage(wishes);
  } catch {
    return wantedLanguage(wishes);
  }
}

/** The first of the reader's languages that the page speaks. */
export function wantedLanguage(wishes: readonly string[]): Language {
  for (const wish of wishes) {
    const found =
      spoken.find((one) => one.toLowerCase() === wish.toLowerCase()) ??
      spoken.find((one) => one.slice(0, 2) === wish.slice(0, 2).toLowerCase());
    if (found) return found;
  }
  return 'en-GB';
}

const numbers = computed(() => new Intl.NumberFormat(language.value, { maximumFractionDigits: 1 }));
const hundredths = computed(
  () => new Intl.NumberFormat(language.value, { maximumFractionDigits: 2 }),
);
/** A number as the reader writes it, with one decimal at most. */
export const figure = (value: number): string => numbers.value.format(value);
/** A number as the reader writes it, with two decimals at most. */
export const fineFigure = (value: number): string => hundredths.value.format(value);

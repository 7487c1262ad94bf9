import type { Language } from '../pages/languages.js';
import { numbersIn } from '../pages/numbers.js';
import type { Forms } from '../pages/numbers.js';

/** The form of a word that goes with a number which is written out already: 1,470. */
export function formIn(language: Language): (written: string, forms: Forms) => string {
  const { form } = numbersIn(language);
  return (written, forms) => form(Number(written.replace(/\D/gu, '')), forms);
}

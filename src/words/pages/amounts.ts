import type { Language } from './languages.js';
import { numbersIn } from './numbers.js';

/** Amounts to have, rounded up as one buys them. */
export interface Amounts {
  /** 82.8, and 10,920 where tenths no longer matter. */
  readonly tenths: (value: number) => string;
  /** Of millimetres: whole metres, with tenths under 10. */
  readonly metres: (mm: number) => string;
  /** Of millimetres: whole centimetres. */
  readonly cm: (mm: number) => string;
}

/** Signs of units differ in Cyrillic only (SI Brochure, and GOST 8.417 for the Cyrillic ones, from memory). */
const cyrillic: readonly Language[] = ['ru', 'uk'];

/** How a language writes amounts of thread, braid and the like. */
export function amountsIn(language: Language): Amounts {
  const { count, fixed, short } = numbersIn(language);
  const [m, cm] = cyrillic.includes(language) ? ['м', 'см'] : ['m', 'cm'];
  return {
    tenths: (value) => (value < 1000 ? fixed(value, 1) : count(Math.round(value))),
    metres: (mm) =>
      mm < 10_000
        ? `${short(Math.ceil(mm / 100 - 1e-6) / 10, 1)} ${m}`
        : `${count(Math.ceil(mm / 1000 - 1e-9))} ${m}`,
    cm: (mm) => `${Math.ceil(mm / 10 - 1e-6)} ${cm}`,
  };
}

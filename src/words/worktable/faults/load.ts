import type { Language } from '../../pages/languages.js';
import type { FaultWords } from './english.js';

const english = async (): Promise<FaultWords> => (await import('./english.js')).english;

/** Each language in a file of its own, fetched when something first goes wrong. */
export const loadFaults: Readonly<Record<Language, () => Promise<FaultWords>>> = {
  'en-GB': english,
  'en-US': english,
  cs: async () => (await import('./cs.js')).cs,
  de: async () => (await import('./de.js')).de,
  fr: async () => (await import('./fr.js')).fr,
  es: async () => (await import('./es.js')).es,
  it: async () => (await import('./it.js')).it,
  pl: async () => (await import('./pl.js')).pl,
  ru: async () => (await import('./ru.js')).ru,
  uk: async () => (await import('./uk.js')).uk,
  tr: async () => (await import('./tr.js')).tr,
  ja: async () => (await import('./ja.js')).ja,
  zh: async () => (await import('./zh.js')).zh,
};

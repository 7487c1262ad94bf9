import type { Language } from '../pages/languages.js';
import type { WorktableWords } from './index.js';

const english = async (): Promise<WorktableWords> => (await import('./english/index.js')).english;

/** Each language in files of its own: only the one that is asked for is fetched. */
export const loadWorktable: Readonly<Record<Language, () => Promise<WorktableWords>>> = {
  'en-GB': english,
  'en-US': english,
  cs: async () => (await import('./cs/index.js')).cs,
  de: async () => (await import('./de/index.js')).de,
  fr: async () => (await import('./fr/index.js')).fr,
  es: async () => (await import('./es/index.js')).es,
  it: async () => (await import('./it/index.js')).it,
  pl: async () => (await import('./pl/index.js')).pl,
  ru: async () => (await import('./ru/index.js')).ru,
  uk: async () => (await import('./uk/index.js')).uk,
  tr: async () => (await import('./tr/index.js')).tr,
  ja: async () => (await import('./ja/index.js')).ja,
  zh: async () => (await import('./zh/index.js')).zh,
};

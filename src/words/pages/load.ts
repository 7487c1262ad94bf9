import type { PageWords } from './index.js';
import type { Language } from './languages.js';

/** Each language in files of its own: only those that are asked for are read. */
export const loadPages: Readonly<Record<Language, () => Promise<PageWords>>> = {
  'en-GB': () => english('ukEnglish'),
  'en-US': () => english('usEnglish'),
  cs: async () => (await import('./cs/index.js')).cs,
  de: async () => (await import('./de/index.js')).de,
  fr: async () => (await import('./fr/index.js')).fr,
  pl: async () => (await import('./pl/index.js')).pl,
  ru: async () => (await import('./ru/index.js')).ru,
  uk: async () => (await import('./uk/index.js')).uk,
  es: async () => (await import('./es/index.js')).es,
  it: async () => (await import('./it/index.js')).it,
  tr: async () => (await import('./tr/index.js')).tr,
  ja: async () => (await import('./ja/index.js')).ja,
  zh: async () => (await import('./zh/index.js')).zh,
};

async function english(which: 'ukEnglish' | 'usEnglish'): Promise<PageWords> {
  const [{ englishPages }, spelling] = await Promise.all([
    import('./english/index.js'),
    import('./english/spelling.js'),
  ]);
  const pages = englishPages(spelling[which]);
  if (which === 'ukEnglish') return pages;
  return (await import('./inches-first.js')).inchesFirst(pages);
}

/** A language that pages can be in (BCP 47). */
export type Language =
  'en-GB' | 'en-US' | 'cs' | 'de' | 'fr' | 'es' | 'it' | 'pl' | 'ru' | 'uk' | 'tr' | 'ja' | 'zh';

/** Each by its own name, in the order in which they are offered. */
export const languageNames: Readonly<Record<Language, string>> = {
  'en-GB': 'English (UK terms)',
  'en-US': 'English (US terms)',
  cs: 'Čeština',
  de: 'Deutsch',
  fr: 'Français',
  es: 'Español',
  it: 'Italiano',
  pl: 'Polski',
  ru: 'Русский',
  uk: 'Українська',
  tr: 'Türkçe',
  ja: '日本語',
  zh: '简体中文',
};

/** In the order in which they are offered. */
export const languages = Object.keys(languageNames) as readonly Language[];

/** The typed message catalogue: every word a person reads. One folder a language. */
export { en } from './en/index.js';
export type { Words } from './en/index.js';
export { languageNames, languages } from './pages/languages.js';
export type { Language } from './pages/languages.js';
export type { PageWords } from './pages/index.js';

import { englishPages } from '../pages/english/index.js';
import { bothEnglish } from '../pages/english/spelling.js';

/** What stands on pages, for the command line's language. */
export const pages = englishPages(bothEnglish);

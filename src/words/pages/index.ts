import type { englishPages } from './english/index.js';

type English = ReturnType<typeof englishPages>;
/**
 * Every word that stands on the pages of a booklet, a section a file: what a language must say to
 * be offered. One that lacks a word does not compile.
 */
export interface PageWords extends English {}

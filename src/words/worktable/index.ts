import type { english } from './english/index.js';

type English = typeof english;
/**
 * Every word of the page: what a language must say to be offered there, a file a step as in
 * `english/`. One that lacks a word does not compile.
 */
export interface WorktableWords extends English {}

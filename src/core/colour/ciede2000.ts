/** The colour difference that everything here is measured in, twice: as published, and quick. */
export { ciede2000 } from './ciede2000-textbook.js';
export { ciede2000Fast } from './ciede2000-fast.js';

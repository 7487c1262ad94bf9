/** The names that the program gives to panels, which stand in a sentence like any other word. */
const own = new Set(['Vorderteil', 'Rückteil']);

/** A name that a maker has chosen stays as it is, in quotes. */
const noun = (name: string, ending = ''): string =>
  own.has(name) ? `${name}${ending}` : `Teil${ending} „${name}“`;

/** `das Vorderteil`, `das Teil „Möwe“`. */
export const accusative = (name: string): string => `das ${noun(name)}`;
/** `des Vorderteils`, `des Teils „Möwe“`. */
export const genitive = (name: string): string => `des ${noun(name, 's')}`;
/** `dem Vorderteil`. */
export const dative = (name: string): string => `dem ${noun(name)}`;
/** `vom Vorderteil`. */
export const from = (name: string): string => `vom ${noun(name)}`;
/** `im Vorderteil`. */
export const inThe = (name: string): string => `im ${noun(name)}`;
/** With a capital, at the start of a sentence. */
export const upper = (text: string): string => text[0].toUpperCase() + text.slice(1);

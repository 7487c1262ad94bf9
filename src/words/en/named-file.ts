/** A file as it stands in a sentence. */
export const named = (name: string) => (name === '-' ? 'the standard input' : name);
/** The same at the beginning of one. */
export const Named = (name: string) => (name === '-' ? 'The standard input' : name);

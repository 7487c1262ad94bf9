// Sentences that commands share with the errors, apart so that whoever wants errors alone carries no more.

/** What can differ between a list and its pattern. */
const unlikeWords: Record<string, string> = {
  wedges: 'number of wedges',
  rounds: 'number of rounds',
  beadsFace: 'way the beads lie',
};

/** A list of rounds that is of another pattern. */
export const unlikeList = (f: { what: string; list: string | number; pattern: string | number }) =>
  `The list is not one of that pattern: its ${unlikeWords[f.what] ?? f.what} is ${f.list}, the pattern’s ${f.pattern}. Leave out --like, or give the pattern that the list was printed from.`;

/** All letters are taken. */
export const noLetterFree = (f: { most: number }) =>
  `A pattern has at most ${f.most} bead colours, and this one has them all: merge two of them first (--merge).`;

/** A panel, or a length of thread, that is not there. */
export const noPanel = (f: { got: string; panels: readonly string[] }) =>
  `The pattern has no panel “${f.got}”: it has ${f.panels.join(' and ')}.`;
export const noLength = (f: { got: number; lengths: number }) =>
  `There is no length ${f.got}: this panel has ${f.lengths === 1 ? 'one length' : `lengths 1 to ${f.lengths}`}.`;

/** Letters name bead colours: no I and no O, which are misread as 1 and 0. */
export const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';
/** A stitch without a bead. */
export const bareMark = '.';
/** A stitch not decided yet, on a blank chart. */
export const undecidedMark = '_';

/** Whether a mark is the letter of a bead, and not bare or undecided. */
export const isBead = (mark: string): boolean => mark !== bareMark && mark !== undecidedMark;

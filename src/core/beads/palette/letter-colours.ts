/**
 * A colour for each letter of a pattern whose beads are not known, in the order of the letters:
 * from a grid of 64 sRGB colours, each the one farthest by CIEDE2000 from all before it.
 */
export const letterColours: readonly string[] = [
  '#e8e8e8 #101058 #585810 #e81010 #e810e8 #10a0a0 #10e810 #e8a010',
  '#581010 #1058e8 #a0a0e8 #105858 #e8a0a0 #101010 #e8e810 #10a0e8',
  '#10a058 #a01058 #a0a058 #a05810 #a0e8e8 #585858 #a0a0a0 #a05858',
].flatMap((row) => row.split(' '));

/** @param place 0-based place of the letter among the letters */
export function colourOfLetter(place: number): string {
  return letterColours[place];
}

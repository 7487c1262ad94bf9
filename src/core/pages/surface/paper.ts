/** ISO 216 sheets, upright, millimetres, smallest first. */
export const papers = [
  { name: 'A4', widthMm: 210, heightMm: 297 },
  { name: 'A3', widthMm: 297, heightMm: 420 },
  { name: 'A2', widthMm: 420, heightMm: 594 },
  { name: 'A1', widthMm: 594, heightMm: 841 },
  { name: 'A0', widthMm: 841, heightMm: 1189 },
] as const;

export type Paper = (typeof papers)[number];

/** Unprinted border that every desk printer can keep. */
export const marginMm = 8;

/** The smallest sheet that is good enough, or the largest there is. */
export function smallestPaper(goodEnough: (paper: Paper) => boolean): Paper {
  return papers.find(goodEnough) ?? papers[papers.length - 1];
}

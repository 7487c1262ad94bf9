/** Paper that a template can be printed on: A4 or Letter. */
export type PrintPaper = 'a4' | 'letter';

/** Paper that desk printers take: ISO 216 A4 and Letter, 8.5 × 11 inches; millimetres. */
export const printPapers = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const satisfies Record<PrintPaper, { widthMm: number; heightMm: number }>;

/** What both papers have room for inside every printer's border (millimetres). */
export const safeArea = { widthMm: 190, heightMm: 254 } as const;

/** Part of a page: edges in millimetres from its top left corner. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The safe area of a sheet, in its middle. */
export function safeAreaOf(page: { widthMm: number; heightMm: number }): Area {
  const left = (page.widthMm - safeArea.widthMm) / 2;
  const top = (page.heightMm - safeArea.heightMm) / 2;
  return { left, top, right: page.widthMm - left, bottom: page.heightMm - top };
}

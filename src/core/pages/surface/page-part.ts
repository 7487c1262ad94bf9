import type { Area } from './print-sheet.js';
import type { Surface } from './surface.js';

/**
 * What a part of a page is, for whoever has the page read aloud: the heading of a sheet, one below
 * it, a paragraph, or an item of a list.
 */
interface TextPart {
  readonly as: 'title' | 'head' | 'text' | 'step';
}

/** A picture, and what is said in its place. */
interface PicturePart {
  readonly as: 'picture';
  readonly alt: string;
}

/** A part of a page; parts stand in the order in which they are read. */
export type PagePart = (TextPart | PicturePart) & {
  /** Only what lies in it shows, where there is one. */
  readonly window?: Area;
  draw(surface: Surface): void;
};

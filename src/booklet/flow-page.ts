import type { Surface } from '../core/pages/surface/surface.js';
import type { Photo } from './facts.js';
import type { StructureNode } from './structure.js';

/** A page that can show a photograph and part of a drawing through a window; edges in millimetres. */
export interface PageSurface extends Surface {
  clipped(
    window: { left: number; top: number; right: number; bottom: number },
    draw: () => void,
  ): void;
  photo(photo: Photo, box: { left: number; top: number; widthMm: number; heightMm: number }): void;
}

export type Draw = (surface: PageSurface) => void;

/** Something on a page, and the part of the document that it belongs to; none for ornament. */
export interface Drawn {
  readonly draw: Draw;
  readonly node: StructureNode | undefined;
}

/** A name in the list of contents, below the name of a group where it has one. */
export interface Bookmark {
  readonly name: string;
  readonly group?: string | undefined;
}

/** A page laid out, not yet drawn: how many there are is known at the end only. */
export interface FlowPage {
  /** The part it belongs to, and the panel and length, for its foot. */
  where: string;
  /** Parts that begin here. */
  readonly bookmarks: Bookmark[];
  /** Whether a rule stands over its foot; a drawing that fills the page has none. */
  readonly ruled: boolean;
  readonly drawn: Drawn[];
  /** How far down something stands on it, millimetres. */
  reachMm: number;
  /** Where what stands below its title begins, millimetres. */
  topMm: number;
}

/** Something that stays whole and is put wherever it finds room. */
export interface Block {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Of that, what stands over its picture: pictures in a row begin at one height. */
  readonly overMm: number;
  /** Steps of one thing: they stay in one row where a row holds them. */
  readonly group: string;
  /** The same with the question again that it goes on to answer, where it begins none itself. */
  readonly again?: () => Block;
  /** The same with its head set so wide, where it has one: a row may have room for it. */
  readonly withHead?: (wideMm: number) => Block;
  /** The same with its words set so wide, where they stand below its picture. */
  readonly wider?: (wideMm: number) => Block;
  /** Puts it on a page with its top left corner there. */
  put(page: FlowPage, left: number, top: number): void;
}

/** What begins a part. */
export interface PartStart {
  readonly heading: string;
  readonly where: string;
  readonly bookmark?: Bookmark;
  /** What to call it for `pageOf`. */
  readonly mark?: string;
  /** It goes on on the page of the part before it where this much room is left; else on its own. */
  readonly besideMm?: number;
}

/** Something drawn among the words, and what stands for it when it is read aloud. */
export interface Figure {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly alt: string;
  draw(surface: Surface, left: number, top: number): void;
}

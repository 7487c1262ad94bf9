import type { Curve } from './curve.js';
import type { Glyph } from './font.js';

/** x, y pairs in millimetres from the page's top left corner, y down. */
export type Polyline = ArrayLike<number>;

export interface Stroke {
  /** Colour as #rrggbb. */
  readonly stroke: string;
  readonly widthMm: number;
  /** Join the last point to the first. */
  readonly closed?: boolean;
  /** Lengths of dash and gap, millimetres; an unbroken line when left out. */
  readonly dashMm?: readonly [number, number];
}

export interface Fill {
  /** Colour as #rrggbb. */
  readonly fill: string;
  /** Line around it, drawn over the fill. */
  readonly outline?: Stroke;
}

/** Glyph outlines set at one size and in one colour. */
export interface GlyphRun {
  /** What a reader who cannot see the outlines should be told. */
  readonly title: string;
  /** Millimetres an em. */
  readonly sizeMm: number;
  /** Colour as #rrggbb. */
  readonly ink: string;
  /** Origin (left end of the baseline) of each glyph, millimetres. */
  readonly glyphs: readonly { readonly glyph: Glyph; readonly x: number; readonly y: number }[];
}

/**
 * What a drawing is made on: a page measured in millimetres, origin at the top left, y down.
 * SVG and PDF implement it; canvas can. Line ends and joins are round.
 */
export interface Surface {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Fills closed rings together, non-zero rule. */
  fillPath(rings: readonly Polyline[], paint: Fill): void;
  strokePath(lines: readonly Polyline[], paint: Stroke): void;
  /** A closed curve whose arcs stay arcs; `name` names it in the drawing. */
  strokeCurve(name: string, curve: Curve, paint: Stroke): void;
  circle(x: number, y: number, radius: number, paint: Fill): void;
  glyphs(run: GlyphRun): void;
  /** Opens a named part of the drawing; `title` is for readers. */
  beginGroup(name: string, title?: string): void;
  endGroup(): void;
}

import type { Fill, GlyphRun, Polyline, Surface } from '../surface/surface.js';
import type { HandDrawing, HandFacts } from './facts.js';
import { drawHand } from './draw.js';

/** Blank left above and below the lines, millimetres. */
const blankMm = 0.6;

/** Where the pictures of a drawing begin and end, all of them together: millimetres from its top. */
export function inkBox(drawing: HandDrawing, facts: HandFacts): { top: number; bottom: number } {
  const seen = new Extent();
  drawing.frames.forEach((_, frame) => drawHand(seen, drawing, facts, frame));
  return {
    top: Math.max(0, seen.top - blankMm),
    bottom: Math.min(drawing.heightMm, seen.bottom + blankMm),
  };
}

/** Draws nothing and keeps how high and how low things reach. */
class Extent implements Surface {
  readonly widthMm = 0;
  readonly heightMm = 0;
  top = Infinity;
  bottom = -Infinity;

  fillPath(rings: readonly Polyline[], _fill?: Fill): void {
    for (const ring of rings) for (let n = 1; n < ring.length; n += 2) this.see(ring[n]);
  }

  strokePath(lines: readonly Polyline[]): void {
    this.fillPath(lines);
  }

  strokeCurve(): void {
    throw new Error('no drawing of the handwork has curves');
  }

  circle(_x: number, y: number, radius: number): void {
    this.see(y - radius);
    this.see(y + radius);
  }

  glyphs({ sizeMm, glyphs }: GlyphRun): void {
    for (const { glyph, y } of glyphs) {
      this.see(y - glyph.box.top * sizeMm);
      this.see(y - glyph.box.bottom * sizeMm);
    }
  }

  beginGroup(): void {}
  endGroup(): void {}

  private see(y: number): void {
    this.top = Math.min(this.top, y);
    this.bottom = Math.max(this.bottom, y);
  }
}

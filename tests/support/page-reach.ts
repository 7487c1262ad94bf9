import type { PageSurface } from '../../src/booklet/flow-page.js';
import type { GlyphRun, Polyline } from '../../src/core/pages/surface/surface.js';

/** Takes what is drawn on one page and keeps its texts, and how high and how low it reaches. */
export class PageReach implements PageSurface {
  /** Millimetres from the top; Infinity and 0 where nothing is drawn. */
  top = Infinity;
  bottom = 0;
  readonly texts: string[] = [];
  private window = { top: 0, bottom: Infinity };

  constructor(
    readonly widthMm: number,
    readonly heightMm: number,
  ) {}

  fillPath(rings: readonly Polyline[]): void {
    for (const ring of rings) for (let n = 1; n < ring.length; n += 2) this.see(ring[n]);
  }

  strokePath(lines: readonly Polyline[]): void {
    this.fillPath(lines);
  }

  strokeCurve(): void {}

  circle(_x: number, y: number, radius: number): void {
    this.see(y - radius);
    this.see(y + radius);
  }

  glyphs({ title, sizeMm, glyphs }: GlyphRun): void {
    if (glyphs.length > 0) this.texts.push(title);
    for (const { glyph, y } of glyphs) {
      this.see(y + glyph.box.top * sizeMm);
      this.see(y + glyph.box.bottom * sizeMm);
    }
  }

  clipped(window: { top: number; bottom: number }, draw: () => void): void {
    const before = this.window;
    this.window = window;
    draw();
    this.window = before;
  }

  photo(_photo: unknown, { top, heightMm }: { top: number; heightMm: number }): void {
    this.see(top);
    this.see(top + heightMm);
  }

  beginGroup(): void {}
  endGroup(): void {}

  private see(y: number): void {
    const seen = Math.min(this.window.bottom, Math.max(this.window.top, y));
    this.top = Math.min(this.top, seen);
    this.bottom = Math.max(this.bottom, seen);
  }
}

import type { Photo } from '../../booklet/facts.js';
import type { PageSurface } from '../../booklet/flow-page.js';
import type { Curve } from '../../core/pages/surface/curve.js';
import type { Glyph } from '../../core/pages/surface/font.js';
import type { Fill, GlyphRun, Polyline, Stroke } from '../../core/pages/surface/surface.js';

type Context = OffscreenCanvasRenderingContext2D;

/** Outlines of letters, an em wide, by their ids. */
const outlines = new Map<string, Path2D>();

/** A page as pixels: the same routines draw on it as on paper. Lengths in millimetres from its top left corner. */
export class CanvasSurface implements PageSurface {
  readonly canvas: OffscreenCanvas;
  private readonly context: Context;

  constructor(
    readonly widthMm: number,
    readonly heightMm: number,
    widthPx: number,
    /** What a colour is shown as. */
    private readonly shown: (hex: string) => string = (hex) => hex,
    /** Photographs that the pages show, decoded. */
    private readonly photos: ReadonlyMap<Photo, ImageBitmap> = new Map(),
  ) {
    const scale = widthPx / widthMm;
    this.canvas = new OffscreenCanvas(widthPx, Math.max(1, Math.round(heightMm * scale)));
    this.context = this.canvas.getContext('2d')!;
    this.context.fillStyle = '#ffffff';
    this.context.fillRect(0, 0, this.canvas.width, this.canvas.height);
    this.context.scale(scale, scale);
    this.context.lineCap = 'round';
    this.context.lineJoin = 'round';
    this.context.imageSmoothingQuality = 'high';
  }

  fillPath(rings: readonly Polyline[], paint: Fill): void {
    if (rings.length === 0) return;
    this.context.beginPath();
    for (const ring of rings) this.trace(ring, true);
    this.paint(paint);
  }

  strokePath(lines: readonly Polyline[], paint: Stroke): void {
    if (lines.length === 0) return;
    this.context.beginPath();
    for (const line of lines) this.trace(line, paint.closed ?? false);
    this.stroke(paint);
  }

  strokeCurve(_name: string, { start, pieces }: Curve, paint: Stroke): void {
    this.context.beginPath();
    this.context.moveTo(...start);
    let from = start;
    for (const { to, arc } of pieces) {
      if (arc) {
        const [x, y] = arc.centre;
        const begin = Math.atan2(from[1] - y, from[0] - x);
        this.context.arc(x, y, arc.radiusMm, begin, begin + arc.sweep, arc.sweep < 0);
      } else this.context.lineTo(...to);
      from = to;
    }
    this.context.closePath();
    this.stroke(paint);
  }

  circle(x: number, y: number, radius: number, paint: Fill): void {
    this.context.beginPath();
    this.context.arc(x, y, radius, 0, 2 * Math.PI);
    this.paint(paint);
  }

  glyphs({ sizeMm, ink, glyphs }: GlyphRun): void {
    this.context.fillStyle = this.shown(ink);
    for (const { glyph, x, y } of glyphs) {
      this.context.save();
      this.context.translate(x, y);
      this.context.scale(sizeMm, sizeMm);
      this.context.fill(outlineOf(glyph));
      this.context.restore();
    }
  }

  clipped(
    window: { left: number; top: number; right: number; bottom: number },
    draw: () => void,
  ): void {
    const { left, top, right, bottom } = window;
    this.context.save();
    this.context.beginPath();
    this.context.rect(left, top, right - left, bottom - top);
    this.context.clip();
    draw();
    this.context.restore();
  }

  photo(photo: Photo, box: { left: number; top: number; widthMm: number; heightMm: number }): void {
    const bitmap = this.photos.get(photo);
    if (bitmap) this.context.drawImage(bitmap, box.left, box.top, box.widthMm, box.heightMm);
  }

  beginGroup(): void {}
  endGroup(): void {}

  /** The page as it stands. */
  async png(): Promise<Uint8Array> {
    const blob = await this.canvas.convertToBlob({ type: 'image/png' });
    return new Uint8Array(await blob.arrayBuffer());
  }

  private trace(line: Polyline, closed: boolean): void {
    this.context.moveTo(line[0], line[1]);
    for (let p = 2; p < line.length; p += 2) this.context.lineTo(line[p], line[p + 1]);
    if (closed) this.context.closePath();
  }

  private paint({ fill, outline }: Fill): void {
    this.context.fillStyle = this.shown(fill);
    this.context.fill('nonzero');
    if (outline) this.stroke(outline);
  }

  private stroke({ stroke, widthMm, dashMm }: Stroke): void {
    this.context.strokeStyle = this.shown(stroke);
    this.context.lineWidth = widthMm;
    this.context.setLineDash(dashMm ? [...dashMm] : []);
    this.context.stroke();
  }
}

function outlineOf({ id, outline }: Glyph): Path2D {
  let path = outlines.get(id);
  if (!path) {
    path = new Path2D(outline.map(({ command, args }) => command + args.join(' ')).join(''));
    outlines.set(id, path);
  }
  return path;
}

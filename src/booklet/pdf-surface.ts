import { remembered } from '../core/remember.js';
import { arcEnds } from '../core/pages/surface/curve.js';
import type { Curve } from '../core/pages/surface/curve.js';
import type { Photo } from './facts.js';
import type { PageSurface } from './flow-page.js';
import { PdfContent, pt } from './pdf-content.js';
import type { Fill, GlyphRun, Polyline, Stroke } from '../core/pages/surface/surface.js';

/** A Bézier curve stands for an arc of at most this angle: it strays by 1e-8 of the radius. */
const longestArc = Math.PI / 12;
/**
 * A circle of radius 1 about the origin from 3 o'clock on: its start, and then two control points and
 * the end of each eighth, which strays by 4e-6 of the radius.
 */
const unitCircle = remembered(() =>
  Array.from({ length: 25 }, (_, n) => {
    const eighth = Math.PI / 4;
    const angle = eighth * Math.round(n / 3);
    const k = (4 / 3) * Math.tan(eighth / 4) * [0, 1, -1][n % 3];
    return [Math.cos(angle) - k * Math.sin(angle), Math.sin(angle) + k * Math.cos(angle)] as const;
  }),
);
/** Letters further than this from where running text would put them are set one by one. */
const sameplaceMm = 0.01;

/** One page of a PDF: lengths in millimetres from its top left corner, letters as real text. */
export class PdfSurface implements PageSurface {
  /** What is drawn and not yet handed to the writer. */
  readonly content: PdfContent;

  constructor(
    private readonly doc: PDFKit.PDFDocument,
    /** Makes a font of the document the current one. */
    private readonly useFont: (file: string) => void,
    readonly widthMm: number,
    readonly heightMm: number,
    /** What a colour is printed as. */
    private readonly printed: (hex: string) => string = (hex) => hex,
  ) {
    this.content = new PdfContent(doc);
  }

  fillPath(rings: readonly Polyline[], { fill, outline }: Fill): void {
    if (rings.length === 0) return;
    for (const ring of rings) this.trace(ring, true);
    this.paint(fill, outline);
  }

  strokePath(lines: readonly Polyline[], paint: Stroke): void {
    if (lines.length === 0) return;
    for (const line of lines) this.trace(line, paint.closed ?? false);
    this.stroke(paint);
  }

  strokeCurve(_name: string, { start, pieces }: Curve, paint: Stroke): void {
    this.content.add(`${pt(start[0])} ${pt(start[1])} m`);
    let from = start;
    for (const { to, arc } of pieces) {
      if (arc) {
        const ends = arcEnds(arc, to, longestArc);
        for (const end of ends) {
          this.arcStep(from, end, arc.centre, arc.sweep / ends.length);
          from = end;
        }
      } else this.content.add(`${pt(to[0])} ${pt(to[1])} l`);
      from = to;
    }
    this.content.add('h');
    this.stroke(paint);
  }

  circle(x: number, y: number, radius: number, { fill, outline }: Fill): void {
    const at = unitCircle().map(([cx, cy]) => `${pt(x + radius * cx)} ${pt(y + radius * cy)}`);
    let path = `${at[0]} m`;
    for (let n = 1; n < at.length; n += 3) path += ` ${at[n]} ${at[n + 1]} ${at[n + 2]} c`;
    this.content.add(`${path} h`);
    this.paint(fill, outline);
  }

  glyphs({ title, sizeMm, ink, glyphs }: GlyphRun): void {
    if (glyphs.length === 0) return;
    this.content.fillColour(this.printed(ink));
    for (const piece of ofOneFont(title.normalize('NFC').trimStart(), glyphs)) {
      const [first] = piece.glyphs;
      this.useFont(first.glyph.file);
      if (this.runsOn(piece, sizeMm)) this.text(piece.text, sizeMm, first.x, first.y, ink);
      else
        for (const { glyph, x, y } of piece.glyphs) this.text(glyph.character, sizeMm, x, y, ink);
    }
  }

  /** Draws what shows only inside a window; its edges in millimetres. */
  clipped(
    window: { left: number; top: number; right: number; bottom: number },
    draw: () => void,
  ): void {
    const { left, top, right, bottom } = window;
    this.content.save();
    const size = `${pt(right - left)} ${pt(bottom - top)}`;
    this.content.add(`${pt(left)} ${pt(top)} ${size} re W n`);
    draw();
    this.content.restore();
  }

  photo(
    { jpeg }: Photo,
    {
      left,
      top,
      widthMm,
      heightMm,
    }: { left: number; top: number; widthMm: number; heightMm: number },
  ): void {
    const size = { width: pt(widthMm), height: pt(heightMm) };
    this.content.flush();
    this.doc.image(jpeg as Buffer, pt(left), pt(top), size);
  }

  beginGroup(): void {}
  endGroup(): void {}

  /** Whether a text set in one go puts every letter where the run has it. */
  private runsOn({ text, glyphs }: Piece, sizeMm: number): boolean {
    let n = 0;
    let { x } = glyphs[0];
    for (const character of text) {
      const given = glyphs[n];
      if (given?.glyph.character === character) {
        if (Math.abs(given.x - x) >= sameplaceMm || given.y !== glyphs[0].y) return false;
        x += given.glyph.advance * sizeMm;
        n++;
      } else if (character.trim() !== '') return false;
      else x += this.content.advance(character) * sizeMm;
    }
    return n === glyphs.length;
  }

  private text(text: string, sizeMm: number, x: number, y: number, ink: string): void {
    if (!marks.test(text)) return this.content.letters(text, sizeMm, x, y);
    // The writer sets marks over the letters that they belong to.
    this.content.flush();
    this.doc.fillColor(this.printed(ink)).fontSize(pt(sizeMm));
    this.doc.text(text, pt(x), pt(y), { lineBreak: false, baseline: 'alphabetic' });
    this.content.forget();
    this.content.fillColour(this.printed(ink));
  }

  private trace(line: Polyline, closed: boolean): void {
    let path = `${pt(line[0])} ${pt(line[1])} m`;
    for (let p = 2; p < line.length; p += 2) path += ` ${pt(line[p])} ${pt(line[p + 1])} l`;
    this.content.add(closed ? `${path} h` : path);
  }

  /** One Bézier piece whose middle lies on the circle as well. */
  private arcStep(
    from: readonly [number, number],
    to: readonly [number, number],
    [cx, cy]: readonly [number, number],
    sweep: number,
  ): void {
    const k = (4 / 3) * Math.tan(sweep / 4);
    const first = `${pt(from[0] - k * (from[1] - cy))} ${pt(from[1] + k * (from[0] - cx))}`;
    const second = `${pt(to[0] + k * (to[1] - cy))} ${pt(to[1] - k * (to[0] - cx))}`;
    this.content.add(`${first} ${second} ${pt(to[0])} ${pt(to[1])} c`);
  }

  private paint(fill: string, outline: Stroke | undefined): void {
    this.content.fillColour(this.printed(fill));
    if (outline) this.prepare(outline);
    this.content.add(outline ? 'B' : 'f');
  }

  private stroke(paint: Stroke): void {
    this.prepare(paint);
    this.content.add('S');
  }

  private prepare({ stroke, widthMm, dashMm }: Stroke): void {
    this.content.line(widthMm, dashMm);
    this.content.strokeColour(this.printed(stroke));
  }
}

/** Marks that stand over or under the letter before them. */
const marks = /\p{M}/u;

/** Part of a run whose glyphs are of one font; its text has the spaces that no glyph stands for. */
interface Piece {
  readonly text: string;
  readonly glyphs: GlyphRun['glyphs'];
}

/** A space at the end of a text parts it from the next line. */
const spaceOf = (rest: readonly string[]): string => (rest.join('') === ' ' ? ' ' : '');

/** Fonts that surely have a space. */
const spacedFonts = ['regular', 'bold', 'regular-text', 'bold-text'];

/** A run in pieces of one font each; only the main fonts set the spaces within them. */
function ofOneFont(text: string, glyphs: GlyphRun['glyphs']): Piece[] {
  const pieces: { text: string; glyphs: GlyphRun['glyphs'][number][] }[] = [];
  const characters = Array.from(text);
  let at = 0;
  for (const given of glyphs) {
    let here = '';
    while (at < characters.length && characters[at] !== given.glyph.character)
      here += characters[at++];
    const last = pieces.at(-1);
    const same = last?.glyphs[0].glyph.file === given.glyph.file;
    if (last && same && (here === '' || spacedFonts.includes(given.glyph.file))) {
      last.text += here + given.glyph.character;
      last.glyphs.push(given);
    } else pieces.push({ text: given.glyph.character, glyphs: [given] });
    at++;
  }
  const last = pieces.at(-1);
  if (last && spacedFonts.includes(last.glyphs[0].glyph.file))
    last.text += spaceOf(characters.slice(at));
  return pieces;
}

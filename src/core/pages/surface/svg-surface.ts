import { millionth } from '../../units.js';
import { arcEnds } from './curve.js';
import type { Curve } from './curve.js';
import type { Glyph } from './font.js';
import type { Fill, GlyphRun, Polyline, Stroke, Surface } from './surface.js';

export interface SvgOptions {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Height of one sheet of paper, where several stand below each other on the drawing. */
  readonly pageHeightMm?: number;
  readonly title: string;
  readonly description: string;
}

/**
 * A page as SVG text. Sizes are millimetres, so it prints at its true size; letters are outlines,
 * one path for each glyph and size, used again by reference, so no font is needed to see them.
 */
export class SvgSurface implements Surface {
  readonly widthMm: number;
  readonly heightMm: number;
  private readonly body: string[] = [];
  private readonly outlines = new Map<string, string>();
  private readonly sizes = new Map<number, number>();

  constructor(private readonly options: SvgOptions) {
    this.widthMm = options.widthMm;
    this.heightMm = options.heightMm;
  }

  fillPath(rings: readonly Polyline[], { fill, outline }: Fill): void {
    if (rings.length === 0) return;
    const d = rings.map((ring) => pathData(ring, true)).join('');
    this.body.push(`<path fill="${fill}"${strokeAttributes(outline)} d="${d}"/>`);
  }

  strokePath(lines: readonly Polyline[], paint: Stroke): void {
    if (lines.length === 0) return;
    const d = lines.map((line) => pathData(line, paint.closed ?? false)).join('');
    this.body.push(`<path fill="none"${strokeAttributes(paint)} d="${d}"/>`);
  }

  strokeCurve(name: string, curve: Curve, paint: Stroke): void {
    const d = curveData(curve);
    this.body.push(`<path id="${name}" fill="none"${strokeAttributes(paint)} d="${d}"/>`);
  }

  circle(x: number, y: number, radius: number, { fill, outline }: Fill): void {
    const place = `cx="${hundredths(x)}" cy="${hundredths(y)}" r="${hundredths(radius)}"`;
    this.body.push(`<circle fill="${fill}"${strokeAttributes(outline)} ${place}/>`);
  }

  glyphs({ title, sizeMm, ink, glyphs }: GlyphRun): void {
    if (glyphs.length === 0) return;
    const uses = glyphs.map(({ glyph, x, y }) => {
      const id = this.outlineId(glyph, sizeMm);
      return `<use href="#${id}" x="${hundredths(x)}" y="${hundredths(y)}"/>`;
    });
    this.body.push(`<g fill="${ink}"><title>${escapeXml(title)}</title>${uses.join('')}</g>`);
  }

  beginGroup(name: string, title?: string): void {
    this.body.push(
      `<g id="${name}">${title === undefined ? '' : `<title>${escapeXml(title)}</title>`}`,
    );
  }

  endGroup(): void {
    this.body.push('</g>');
  }

  /** The whole document. */
  toString(): string {
    const { widthMm: w, heightMm: h, title, description } = this.options;
    return [
      `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" role="img" aria-labelledby="title description">`,
      `<title id="title">${escapeXml(title)}</title>`,
      `<desc id="description">${escapeXml(description)}</desc>`,
      `<style>@page{size:${w}mm ${this.options.pageHeightMm ?? h}mm;margin:0}</style>`,
      `<defs>${[...this.outlines.values()].join('\n')}</defs>`,
      `<path fill="#ffffff" d="M0 0h${w}v${h}h-${w}z"/>`,
      '<g stroke-linecap="round" stroke-linejoin="round">',
      ...this.body,
      '</g>',
      '</svg>',
      '',
    ].join('\n');
  }

  private outlineId(glyph: Glyph, sizeMm: number): string {
    let size = this.sizes.get(sizeMm);
    if (size === undefined) this.sizes.set(sizeMm, (size = this.sizes.size));
    const id = `${glyph.id}-${size}`;
    if (!this.outlines.has(id)) {
      const d = glyph.outline
        .map(({ command, args }) => command + args.map((v) => thousandths(v * sizeMm)).join(' '))
        .join('');
      this.outlines.set(id, `<path id="${id}" d="${d}"/>`);
    }
    return id;
  }
}

function strokeAttributes(paint: Stroke | undefined): string {
  if (!paint) return '';
  const dashes = paint.dashMm ? ` stroke-dasharray="${paint.dashMm.join(' ')}"` : '';
  return ` stroke="${paint.stroke}" stroke-width="${thousandths(paint.widthMm)}"${dashes}`;
}

/** Arcs of half a turn at most, since SVG cannot tell a whole turn from none. */
function curveData({ start, pieces }: Curve): string {
  const at = (point: readonly [number, number]) => point.map(millionth).join(' ');
  let d = `M${at(start)}`;
  for (const { to, arc } of pieces) {
    if (!arc) {
      d += `L${at(to)}`;
      continue;
    }
    const radius = millionth(arc.radiusMm);
    for (const end of arcEnds(arc, to, Math.PI)) {
      d += `A${radius} ${radius} 0 0 ${arc.sweep > 0 ? 1 : 0} ${at(end)}`;
    }
  }
  return `${d}Z`;
}

/** Relative steps in whole hundredths of a millimetre, so that rounding never adds up. */
function pathData(line: Polyline, closed: boolean): string {
  let x = Math.round(line[0] * 100);
  let y = Math.round(line[1] * 100);
  let d = `M${x / 100} ${y / 100}l`;
  for (let p = 2; p < line.length; p += 2) {
    const nextX = Math.round(line[p] * 100);
    const nextY = Math.round(line[p + 1] * 100);
    if (p > 2) d += ' ';
    d += `${(nextX - x) / 100} ${(nextY - y) / 100}`;
    x = nextX;
    y = nextY;
  }
  return closed ? `${d}z` : d;
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

function thousandths(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}

/** Text made safe inside an XML element or attribute. */
export function escapeXml(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

/** Undoes `escapeXml`. */
export function unescapeXml(text: string): string {
  return text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');
}

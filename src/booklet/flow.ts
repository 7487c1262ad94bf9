import type { Surface } from '../core/draw/surface.js';
import { drawText } from '../core/draw/text.js';
import type { TextStyle } from '../core/draw/text.js';
import { flat, sides } from '../words/pages/pairs.js';
import { accent, lineMm, linesOf, readOn } from './look.js';
import type { Look } from './look.js';
import { StructureNode } from './structure.js';
import type { StructureType } from './structure.js';

/** A page that can show part of a drawing through a window; its edges in millimetres. */
export interface PageSurface extends Surface {
  clipped(
    window: { left: number; top: number; right: number; bottom: number },
    draw: () => void,
  ): void;
}

type Draw = (surface: PageSurface) => void;

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
  readonly where: string;
  /** Where a part begins here. */
  readonly bookmark?: Bookmark | undefined;
  /** Whether a rule stands over its foot; a drawing that fills the page has none. */
  readonly ruled: boolean;
  readonly drawn: Drawn[];
}

/** What begins on a new page. */
export interface PartStart {
  readonly heading: string;
  readonly where: string;
  readonly bookmark?: Bookmark;
}

const asPicture = (alt: string | undefined): [StructureType, { alt?: string }] =>
  alt === undefined ? ['P', {}] : ['Figure', { alt: flat(alt) }];

/** Room between two languages side by side. */
const sideGapMm = 8;

/**
 * Sets running text on one page after the other; a text in two languages stands in two columns.
 * `y` is where the next thing begins.
 */
export class Flow {
  readonly pages: FlowPage[] = [];
  readonly root = new StructureNode('Document');
  y = 0;
  private start: PartStart | undefined;
  /** The part of the document that is being set. */
  private current = this.root;

  constructor(
    readonly look: Look,
    /** BCP 47: the language of the document, and the one beside it. */
    readonly languages: readonly string[],
    private readonly continued: (heading: string) => string,
  ) {}

  get wide(): number {
    return this.look.right - this.look.left;
  }

  /** The part of the document that text and tables are set in. */
  get section(): StructureNode {
    return this.current;
  }

  /** A page that is drawn: a picture, where `alt` says of what, else words. */
  page(where: string, draw: Draw | undefined, bookmark?: string, alt?: string): void {
    if (bookmark !== undefined) this.current = this.root.add('Sect');
    this.pages.push({
      where,
      bookmark: bookmark === undefined ? undefined : { name: bookmark },
      ruled: false,
      drawn: draw ? [{ draw, node: this.section.add(...asPicture(alt)) }] : [],
    });
  }

  /** Begins a part on a page of its own. */
  part(start: PartStart): void {
    this.start = start;
    this.current = this.root.add('Sect');
    this.open(start.heading, start.bookmark ?? { name: start.heading });
  }

  /** Goes on with the same part on another page. */
  next(): void {
    this.open(this.continued(this.start!.heading), undefined);
  }

  /** Whether something of this height still fits on the page. */
  fits(heightMm: number): boolean {
    return this.y + heightMm <= this.look.bottom + 1e-6;
  }

  /** Something drawn on the page; ornament where it belongs to no part of the document. */
  draw(draw: Draw, node?: StructureNode): void {
    this.pages.at(-1)!.drawn.push({ draw, node });
  }

  /** Lines that lie ready, the first of them at `y`; no page is begun. */
  lines(lines: readonly string[], style: TextStyle, node?: StructureNode, left?: number): void {
    this.linesAt(lines, style, node, left ?? this.look.left);
    this.y += lines.length * lineMm(style);
  }

  /** Height of a text that `set` sets. */
  highOf(text: string, style: TextStyle): number {
    return Math.max(...this.columnsOf(text, style).map((lines) => lines.length)) * lineMm(style);
  }

  /** A text at `y`, its languages side by side; no page is begun. */
  set(text: string, style: TextStyle, type?: StructureType): void {
    const columns = this.columnsOf(text, style);
    const step = columns.length === 1 ? 0 : (this.wide + sideGapMm) / 2;
    // A heading in two languages is one heading.
    const heading = columns.length > 1 && (type === 'H1' || type === 'H2');
    const whole = heading ? this.section.add(type) : undefined;
    columns.forEach((lines, side) => {
      const language = columns.length === 1 ? undefined : this.languages[side];
      const node = whole
        ? whole.add('Span', { language })
        : type && this.section.add(type, { language });
      this.linesAt(lines, style, node, this.look.left + side * step);
    });
    this.y += Math.max(...columns.map((lines) => lines.length)) * lineMm(style);
  }

  /** A paragraph; it stays whole. `after` is the room below it, in lines. */
  paragraph(text: string, style = this.look.body, after = 0.5): void {
    if (!this.fits(this.highOf(text, style))) this.next();
    this.set(text, style, 'P');
    this.y += after * lineMm(style);
  }

  /** A heading and the height of what must stay with it, on one page. */
  subheading(text: string, withMm: number): void {
    const { subheading } = this.look;
    const high = this.highOf(text, subheading) + 1.2;
    if (!this.fits(1.5 + high + withMm)) this.next();
    else this.y += 1.5;
    this.set(text, subheading, 'H2');
    this.y += 1.2;
  }

  /** A heading with paragraphs or, set closer, things; it stays with the first of them. */
  titled(heading: string, paragraphs: readonly string[], after?: number): void {
    const [first = ''] = paragraphs;
    this.subheading(heading, this.highOf(first, this.look.body));
    for (const one of paragraphs) this.paragraph(one, undefined, after);
  }

  private columnsOf(text: string, style: TextStyle): string[][] {
    const texts = sides(text);
    const wide = texts.length === 1 ? this.wide : (this.wide - sideGapMm) / 2;
    return texts.map((one) => linesOf(one, style, wide));
  }

  private linesAt(
    lines: readonly string[],
    style: TextStyle,
    node: StructureNode | undefined,
    left: number,
  ): void {
    const [top, step] = [this.y, lineMm(style)];
    this.draw((surface) => {
      readOn(lines).forEach((line, n) =>
        drawText(surface, line, style, left, top + (n + 0.78) * step),
      );
    }, node);
  }

  private open(heading: string, bookmark: Bookmark | undefined): void {
    const { look } = this;
    this.pages.push({ where: this.start!.where, bookmark, ruled: true, drawn: [] });
    this.y = look.top;
    // Said again on later pages, it is ornament.
    this.set(heading, look.heading, bookmark && 'H1');
    const ruleY = this.y + 1.2;
    this.draw((surface) => {
      surface.strokePath([[look.left, ruleY, look.right, ruleY]], { stroke: accent, widthMm: 0.5 });
    });
    this.y += 5.5;
  }
}

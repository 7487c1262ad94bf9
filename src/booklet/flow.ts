import { drawText } from '../core/draw/text.js';
import type { TextStyle } from '../core/draw/text.js';
import { accent, lineMm, linesOf } from './look.js';
import type { Look } from './look.js';
import type { PdfSurface } from './pdf-surface.js';

type Draw = (surface: PdfSurface) => void;

/** A page laid out, not yet drawn: how many there are is known at the end only. */
export interface FlowPage {
  /** The part it belongs to, and the panel and length, for its foot. */
  readonly where: string;
  /** Its name in the list of contents, where a part begins here. */
  readonly bookmark?: string | undefined;
  /** Whether a rule stands over its foot; a drawing that fills the page has none. */
  readonly ruled: boolean;
  readonly draws: Draw[];
}

/** What begins on a new page. */
export interface PartStart {
  readonly heading: string;
  readonly where: string;
}

/** Sets running text on one page after the other. `y` is where the next thing begins. */
export class Flow {
  readonly pages: FlowPage[] = [];
  y = 0;
  private start: PartStart | undefined;

  constructor(
    readonly look: Look,
    private readonly continued: (heading: string) => string,
  ) {}

  get wide(): number {
    return this.look.right - this.look.left;
  }

  /** A page on which something else than running text stands. */
  page(where: string, draw: Draw, bookmark?: string): void {
    this.pages.push({ where, bookmark, ruled: false, draws: [draw] });
  }

  /** Begins a part on a page of its own. */
  part(start: PartStart): void {
    this.start = start;
    this.open(start.heading, start.heading);
  }

  /** Goes on with the same part on another page. */
  next(): void {
    const { heading } = this.start!;
    this.open(this.continued(heading), undefined);
  }

  /** Whether something of this height still fits on the page. */
  fits(heightMm: number): boolean {
    return this.y + heightMm <= this.look.bottom + 1e-6;
  }

  draw(draw: Draw): void {
    this.pages.at(-1)!.draws.push(draw);
  }

  /** Lines that lie ready, the first of them at `y`; no page is begun. */
  lines(lines: readonly string[], style: TextStyle, left = this.look.left): void {
    const [top, step] = [this.y, lineMm(style)];
    this.draw((surface) => {
      lines.forEach((line, n) => drawText(surface, line, style, left, top + (n + 0.78) * step));
    });
    this.y += lines.length * step;
  }

  /** A paragraph; it stays whole. `after` is the room below it, in lines. */
  paragraph(text: string, style = this.look.body, after = 0.5): void {
    const lines = linesOf(text, style, this.wide);
    if (!this.fits(lines.length * lineMm(style))) this.next();
    this.lines(lines, style);
    this.y += after * lineMm(style);
  }

  /** A heading and the height of what must stay with it, on one page. */
  subheading(text: string, withMm: number): void {
    const { subheading } = this.look;
    const lines = linesOf(text, subheading, this.wide);
    const high = lines.length * lineMm(subheading) + 1.2;
    if (!this.fits(1.5 + high + withMm)) this.next();
    else this.y += 1.5;
    this.lines(lines, subheading);
    this.y += 1.2;
  }

  /** A heading with paragraphs or, set closer, things; it stays with the first of them. */
  titled(heading: string, paragraphs: readonly string[], after?: number): void {
    const [first = ''] = paragraphs;
    const { body } = this.look;
    this.subheading(heading, linesOf(first, body, this.wide).length * lineMm(body));
    for (const one of paragraphs) this.paragraph(one, body, after);
  }

  private open(heading: string, bookmark: string | undefined): void {
    const { look } = this;
    this.pages.push({ where: this.start!.where, bookmark, ruled: true, draws: [] });
    this.y = look.top;
    this.lines(linesOf(heading, look.heading, this.wide), look.heading);
    const ruleY = this.y + 1.2;
    this.draw((surface) => {
      surface.strokePath([[look.left, ruleY, look.right, ruleY]], { stroke: accent, widthMm: 0.5 });
    });
    this.y += 5.5;
  }
}

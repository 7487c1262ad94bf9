import { drawText } from '../core/pages/surface/text.js';
import type { TextStyle } from '../core/pages/surface/text.js';
import { flat, sides } from '../words/pages/pairs.js';
import { lineMm, linesOf, readOn } from './look.js';
import type { Look } from './look.js';
import type { StructureNode } from './structure.js';
import type { StructureType } from './structure.js';
import { drawThreadRow } from './thread-row.js';
import type { Figure } from './flow-page.js';
import { PageFlow, belowTitleMm } from './page-flow.js';

/** Room between two languages, or two columns, side by side. */
export const sideGapMm = 8;
/** Room before the text of a thing of a list, where its dot stands. */
const itemIndentMm = 5;
/** So many lines of a paragraph stay together where it goes on on the next page. */
const leastTogether = 2;

/** Sets running text on one page after the other; a text in two languages stands in two columns. */
export class Flow extends PageFlow {
  /** Width that is kept free on the right for drawings beside the words, millimetres. */
  private sideMm = 0;
  /** How far to the right running text begins in a second column, millimetres. */
  private shiftMm = 0;

  constructor(
    look: Look,
    languages: readonly string[],
    continued: (heading: string) => string,
    /** Fills of the beads on the thread that grows below the titles of parts. */
    private readonly thread: readonly string[] = [],
  ) {
    super(look, languages, continued);
  }

  get wide(): number {
    return this.right - this.left;
  }

  /** Where headings begin. */
  get left(): number {
    return this.look.left + this.shiftMm;
  }

  /** Where running text begins: below its headings where drawings stand beside it. */
  get textLeft(): number {
    return this.sideMm + this.shiftMm > 0 ? this.left : this.look.textLeft;
  }

  /** Where it ends. */
  get right(): number {
    return this.look.right - this.sideMm;
  }

  /** Width of running text. */
  get textWide(): number {
    return this.right - this.textLeft;
  }

  /** Whether headings hang beside the text. */
  get hangs(): boolean {
    return this.textLeft > this.left;
  }

  /** Lines that lie ready, the first of them at `y`; no page is begun. */
  lines(lines: readonly string[], style: TextStyle, node?: StructureNode, left?: number): void {
    this.linesAt(readOn(lines), style, node, left ?? this.textLeft);
    this.y += lines.length * lineMm(style);
  }

  /** Height of a text that `set` sets. */
  override highOf(text: string, style: TextStyle, wide = this.wide): number {
    return Math.max(...this.columnsOf(text, style, wide).map((one) => one.length)) * lineMm(style);
  }

  /** A text at `y`, its languages side by side; no page is begun. */
  set(
    text: string,
    style: TextStyle,
    type?: StructureType,
    at: { left?: number; wide?: number; parent?: StructureNode } = {},
  ): void {
    const { left = this.left, parent = this.section } = at;
    const wide = at.wide ?? this.right - left;
    const columns = this.columnsOf(text, style, wide);
    const step = columns.length === 1 ? 0 : (wide + sideGapMm) / 2;
    // A heading in two languages is one heading.
    const heading = columns.length > 1 && (type === 'H1' || type === 'H2');
    const whole = heading ? parent.add(type) : undefined;
    columns.forEach((lines, side) => {
      const language = columns.length === 1 ? undefined : this.languages[side];
      const node = whole ? whole.add('Span', { language }) : type && parent.add(type, { language });
      this.linesAt(readOn(lines), style, node, left + side * step);
    });
    this.y += Math.max(...columns.map((lines) => lines.length)) * lineMm(style);
  }

  /**
   * A paragraph of running text. A long one goes on on the next page, some lines of it on each; two
   * languages side by side stay whole. `after` is the room below it, in lines.
   */
  paragraph(text: string, style = this.look.body, after = 0.35, left = this.textLeft): void {
    const step = lineMm(style);
    const [lines, ...other] = this.columnsOf(text, style, this.right - left);
    const room = Math.floor((this.bottom - this.y) / step + 1e-6);
    const here = Math.min(room, lines.length - leastTogether);
    if (lines.length <= room || other.length > 0 || here < leastTogether) {
      if (!this.fits(this.highOf(text, style, this.right - left))) this.next();
      this.set(text, style, 'P', { left });
    } else {
      const node = this.section.add('P');
      const spaced = readOn(lines);
      this.linesAt(spaced.slice(0, here), style, node, left);
      this.y += here * step;
      this.next();
      this.linesAt(spaced.slice(here), style, node, left);
      this.y += (lines.length - here) * step;
    }
    this.y += after * step;
  }

  /** What of a paragraph stays with what stands over it, millimetres. */
  private heldOf(text: string, style: TextStyle, wide: number): number {
    const [lines, ...other] = this.columnsOf(text, style, wide);
    const parts = other.length === 0 && lines.length >= 2 * leastTogether;
    return parts ? leastTogether * lineMm(style) : this.highOf(text, style, wide);
  }

  /** A heading over the whole width and the height of what must stay with it, on one page. */
  subheading(text: string, withMm: number): void {
    const { subheading } = this.look;
    const high = this.highOf(text, subheading) + 1.2;
    if (!this.fits(1.5 + high + withMm)) this.next();
    else this.y += 1.5;
    this.set(text, subheading, 'H2');
    this.y += 1.2;
  }

  /**
   * A heading with paragraphs; it stays with the first of them. The heading hangs beside them and
   * drawings stand below it, or everything stands below one another.
   */
  titled(
    heading: string,
    paragraphs: readonly string[],
    {
      after = 0.35,
      figures = [],
      list = false,
      keepMm = 0,
      style = this.look.body,
    }: {
      after?: number;
      style?: TextStyle;
      figures?: readonly Figure[];
      /** Whether they are things of a list. */
      list?: boolean;
      /** Room for what must follow on the same page. */
      keepMm?: number;
    } = {},
  ): void {
    const { look } = this;
    const set = () => {
      if (list) this.list(paragraphs, style);
      else for (const one of paragraphs) this.paragraph(one, style, after);
    };
    const textWide = this.textWide - (list ? itemIndentMm : 0);
    const textMm = (texts: readonly string[]) =>
      texts.reduce((sum, one) => sum + this.highOf(one, style, textWide), 0);
    const gapsMm = paragraphs.length * after * lineMm(style);
    const [first] = paragraphs;
    const firstMm =
      first === undefined || list
        ? textMm(paragraphs.slice(0, 1))
        : this.heldOf(first, style, textWide);
    const heldTextMm = keepMm > 0 ? textMm(paragraphs) + gapsMm : firstMm;
    const afterMm = keepMm > 0 ? keepMm + 3 : 0;
    const wide = this.textLeft - this.left - 4;
    if (wide <= 0 || (paragraphs.length === 0 && figures.length === 0)) {
      this.subheading(heading, Math.min(heldTextMm + afterMm, 0.9 * (this.bottom - look.top)));
      for (const one of figures) this.figure(one, look.left);
      set();
      return;
    }
    const headMm = this.highOf(heading, look.subheading, wide);
    const beside = figures.filter(({ widthMm }) => widthMm <= wide + 1e-6);
    const over = figures.filter((one) => !beside.includes(one));
    const leftMm = headMm + beside.reduce((sum, { heightMm }) => sum + heightMm + 2, 0);
    const overMm = over.reduce((sum, { heightMm }) => sum + heightMm + 3, 0);
    const held = Math.max(leftMm, overMm + heldTextMm) + afterMm;
    if (!this.fits(Math.min(held, 0.95 * (this.bottom - look.top)))) this.next();
    const top = this.y;
    this.set(heading, look.subheading, 'H2', { left: look.left, wide });
    this.y += 1;
    for (const one of beside) this.figure(one, look.left);
    const leftEnd = this.y;
    const page = this.pages.length;
    this.y = top;
    for (const one of over) this.figure(one, this.textLeft);
    set();
    if (this.pages.length === page) this.y = Math.max(this.y, leftEnd);
    this.y += 1.2;
  }

  /** Things one below the other, each with what is drawn before it. */
  list(items: readonly string[], style = this.look.body, left = this.textLeft): void {
    const list = this.section.add('L');
    const indent = itemIndentMm;
    for (const item of items) {
      const wide = this.right - left - indent;
      if (!this.fits(this.highOf(item, style, wide))) this.next();
      const node = list.add('LI');
      const middle = this.y + 0.52 * lineMm(style);
      this.draw((surface) => {
        surface.circle(left + 1.1, middle, 0.7, { fill: this.look.tint.accent });
      });
      const body = node.add('LBody');
      this.set(item, style, 'P', { left: left + indent, wide, parent: body });
      this.y += 0.12 * lineMm(style);
    }
    this.y += 1.5;
  }

  /**
   * Sets something in a column: so much is kept free on the right, and running text begins so far
   * to the right, millimetres.
   */
  inColumn(
    { keptMm = 0, shiftMm = 0 }: { keptMm?: number; shiftMm?: number },
    set: () => void,
  ): void {
    [this.sideMm, this.shiftMm] = [keptMm, shiftMm];
    set();
    [this.sideMm, this.shiftMm] = [0, 0];
  }

  /** A drawing at `y`, below which the next thing begins; a page is begun where it must be. */
  figure(one: Figure, left: number): void {
    if (!this.fits(one.heightMm)) this.next();
    const top = this.y;
    const node = this.section.add('Figure', { alt: flat(one.alt) });
    this.draw((surface) => one.draw(surface, left, top), node);
    this.y += one.heightMm + 2;
  }

  private columnsOf(text: string, style: TextStyle, whole: number): (readonly string[])[] {
    const texts = sides(text);
    const wide = texts.length === 1 ? whole : (whole - sideGapMm) / 2;
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
      lines.forEach((line, n) => drawText(surface, line, style, left, top + (n + 0.78) * step));
    }, node);
  }

  /** A title over its thread; said again on later pages, it is ornament. */
  protected override title(heading: string, first: boolean): void {
    const { look } = this;
    const style = first ? look.heading : { ...look.subheading, ink: look.heading.ink! };
    this.set(heading, style, first ? 'H1' : undefined);
    const y = this.y + (first ? 2 : 1.2);
    const page = this.pages.length;
    this.draw((surface) => {
      const { left, right } = look;
      if (!first) {
        surface.strokePath([[left, y, right, y]], { stroke: look.tint.rule, widthMm: 0.3 });
        return;
      }
      const share = page / this.pages.length;
      const beads = this.thread.slice(0, Math.ceil(share * this.thread.length));
      drawThreadRow(surface, beads, { left, right, y });
    });
    this.y += first ? belowTitleMm : 3;
  }
}

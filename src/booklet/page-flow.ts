import type { TextStyle } from '../core/pages/surface/text.js';
import { flat } from '../words/pages/pairs.js';
import type { Bookmark, Draw, FlowPage, PartStart } from './flow-page.js';
import type { Look } from './look.js';
import { StructureNode } from './structure.js';
import type { StructureType } from './structure.js';

const asPicture = (alt: string | undefined): [StructureType, { alt?: string }] =>
  alt === undefined ? ['P', {}] : ['Figure', { alt: flat(alt) }];

/** What is set ends with so much room below it. */
const belowLineMm = 5;
/** Below the title of a part, where its thread runs. */
export const belowTitleMm = 6.5;
/** Titles that are said again stand so much higher: their letters begin 10 mm below the paper's edge. */
const continuedUpMm = 5;
/** Above a part that begins below another. */
const partGapMm = 6.5;

/** A title below another part: what the page was before it, and where it ends. */
interface BelowTitle {
  readonly bookmark: Bookmark;
  readonly drawn: number;
  readonly reachMm: number;
  readonly marks: number;
  readonly endMm: number;
}

/** Pages, from 0, and where running text ends on them. */
export interface LoweredPages {
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
}

/**
 * Pages, and the parts that begin on them or below one another: where things go, not what they say.
 * `y` is where the next thing begins.
 */
export abstract class PageFlow {
  readonly pages: FlowPage[] = [];
  readonly root = new StructureNode('Document');
  private start: PartStart | undefined;
  private readonly marks = new Map<string, number>();
  /** The part of the document that is being set. */
  private current = this.root;
  private at = 0;
  /** Where the title of the page ends that was begun last. */
  private titleEnd = -1;
  /** The title that was set last below another part, until something stands below it. */
  private below: BelowTitle | undefined;
  /** Pages that end higher than the look has it. */
  lowered: readonly LoweredPages[] = [];

  constructor(
    readonly look: Look,
    /** BCP 47: the language of the document, and the one beside it. */
    readonly languages: readonly string[],
    private readonly continued: (heading: string) => string,
  ) {}

  /** Height of a text that is set over the whole width. */
  abstract highOf(text: string, style: TextStyle): number;

  /** A title at `y`; said again on later pages, it is ornament. */
  protected abstract title(heading: string, first: boolean): void;

  get y(): number {
    return this.at;
  }
  set y(value: number) {
    this.at = value;
    const page = this.pages.at(-1);
    if (page) page.reachMm = Math.max(page.reachMm, value);
  }

  /** Where running text ends on the page. */
  get bottom(): number {
    const page = this.pages.length - 1;
    const lowered = this.lowered.find(({ from, to }) => page >= from && page < to);
    return lowered?.bottom ?? this.look.bottom;
  }

  /** The part of the document that text and tables are set in. */
  get section(): StructureNode {
    return this.current;
  }

  /** What the feet of further pages of this part say. */
  where(where: string): void {
    if (this.start) this.start = { ...this.start, where };
  }

  /** A place to be named with its page elsewhere: on the last page, or on another. */
  mark(name: string, page = this.pages.at(-1)!): void {
    if (!this.marks.has(name)) this.marks.set(name, this.pages.lastIndexOf(page) + 1);
  }

  /** The page of a place, from 1; undefined where there is no such place. Known at the end. */
  pageOf(name: string): number | undefined {
    return this.marks.get(name);
  }

  /** A page that is drawn: a picture, where `alt` says of what, else words. */
  page(
    where: string,
    draw: Draw | undefined,
    { bookmark, alt, mark }: { bookmark?: Bookmark; alt?: string; mark?: string } = {},
  ): void {
    if (bookmark !== undefined) this.current = this.root.add('Sect');
    this.pages.push({
      where,
      bookmarks: bookmark === undefined ? [] : [bookmark],
      ruled: false,
      drawn: draw ? [{ draw, node: this.section.add(...asPicture(alt)) }] : [],
      reachMm: this.look.heightMm,
      topMm: 0,
    });
    this.start = undefined;
    this.titleEnd = -1;
    if (mark !== undefined) this.mark(mark);
  }

  /** Begins a part: on a page of its own, or below the part before where there is room. */
  part(start: PartStart): void {
    const below = start.besideMm !== undefined && this.start !== undefined;
    const room =
      below &&
      (this.isHalfEmpty() ||
        this.fits(
          partGapMm +
            this.highOf(start.heading, this.look.heading) +
            belowTitleMm +
            this.grown(start.besideMm),
        ));
    this.start = start;
    this.current = this.root.add('Sect');
    const bookmark = start.bookmark ?? { name: start.heading };
    if (room) this.titleBelow(start.heading, bookmark);
    else this.open(start.heading, bookmark);
    if (start.mark !== undefined) this.mark(start.mark);
  }

  /** Room as it is for one language in usual print: large letters and narrow columns take more. */
  private grown(heightMm: number): number {
    return heightMm * (this.look.large ? 1.7 : 1) * Math.min(2, this.languages.length);
  }

  /** Whether less than half of the page is filled. */
  private isHalfEmpty(): boolean {
    return this.y - belowLineMm < (this.look.top + this.look.bottom) / 2;
  }

  private titleBelow(heading: string, bookmark: Bookmark): void {
    const page = this.pages.at(-1)!;
    const before = { drawn: page.drawn.length, reachMm: page.reachMm, marks: this.marks.size };
    this.y += partGapMm;
    page.bookmarks.push(bookmark);
    this.title(heading, true);
    this.below = { ...before, bookmark, endMm: this.y };
  }

  /** Takes a title that nothing fits below to a page of its own. */
  private carry({ bookmark, drawn, reachMm, marks }: BelowTitle): void {
    const page = this.pages.at(-1)!;
    page.drawn.length = drawn;
    page.bookmarks.pop();
    page.reachMm = reachMm;
    this.current.children.length = 0;
    for (const name of [...this.marks.keys()].slice(marks)) {
      this.marks.set(name, this.pages.length + 1);
    }
    this.open(this.start!.heading, bookmark);
  }

  /** What takes away again all that is set from now on. */
  saved(): () => void {
    const { start, current, at, titleEnd, below } = this;
    const [pages, parts, marks] = [this.pages.length, this.root.children.length, this.marks.size];
    return () => {
      Object.assign(this, { start, current, at, titleEnd, below });
      this.pages.length = pages;
      this.root.children.length = parts;
      for (const name of [...this.marks.keys()].slice(marks)) this.marks.delete(name);
    };
  }

  /** Goes on with the same part on another page. */
  next(): void {
    if (this.below && this.y <= this.below.endMm + 0.01) return this.carry(this.below);
    // What does not fit below a title alone fits on no other page either.
    if (this.y <= this.titleEnd + 0.01) return;
    this.open(this.continued(this.start!.heading), undefined);
  }

  /** Whether something of this height still fits on the page. */
  fits(heightMm: number): boolean {
    return this.y + heightMm <= this.bottom + 1e-6;
  }

  /** Something drawn on the page; ornament where it belongs to no part of the document. */
  draw(draw: Draw, node?: StructureNode): void {
    this.pages.at(-1)!.drawn.push({ draw, node });
  }

  private open(heading: string, bookmark: Bookmark | undefined): void {
    this.below = undefined;
    this.pages.push({
      where: this.start!.where,
      bookmarks: bookmark ? [bookmark] : [],
      ruled: true,
      drawn: [],
      reachMm: 0,
      topMm: 0,
    });
    // What goes on says so over the text, where the room of a title begins.
    this.y = this.look.top - (bookmark === undefined ? continuedUpMm : 0);
    this.title(heading, bookmark !== undefined);
    this.titleEnd = this.y;
    this.pages.at(-1)!.topMm = this.y;
  }
}

import type { PageSurface } from '../../src/booklet/flow-page.js';
import type { GlyphRun, Polyline } from '../../src/core/pages/surface/surface.js';

/** A box, millimetres: left, top, right, bottom. */
export type InkBox = readonly [number, number, number, number];

/** A run of letters with the box of its ink, and what lies topmost beneath its middle. */
export interface RecordedText {
  readonly text: string;
  readonly box: InkBox;
  readonly sizeMm: number;
  readonly ink: string;
  /** Colours under the middle of each letter, those of the paper where nothing is. */
  readonly grounds: readonly string[];
  /** The part of the page that shows it; the whole page where there is no window. */
  readonly window: InkBox;
}

type Shape = { readonly colour: string; holds(x: number, y: number): boolean };

/** Takes what is drawn on one page, and knows afterwards where every letter stands and on what. */
export class PageRecorder implements PageSurface {
  readonly texts: RecordedText[] = [];
  /** Lines with their colour and what lies beneath their middle. */
  readonly lines: { colour: string; ground: string; widthMm: number }[] = [];
  private readonly shapes: Shape[] = [];
  private window: InkBox;

  constructor(
    readonly widthMm: number,
    readonly heightMm: number,
  ) {
    this.window = [0, 0, widthMm, heightMm];
  }

  fillPath(rings: readonly Polyline[], { fill }: { fill: string }): void {
    for (const ring of rings) {
      const box = boxOf(ring);
      this.add(fill, (x, y) => inside(box, x, y) && inRing(ring, x, y));
    }
  }

  strokePath(
    lines: readonly Polyline[],
    { stroke, widthMm, closed }: { stroke: string; widthMm: number; closed?: boolean },
  ): void {
    for (const line of lines) {
      const [x, y] = [(line[0] + line[2]) / 2, (line[1] + line[3]) / 2];
      this.lines.push({ colour: stroke, ground: this.colourAt(x, y), widthMm });
      const path = closed ? [...Array.from(line), line[0], line[1]] : line;
      const [left, top, right, bottom] = boxOf(line);
      const half = widthMm / 2;
      const box: InkBox = [left - half, top - half, right + half, bottom + half];
      this.add(stroke, (px, py) => inside(box, px, py) && distance(path, px, py) <= half);
    }
  }

  strokeCurve(): void {}

  circle(x: number, y: number, radius: number, { fill }: { fill: string }): void {
    this.add(fill, (px, py) => Math.hypot(px - x, py - y) <= radius);
  }

  glyphs({ title, sizeMm, ink, glyphs }: GlyphRun): void {
    if (glyphs.length === 0) return;
    const boxes = glyphs.map(({ glyph, x, y }): InkBox => {
      const { left, top, right, bottom } = glyph.box;
      return [x + sizeMm * left, y + sizeMm * top, x + sizeMm * right, y + sizeMm * bottom];
    });
    const grounds = boxes.map(([left, top, right, bottom]) =>
      this.colourAt((left + right) / 2, (top + bottom) / 2),
    );
    const common = { sizeMm, ink, window: this.window };
    // Letters set here and there, as on cells, are texts of their own.
    const level = glyphs.every(({ y }) => y === glyphs[0].y);
    if (level && glyphs.length === Array.from(title.normalize('NFC').replace(/\s/g, '')).length) {
      this.texts.push({ ...common, text: title, box: around(boxes), grounds });
    } else {
      glyphs.forEach(({ glyph }, n) => {
        const text = glyph.character;
        this.texts.push({ ...common, text, box: boxes[n], grounds: [grounds[n]] });
      });
    }
  }

  clipped(
    { left, top, right, bottom }: { left: number; top: number; right: number; bottom: number },
    draw: () => void,
  ): void {
    const before = this.window;
    this.window = [left, top, right, bottom];
    draw();
    this.window = before;
  }

  photo(): void {}

  beginGroup(): void {}
  endGroup(): void {}

  /** What shows of it: nothing outside the window. */
  private add(colour: string, holds: (x: number, y: number) => boolean): void {
    const { window } = this;
    this.shapes.push({ colour, holds: (x, y) => inside(window, x, y) && holds(x, y) });
  }

  private colourAt(x: number, y: number): string {
    for (let n = this.shapes.length - 1; n >= 0; n--) {
      if (this.shapes[n].holds(x, y)) return this.shapes[n].colour;
    }
    return '#ffffff';
  }
}

function boxOf(line: Polyline): InkBox {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let p = 0; p < line.length; p += 2) {
    left = Math.min(left, line[p]);
    right = Math.max(right, line[p]);
    top = Math.min(top, line[p + 1]);
    bottom = Math.max(bottom, line[p + 1]);
  }
  return [left, top, right, bottom];
}

function around(boxes: readonly InkBox[]): InkBox {
  return [
    Math.min(...boxes.map(([left]) => left)),
    Math.min(...boxes.map(([, top]) => top)),
    Math.max(...boxes.map(([, , right]) => right)),
    Math.max(...boxes.map(([, , , bottom]) => bottom)),
  ];
}

const inside = ([left, top, right, bottom]: InkBox, x: number, y: number): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

function inRing(ring: Polyline, x: number, y: number): boolean {
  let within = false;
  for (let p = 0, q = ring.length - 2; p < ring.length; q = p, p += 2) {
    const [ax, ay, bx, by] = [ring[p], ring[p + 1], ring[q], ring[q + 1]];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within;
  }
  return within;
}

function distance(line: Polyline, x: number, y: number): number {
  let least = Infinity;
  for (let p = 0; p + 3 < line.length; p += 2) {
    const [ax, ay, bx, by] = [line[p], line[p + 1], line[p + 2], line[p + 3]];
    const long = (bx - ax) ** 2 + (by - ay) ** 2;
    const t = long === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long;
    const k = Math.max(0, Math.min(1, t));
    least = Math.min(least, Math.hypot(x - ax - k * (bx - ax), y - ay - k * (by - ay)));
  }
  return least;
}

import type { Fonts } from '../surface/font.js';
import type { Stroke, Surface } from '../surface/surface.js';
import { drawText, mmPerPoint, shortened } from '../surface/text.js';
import { fewer } from './fewer.js';
import { arc, besides, placed, smooth } from '../../lines.js';
import type { Spot } from '../../lines.js';

/** What the hand moves, and what lies still. */
export const heavyMm = 1.2 * mmPerPoint;
export const lightMm = 0.6 * mmPerPoint;
export const ink = '#1a1a1a';
const white = '#ffffff';
/** Of a thread, drawn large enough for two lines and its tint between them. */
export const threadMm = 1.5;

export interface Tints {
  readonly bead: string;
  readonly thread: string;
}

/** Where a drawing is put and how: its left hand is the mirror image of its right, figures are not. */
export interface PenPlace {
  readonly surface: Surface;
  /** Of the box that is drawn in. */
  readonly widthMm: number;
  readonly mirror: boolean;
  readonly at: Spot;
  /** Of what is drawn to its own size; lines and figures keep theirs. */
  readonly scale: number;
}

/** One thing that was drawn, to be put wherever it is wanted. */
type Mark = (place: PenPlace) => void;

interface Look {
  /** Whether the hand moves it: a heavier line. */
  readonly moves?: boolean;
  readonly wide?: number;
  readonly fill?: string;
}

/**
 * Draws thread, beads and hook as shapes with a line round them; what is drawn later lies on top. It
 * is drawn once, and put on pages as often and as large as it is wanted.
 */
export class Pen {
  private readonly marks: Mark[] = [];

  constructor(
    readonly tints: Tints,
    private readonly fonts: Fonts,
    /** Outlines of beads and loops, shared by the pens of a booklet. */
    private readonly outlines = new Map<string, readonly Spot[]>(),
  ) {}

  /** Puts all that was drawn somewhere. */
  put(place: PenPlace): void {
    for (const mark of this.marks) mark(place);
  }

  /** A line alone. */
  line(spots: readonly Spot[], look: Look & { dashed?: boolean; closed?: boolean } = {}): void {
    const dashes = look.dashed ? { dashMm: [1, 1.1] as const } : {};
    const closed = look.closed ? { closed: true } : {};
    this.stroke([spots], { ...strokeOf(look), ...dashes, ...closed });
  }

  /** A filled shape with a line round it. */
  shape(spots: readonly Spot[], look: Look = {}): void {
    this.fill(fewer(spots), look);
  }

  private fill(kept: readonly Spot[], look: Look): void {
    const paint = { fill: look.fill ?? white, outline: { ...strokeOf(look), closed: true } };
    this.marks.push((place) => place.surface.fillPath([pathAt(place, kept)], paint));
  }

  /** An outline that is put in many places, through no more spots than it needs. */
  private once(name: string, make: () => readonly Spot[]): readonly Spot[] {
    let outline = this.outlines.get(name);
    if (!outline) this.outlines.set(name, (outline = fewer(make())));
    return outline;
  }

  /** A filled shape without a line. */
  area(spots: readonly Spot[], fill: string): void {
    const kept = fewer(spots);
    this.marks.push((place) => place.surface.fillPath([pathAt(place, kept)], { fill }));
  }

  /** A length of thread along a line; its ends are open, so that pieces join unseen. */
  thread(line: readonly Spot[], look: Look & { cut?: 'start' | 'end' } = {}): void {
    const wide = look.wide ?? threadMm;
    const [left, right] = besides(line, wide);
    const ring = [...left, ...[...right].reverse()];
    this.area(ring, look.fill ?? this.tints.thread);
    const lines = [left, right];
    if (look.cut === 'start') lines.push([left[0], right[0]]);
    if (look.cut === 'end') lines.push([left[left.length - 1], right[right.length - 1]]);
    this.stroke(lines, strokeOf(look));
  }

  /** A loop of thread that lies on the work: a leaf from one spot to another. */
  leaf([ax, ay]: Spot, [bx, by]: Spot, look: Look = {}): void {
    const long = Math.hypot(bx - ax, by - ay);
    const half = (look.wide ?? 2.3) / 2;
    const outline = this.once(`leaf ${long} ${half}`, () => [
      ...arc([long / 2, 0], [long / 2, half], 180, 360),
      ...arc([long / 2, 0], [long / 2, half], 0, 180),
    ]);
    const degrees = (Math.atan2(by - ay, bx - ax) * 180) / Math.PI;
    this.fill(placed(outline, [ax, ay], degrees), look);
  }

  /** A seed bead; its hole runs along `degrees`. */
  bead(at: Spot, degrees: number, look: Look & { across?: number; long?: number } = {}): void {
    const half = (look.across ?? 6) / 2;
    const short = (look.long ?? 4.6) / 2;
    // A rounded barrel: quarter ellipses between flat ends a third as wide as the bead.
    const flat = 0.36 * half;
    const outline = this.once(`bead ${half} ${short}`, () => [
      ...arc([0, flat], [short, half - flat], 0, 180),
      ...arc([0, -flat], [short, half - flat], 180, 360),
    ]);
    this.fill(placed(outline, at, degrees), { fill: this.tints.bead, ...look });
    const glint = this.once(`glint ${half} ${short}`, () =>
      arc([0, -0.1 * half], [0.55 * short, 0.62 * half], 205, 262),
    );
    const kept = placed(glint, at, degrees);
    this.marks.push((place) => {
      const paint = { stroke: white, widthMm: 0.55 * place.scale };
      place.surface.strokePath([pathAt(place, kept)], paint);
    });
  }

  /** A hook with its tip at a spot; its shaft runs off along `degrees`, `long` mm, throat below. */
  hook(tip: Spot, degrees: number, long: number, look: Look & { throat?: 1 | -1 } = {}): void {
    const side = look.throat ?? 1;
    const outline: Spot[] = [
      ...arc([1.35, 0], 1.35, 270, 90).map(([u, v]): Spot => [u, side * v]),
      [2.5, side * 1.25],
      [3.1, side * 0.1],
      [4.4, side * 0.25],
      [7.2, side * 1.3],
      [Math.max(long, 8), side * 1.6],
      [Math.max(long, 8), side * -1.6],
      [7.2, side * -1.4],
      [3, side * -1.35],
    ];
    this.shape(placed(outline, tip, degrees), { moves: true, ...look });
  }

  /** A needle with its point at a spot; its eye lies `long` mm off along `degrees`. */
  needle(point: Spot, degrees: number, long: number): void {
    const outline: Spot[] = [
      [0, 0],
      [4, 0.6],
      [long - 5, 0.75],
      ...arc([long - 1, 0], 1, 60, -60),
      [long - 5, -0.75],
      [4, -0.6],
    ];
    this.shape(placed(outline, point, degrees), { moves: true });
    this.shape(placed(arc([long - 2, 0], [1.3, 0.32], 0, 360), point, degrees));
  }

  /** Where a thread goes down into the work. */
  hole([x, y]: Spot, wide = 3.4): void {
    this.area(arc([x, y], [wide / 2, 0.75], 0, 360), ink);
  }

  /** The way that something moves: a smooth line with a head at its end. */
  arrow(spots: readonly Spot[]): void {
    const line = smooth(spots);
    const tip = line[line.length - 1];
    const back = [...line]
      .reverse()
      .find((one) => Math.hypot(one[0] - tip[0], one[1] - tip[1]) > 1.6);
    const [bx, by] = back ?? line[0];
    const degrees = (Math.atan2(tip[1] - by, tip[0] - bx) * 180) / Math.PI;
    const head = placed(
      [
        [0, 0],
        [-2.3, -1.05],
        [-2.3, 1.05],
      ],
      tip,
      degrees,
    );
    const end = placed([[-1.9, 0]], tip, degrees)[0];
    const shaft = [
      ...line.filter((one) => Math.hypot(one[0] - tip[0], one[1] - tip[1]) > 1.9),
      end,
    ];
    // White beside it keeps it apart from what it crosses.
    this.stroke([shaft], { stroke: white, widthMm: heavyMm + 0.9 });
    this.stroke([shaft], { stroke: ink, widthMm: heavyMm });
    this.area(head, ink);
  }

  /** The number of a movement, in a ring; never mirrored. */
  number(n: number, spot: Spot): void {
    const { bold } = this.fonts;
    const sizeMm = 9 * mmPerPoint;
    const style = { face: bold, sizeMm, ink };
    this.marks.push((place) => {
      const [cx, cy] = pathAt(place, [spot]);
      place.surface.circle(cx, cy, place.scale < 1 ? 1.95 : 2.15, {
        fill: white,
        outline: { stroke: ink, widthMm: lightMm },
      });
      const baseline = cy + (bold.capHeight * sizeMm) / 2;
      drawText(place.surface, String(n), style, cx, baseline, 'middle');
    });
  }

  /** A short text, its middle at a spot; shortened where it is wider than given. */
  text(said: string, spot: Spot, points = 9, widthMm = Infinity): void {
    const { bold } = this.fonts;
    const sizeMm = points * mmPerPoint;
    const style = { face: bold, sizeMm, ink };
    this.marks.push((place) => {
      const [cx, cy] = pathAt(place, [spot]);
      const fitting = shortened(said, style, widthMm * place.scale);
      const baseline = cy + (bold.capHeight * sizeMm) / 2;
      drawText(place.surface, fitting, style, cx, baseline, 'middle');
    });
  }

  /** A dot, for instance a marker. */
  dot(spot: Spot, radius: number, look: Look = {}): void {
    const paint = { fill: look.fill ?? white, outline: strokeOf(look) };
    this.marks.push((place) => {
      const [cx, cy] = pathAt(place, [spot]);
      place.surface.circle(cx, cy, radius * place.scale, paint);
    });
  }

  private stroke(lines: readonly (readonly Spot[])[], paint: Stroke): void {
    const kept = lines.map(fewer);
    this.marks.push((place) =>
      place.surface.strokePath(
        kept.map((line) => pathAt(place, line)),
        paint,
      ),
    );
  }
}

const strokeOf = ({ moves }: Look): Stroke => ({
  stroke: ink,
  widthMm: moves ? heavyMm : lightMm,
});

/** Spots of a drawing where they lie on the page, x and y by turns. */
function pathAt({ scale, mirror, widthMm, at }: PenPlace, spots: readonly Spot[]): Float64Array {
  const path = new Float64Array(2 * spots.length);
  spots.forEach(([x, y], n) => {
    path[2 * n] = scale * (mirror ? widthMm - x : x) + at[0];
    path[2 * n + 1] = scale * y + at[1];
  });
  return path;
}

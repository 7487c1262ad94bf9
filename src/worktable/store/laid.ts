import { plainBead } from '../../core/beads/bead.js';
import type { Bead } from '../../core/beads/bead.js';
import { laidEntries } from '../../core/brush/laid-entries.js';
import { stitchCount } from '../../core/panel/shape.js';
import type { Shape } from '../../core/panel/shape.js';
import type { HandLaid } from '../../core/pattern/wished.js';
import type { Piece } from './piece.js';

/** A bead's id, `.` for none, or undefined: as it was chosen. */
export type Laying = string | undefined;

/** Wedges of the panel that the piece is. */
export const wedgesOf = ({ picture, opened, wish }: Piece): number =>
  !picture && opened ? opened.shape.wedges : wish.shape.wedges;

/** Whether beads laid by hand wait for the wedges on which they were laid. */
export const laidWait = (now: Piece): boolean =>
  now.laidWedges !== undefined && now.laidWedges !== wedgesOf(now);

/** What lies on a panel by hand, by stitch. */
export function laidOn(now: Piece, panel: number): Map<number, string> {
  const found = new Map<number, string>();
  if (laidWait(now)) return found;
  const { laid } = now;
  const own = `${panel}:`;
  for (const key in laid) {
    if (key.startsWith(own)) found.set(Number(key.slice(own.length)), laid[key]);
  }
  return found;
}

/** The piece with beads laid by hand, or taken back; those that wait for other wedges go. */
export function withLaid(
  now: Piece,
  panel: number,
  layings: ReadonlyMap<number, Laying>,
  beads: readonly Bead[],
): Piece {
  const laid: Record<string, string> = laidWait(now) ? {} : { ...now.laid };
  for (const [s, id] of layings) {
    if (id === undefined) delete laid[`${panel}:${s}`];
    else laid[`${panel}:${s}`] = id;
  }
  const known = now.laidBeads ?? [];
  const fresh = beads.filter(({ id }) => !known.some((one) => one.id === id));
  return {
    ...now,
    laid,
    laidWedges: wedgesOf(now),
    ...(fresh.length > 0 && { laidBeads: [...known, ...fresh] }),
  };
}

/** The piece with one bead laid by hand for another wherever it was. */
export function withLaidInstead(now: Piece, from: string, to: string): Piece {
  const entries = Object.entries(now.laid);
  if (!entries.some(([, id]) => id === from)) return now;
  const bead = beadNamed(now, to);
  const known = now.laidBeads ?? [];
  const fresh = bead && !known.some(({ id }) => id === to) ? [bead] : [];
  return {
    ...now,
    laid: Object.fromEntries(entries.map(([key, id]) => [key, id === from ? to : id])),
    laidBeads: [...known, ...fresh],
  };
}

/** A bead of the palette, or one that was laid by hand from an earlier one. */
export function beadNamed({ palette, laidBeads = [] }: Piece, id: string): Bead | undefined {
  return palette.beads.find((one) => one.id === id) ?? laidBeads.find((one) => one.id === id);
}

/** What the maker laid by hand, as a pattern keeps it; undefined where that is nothing. */
export function handLaidOf(now: Piece, shape: Shape): HandLaid | undefined {
  const placed = [0, 1].map((panel) => laidOn(now, panel));
  if (placed.every(({ size }) => size === 0)) return undefined;
  const used = new Set(placed.flatMap((one) => [...one.values()]));
  const beads = (now.laidBeads ?? [])
    .filter(({ id }) => used.has(id))
    .map(({ id }) => plainBead(beadNamed(now, id)!));
  return { wedges: shape.wedges, beads, ...laidEntries(shape, placed) };
}

/** How many beads were laid by hand, and how many of them have a stitch in a shape. */
export function laidCounts(
  now: Piece,
  shape: Pick<Shape, 'wedges' | 'rounds'>,
): { all: number; stand: number } {
  const { laid } = now;
  const count = stitchCount(shape);
  let [all, stand] = [0, 0];
  for (const key in laid) {
    all++;
    if (Number(key.slice(2)) < count) stand++;
  }
  return { all, stand: laidWait(now) ? 0 : stand };
}

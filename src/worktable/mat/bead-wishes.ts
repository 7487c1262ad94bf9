import type { Bead } from '../../core/beads/bead.js';
import { nearestBeads } from '../../core/beads/nearest-beads.js';
import { withLaidInstead } from '../store/laid.js';
import { chart, look, piece, pieces, wish } from '../store/store.js';
import { words } from '../words.js';

/** Heaps that are offered to lay instead of one. */
const mostNear = 8;

const bead = (id: string) => piece.peek().palette.beads.find((one) => one.id === id);

/** Lays another bead wherever one was chosen: one that lies there already, or any of the palette. */
export function layInstead(from: string, to: string, how: 'merge' | 'swap', opens = true): void {
  const say = words.peek().beads.steps;
  pieces.change(how === 'merge' ? say.merge : say.swap, (now) => {
    // What was laid instead of others goes along; a way round in a circle ends.
    const { [to]: _freed, ...instead } = now.wish.instead;
    const swapped = { ...now, wish: { ...now.wish, instead: { ...instead, [from]: to } } };
    return withLaidInstead(swapped, from, to);
  });
  if (opens) look({ card: to, litBead: to });
}

/** Takes back whatever was laid instead of chosen beads so that this one came to lie. */
export function layAsChosen(id: string): void {
  const { instead } = piece.peek().wish;
  const kept = Object.entries(instead).filter(([, to]) => to !== id);
  wish(words.peek().beads.steps.asChosen, { instead: Object.fromEntries(kept) });
}

/** Whether a bead lies where others were chosen. */
export const standsIn = (id: string): boolean =>
  Object.values(piece.value.wish.instead).includes(id);

/** Always, never, or as it comes; a bead cannot be both. */
export function setWanted(id: string, wanted: 'always' | 'never' | 'free'): void {
  const say = words.peek().beads.steps;
  const { keep, leaveOut } = piece.peek().wish;
  const without = (ids: readonly string[]) => ids.filter((one) => one !== id);
  wish(say[wanted], {
    keep: wanted === 'always' ? [...without(keep), id] : without(keep),
    leaveOut: wanted === 'never' ? [...without(leaveOut), id] : without(leaveOut),
  });
  if (wanted === 'never') look({ card: undefined, litBead: undefined });
}

export const wanted = (id: string): 'always' | 'never' | 'free' => {
  const { keep, leaveOut } = piece.value.wish;
  return keep.includes(id) ? 'always' : leaveOut.includes(id) ? 'never' : 'free';
};

/** Says how many grams of a bead are in the jar; undefined: not known. */
export function setGrams(id: string, grams: number | undefined): void {
  pieces.change(words.peek().beads.steps.jar, (now) => ({
    ...now,
    palette: {
      ...now.palette,
      beads: now.palette.beads.map((one) => {
        if (one.id !== id) return one;
        const { grams: _grams, count: _count, ...rest } = one;
        return grams === undefined ? rest : { ...rest, grams };
      }),
    },
  }));
}

/** The beads of the palette that look most like one, nearest first; none of those on the mat. */
export function nearest(id: string): Bead[] {
  const from = bead(id);
  if (!from) return [];
  const there = new Set(chart.peek()?.beads.map((one) => one.id));
  const { beads } = piece.peek().palette;
  return nearestBeads(
    from,
    beads.filter((one) => !there.has(one.id)),
    mostNear,
  );
}

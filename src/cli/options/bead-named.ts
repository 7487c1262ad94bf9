import type { Bead } from '../../core/beads/bead.js';
import { RondureError } from '../../core/errors.js';
import { similarTo } from '../said/similar.js';

/**
 * Palette index of a bead by its id or name, whatever the case.
 * @throws RondureError `bead-unknown`
 */
export function beadNamed(beads: readonly Bead[], option: string, name: string): number {
  const index = indexNamed(beads, name);
  if (index >= 0) return index;
  throw new RondureError('bead-unknown', { option, got: name, ...nearBead(beads, name) });
}

/** Palette index of a bead by its id, else by its name; -1 where there is none. */
export function indexNamed(beads: readonly Bead[], name: string): number {
  const wanted = name.toLowerCase();
  const byId = beads.findIndex((bead) => bead.id.toLowerCase() === wanted);
  return byId >= 0 ? byId : beads.findIndex((bead) => bead.name.toLowerCase() === wanted);
}

/** The id or the name that was probably meant, as a fact of an error; ids come first. */
export function nearBead(beads: readonly Bead[], got: string): { near?: string } {
  const near = similarTo(got, [...beads.map(({ id }) => id), ...beads.map(({ name }) => name)]);
  return near === undefined ? {} : { near };
}

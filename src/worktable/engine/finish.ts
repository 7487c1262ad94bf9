import type { Bead, BeadOfStitch } from '../../core/beads/bead.js';
import { endOf, withInstead } from '../../core/beads/instead.js';
import { byHand } from '../../core/brush/by-hand.js';
import type { PanelReport } from '../../core/make.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { patternWithSwatch } from '../../core/pattern/with-swatch.js';
import { rememberChosen } from '../store/chosen.js';
import { beadNamed, handLaidOf, laidOn } from '../store/laid.js';
import type { Piece } from '../store/piece.js';

/** What was chosen, before the maker's hand; without a report where it was opened as a chart. */
export interface Chosen {
  readonly pattern: Pattern;
  readonly report?: PanelReport;
}

const untold = { beads: 0, colours: 0, panels: [], warnings: [] };

/**
 * The pattern as the maker's hand has it, as `rondure chart --from` makes it of its wish.
 *
 * @throws RondureError `no-letter-free`
 */
export function finished(chosen: Chosen, piece: Piece): Chosen {
  rememberChosen(withInstead(chosen.pattern, piece.wish.instead, piece.palette.beads));
  return withHand(chosen, piece);
}

/** The same for a piece that does not lie on the table. */
export function withHand({ pattern, report }: Chosen, piece: Piece): Chosen {
  const { palette, wish, swatch } = piece;
  const { instead } = wish;
  const hand = { instead, palette: palette.beads, laid: handLaidOf(piece, pattern.shape) };
  if (!report) return { pattern: byHand({ pattern, report: untold }, hand).pattern };
  const made = byHand({ pattern, report }, hand);
  return { ...made, pattern: patternWithSwatch(made.pattern, swatch) };
}

/** Palette indices of a chart that is only followed, with the maker's hand over them. */
export function laidUpon(
  panels: readonly { readonly beadOf: BeadOfStitch }[],
  piece: Piece,
  beads: readonly Bead[],
): { laid: BeadOfStitch[]; all: readonly Bead[] } {
  const { instead } = piece.wish;
  const lies = beads.map(({ id }, n) => {
    const end = endOf(id, instead);
    return end === id ? n : beads.findIndex((bead) => bead.id === end);
  });
  const all = [...beads];
  const indexFor = (id: string): number => {
    if (id === '.') return -1;
    const known = all.findIndex((bead) => bead.id === id);
    const bead = known < 0 ? beadNamed(piece, id) : undefined;
    return bead ? all.push(bead) - 1 : known;
  };
  const laid = panels.map(({ beadOf }, n) => {
    const over = beadOf.map((index) => lies[index] ?? index);
    for (const [s, id] of laidOn(piece, n)) if (s < over.length) over[s] = indexFor(id);
    return over;
  });
  return { laid, all };
}

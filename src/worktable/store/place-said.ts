import { placeOfStitch } from '../../core/brush/places.js';
import { roundOfStitch, stitchesBefore } from '../../core/panel/shape.js';
import { figure, words } from '../words.js';
import { chart, piece, shownPanel, view } from './store.js';

/** Where a stitch of the panel that is looked at lies, and what lies there: for the ear. */
export function placeSaid(s: number): string {
  const say = words.value.brush;
  const made = chart.value;
  const panel = shownPanel.value;
  if (!made || !panel || s < 0) return '';
  const { wedge } = placeOfStitch(made.shape, s);
  const round = roundOfStitch(made.shape, s);
  const bead = made.beads[panel.beadOf[s]];
  const place = {
    round: figure(round),
    stitch: figure(s - stitchesBefore(made.shape, round) + 1),
    wedge: figure(wedge),
    bead: bead ? `${bead.letter} ${bead.name}` : say.none,
  };
  const byHand = piece.value.laid[`${view.value.panel}:${s}`] !== undefined;
  return byHand ? say.placeByHand(place) : say.place(place);
}

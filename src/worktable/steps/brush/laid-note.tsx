import { laidCounts, laidWait } from '../../store/laid.js';
import { chart, piece } from '../../store/store.js';
import { figure, words } from '../../words.js';

/** What lies on the panel by hand, and what has no place there now; nothing while nothing was laid. */
export function LaidSentence() {
  const say = words.value.brush;
  const made = chart.value;
  if (!made) return null;
  const { all, stand } = laidCounts(piece.value, made.shape);
  const n = figure(all - stand);
  const wedges = figure(piece.value.laidWedges ?? 0);
  return (
    <p data-laid={stand}>
      {all === 0 ? say.laidNone : stand > 0 && say.laidCount(figure(stand))}{' '}
      {all > stand && (laidWait(piece.value) ? say.laidWait({ n, wedges }) : say.laidOutside(n))}
    </p>
  );
}

/** Said where the shape is changed, before it is: beads laid by hand may lose their place. */
export function LaidNote() {
  const say = words.value.brush;
  if (Object.keys(piece.value.laid).length === 0) return null;
  return (
    <div class="offer laid-note">
      <h3>{say.laid}</h3>
      <LaidSentence />
      <p class="small">{say.laidHow}</p>
    </div>
  );
}

import { practicePattern } from '../../../core/teach/practice.js';
import { plainWish } from '../../sample/sample.js';
import { putAway } from '../../keep/autosave.js';
import { look, piece, pieces } from '../../store/store.js';
import { words } from '../../words.js';
import { workPattern } from './work-store.js';

/** Whether there are beads enough for a practice piece. */
export const canPractise = () => (workPattern.value?.beads.length ?? 0) >= 3;

/** Lays a practice piece on the table, as a new piece in the stitch and the beads of the one before. */
export async function beginPractice(): Promise<void> {
  const from = workPattern.peek();
  if (!from || from.beads.length < 3) return;
  const opened = practicePattern(from.shape, from.beads, words.peek().mending.practice);
  const { palette } = piece.peek();
  await putAway();
  pieces.open({
    title: opened.title,
    sample: false,
    opened,
    palette,
    wish: plainWish,
    laid: {},
  });
  look({ panel: 0, litStitch: -1, litBead: undefined, step: 'work' });
}

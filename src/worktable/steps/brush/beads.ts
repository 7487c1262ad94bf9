import { bareMark, letters } from '../../../core/pattern/marks.js';
import { brush, handle } from '../../store/brush.js';
import { beadNamed } from '../../store/laid.js';
import { chart, piece, tellTrouble } from '../../store/store.js';
import { words } from '../../words.js';

/** Id of the bead that the brush lays: the one that was picked up, else the most used one. */
export function brushBead(): string {
  const { bead } = brush.value;
  if (bead === bareMark || (bead !== undefined && beadNamed(piece.value, bead))) return bead;
  if (bead !== undefined && chart.value?.beads.some(({ id }) => id === bead)) return bead;
  return chart.value?.beads[0]?.id ?? bareMark;
}

/** Takes a bead up; a brush that could not lay it lays beads one by one from now on. */
export function takeUp(bead: string): void {
  const { tool } = brush.peek();
  handle({ bead, ...((tool === 'away' || tool === 'pick') && { tool: 'bead' }) });
}

/** The next bead of the mat, or the one before; after the last comes none. */
export function takeUpNext(by: 1 | -1): void {
  const ids = [...(chart.peek()?.beads.map(({ id }) => id) ?? []), bareMark];
  const at = ids.indexOf(brushBead());
  takeUp(ids[(at + by + ids.length) % ids.length]);
}

/** Id of the bead of a stitch, `.` for none; undefined where it is not decided. */
export function idAt(panel: number, s: number): string | undefined {
  const made = chart.peek();
  const index = made?.panels[panel]?.beadOf[s];
  return index === -1 ? bareMark : made?.beads[index ?? -2]?.id;
}

/** Whether a bead has a letter, or can get one; says so where it cannot. */
export function hasLetter(id: string): boolean {
  const beads = chart.peek()?.beads ?? [];
  if (id === bareMark || beads.length < letters.length || beads.some((one) => one.id === id)) {
    return true;
  }
  tellTrouble(words.peek().brush.noLetter);
  return false;
}

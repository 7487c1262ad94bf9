import { bareMark } from '../../core/pattern/marks.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { lettersInWorkingOrder } from '../../core/pattern/stitches.js';

let of: { pattern: Pattern; ids: Map<string, string>; marks: string[] } | undefined;

/** Says what was chosen, before anything was laid by hand. */
export function rememberChosen(pattern: Pattern): void {
  if (of?.pattern === pattern) return;
  of = {
    pattern,
    ids: new Map(pattern.beads.map(({ letter, id }) => [letter, id])),
    marks: pattern.panels.map(lettersInWorkingOrder),
  };
}

/** Id of the bead that was chosen for a stitch, `.` for none; undefined where none was. */
export function chosenAt(panel: number, s: number): string | undefined {
  const mark = of?.marks[panel]?.[s];
  return mark === bareMark ? bareMark : of?.ids.get(mark ?? '');
}

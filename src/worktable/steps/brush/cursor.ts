import { focusPanel } from '../../actions/focus.js';
import { acrossRounds, alongRound } from '../../../core/brush/places.js';
import { brush, handle } from '../../store/brush.js';
import { look, shownPanel, view } from '../../store/store.js';
import { words } from '../../words.js';
import { brushBead, hasLetter, idAt } from './beads.js';
import { movePart, withPatch } from './part.js';
import { strokeOnce } from './stroke.js';
import { lineFrom, replaceAt, stitchesFor } from './tools.js';

/** Which way the cell cursor goes: along the round as it is worked, or from round to round. */
export type Way = 'on' | 'back' | 'out' | 'in';

/** The stitch of the cell cursor, or -1. */
const here = (): number => {
  const { litStitch } = view.peek();
  const count = shownPanel.peek()?.geometry.count ?? 0;
  return litStitch < count ? litStitch : -1;
};

function stepFrom(s: number, way: Way): number {
  const { shape } = shownPanel.peek()!.geometry;
  if (s < 0) return 0;
  if (way === 'out' || way === 'in') return acrossRounds(shape, s, way);
  return alongRound(shape, s, way === 'on' ? 1 : -1);
}

/** Moves the cell cursor by one. */
export function go(way: Way): void {
  if (!shownPanel.peek()) return;
  focusPanel();
  look({ litStitch: stepFrom(here(), way), litBead: undefined });
}

/** Lays what the brush holds at the cursor and goes on; with the tool that moves, moves the marked part. */
export function goWith(way: Way): void {
  const s = here();
  const panel = shownPanel.peek();
  if (s < 0 || !panel) return go(way);
  focusPanel();
  const to = stepFrom(s, way);
  if (brush.peek().tool === 'move') {
    const { centres } = panel.geometry;
    movePart({
      xMm: centres[2 * to] - centres[2 * s],
      yMm: centres[2 * to + 1] - centres[2 * s + 1],
    });
  } else useBrush();
  look({ litStitch: to });
}

/** Does with the brush at the cursor what a tap would do there. */
export function useBrush(): void {
  const s = here();
  if (s < 0) return go('on');
  const { tool, lineFrom: start } = brush.peek();
  const { steps } = words.peek().brush;
  if (tool === 'replace') return replaceAt(s);
  if (tool === 'pick') {
    const id = idAt(view.peek().panel, s);
    return handle({ tool: 'bead', ...(id !== undefined && { bead: id }) });
  }
  if (tool === 'move') return handle({ part: withPatch(s) });
  const bead = tool === 'away' ? undefined : brushBead();
  if (bead !== undefined && !hasLetter(bead)) return;
  if (tool === 'line') {
    if (start < 0) return handle({ lineFrom: s });
    handle({ lineFrom: -1 });
    const stitches = lineFrom(spotOf(start), spotOf(s));
    return strokeOnce(steps.line, new Map(stitches.map((one) => [one, bead])));
  }
  strokeOnce(steps[tool], new Map(stitchesFor(tool, s).map((one) => [one, bead])));
}

function spotOf(s: number) {
  const { centres } = shownPanel.peek()!.geometry;
  return { xMm: centres[2 * s], yMm: centres[2 * s + 1], stitch: s };
}

/** Puts down what was begun: a line, a marked part. */
export const putDown = (): void => handle({ lineFrom: -1, part: [] });

import { stitchesOnLine } from '../../../core/brush/line.js';
import { patchAt } from '../../../core/brush/patch.js';
import { placeOfStitch, stitchesOfRound, stitchesOfWedge } from '../../../core/brush/places.js';
import { layInstead } from '../../mat/bead-wishes.js';
import type { Pull, Spot } from '../../panel/hand.js';
import { brush } from '../../store/brush.js';
import type { BrushTool } from '../../store/brush.js';
import type { Laying } from '../../store/laid.js';
import { shownPanel, view } from '../../store/store.js';
import { words } from '../../words.js';
import { brushBead, hasLetter, idAt, takeUp } from './beads.js';
import { beginStroke } from './stroke.js';

/** Tools that lay beads under the finger, and what they lay between two places. */
type Layer = Exclude<BrushTool, 'replace' | 'move' | 'pick'>;

/** Stitches that a tool lays for one stitch under it. */
export function stitchesFor(tool: Layer, s: number): number[] {
  const panel = shownPanel.peek()!;
  const { shape } = panel.geometry;
  const { round, wedge } = placeOfStitch(shape, s);
  if (tool === 'ring') return stitchesOfRound(shape, round);
  if (tool === 'wedge') return stitchesOfWedge(shape, wedge);
  if (tool === 'patch') return patchAt(panel.footprints, panel.beadOf, s);
  return [s];
}

/** Stitches from one place to another. */
export function lineFrom(from: Spot, to: Spot): number[] {
  const { footprints, geometry } = shownPanel.peek()!;
  const { stitchWidthMm, roundHeightMm } = geometry.shape;
  return stitchesOnLine(footprints, from, to, Math.min(stitchWidthMm, roundHeightMm) / 3);
}

/** A stroke of a tool that lays beads, from the place where the finger came down. */
export function layingPull(tool: Layer, at: Spot): Pull | undefined {
  const bead: Laying = tool === 'away' ? undefined : brushBead();
  if (bead !== undefined && !hasLetter(bead)) return { move() {}, end() {}, drop() {} };
  const stroke = beginStroke(words.peek().brush.steps[tool]);
  if (!stroke) return undefined;
  const layings = new Map<number, Laying>();
  let last = at;
  const lay = (stitches: readonly number[]) => {
    const size = layings.size;
    for (const s of stitches) layings.set(s, bead);
    if (layings.size > size) stroke.lay(layings);
  };
  const along = (to: Spot) => {
    if (tool === 'line') {
      layings.clear();
      lay(lineFrom(at, to));
    } else if (tool !== 'patch') {
      lay([...new Set(lineFrom(last, to).flatMap((s) => stitchesFor(tool, s)))]);
    }
    last = to;
  };
  if (at.stitch >= 0) lay(stitchesFor(tool, at.stitch));
  return { move: along, end: () => stroke.end(), drop: () => stroke.drop() };
}

/** Lays the brush's bead wherever the bead of a stitch lies, on both panels. */
export function replaceAt(s: number): void {
  const from = s < 0 ? undefined : idAt(view.peek().panel, s);
  const to = brushBead();
  if (from === undefined || from === to) return;
  if (from === '.' || to === '.') return replaceHere(from, to);
  if (hasLetter(to)) layInstead(from, to, 'swap', false);
}

/** Bare stitches are no bead: they are laid by hand, on this panel. */
function replaceHere(from: string, to: string): void {
  const { beadOf } = shownPanel.peek()!;
  const panel = view.peek().panel;
  const layings = new Map<number, Laying>();
  for (let s = 0; s < beadOf.length; s++) if (idAt(panel, s) === from) layings.set(s, to);
  if (!hasLetter(to)) return;
  const stroke = beginStroke(words.peek().brush.steps.replace);
  stroke?.lay(layings);
  stroke?.end();
}

/** Picks up the bead of the stitch under the finger, and goes back to the tool before. */
export function pickingPull(at: Spot, before: BrushTool): Pull {
  const pick = ({ stitch }: Spot) => {
    const id = stitch < 0 ? undefined : idAt(view.peek().panel, stitch);
    if (id !== undefined) brush.value = { ...brush.peek(), bead: id };
  };
  pick(at);
  return {
    move: pick,
    end: () => {
      brush.value = { ...brush.peek(), tool: before === 'pick' ? 'bead' : before };
    },
    drop() {},
  };
}

export { takeUp };

import { stitchesInLoop } from '../../../core/brush/line.js';
import { movedPart } from '../../../core/brush/moved-part.js';
import { patchAt } from '../../../core/brush/patch.js';
import type { FacePoint } from '../../../core/brush/line.js';
import type { Pull, Spot } from '../../panel/hand.js';
import { brush, handle } from '../../store/brush.js';
import type { Laying } from '../../store/laid.js';
import { shownPanel, view } from '../../store/store.js';
import { words } from '../../words.js';
import { idAt } from './beads.js';
import { beginStroke } from './stroke.js';

/** The loop that is being drawn around a part, millimetres on the bead face. */
export let loop: readonly FacePoint[] = [];

/** A finger with the tool that moves: inside the marked part it moves it, elsewhere it draws a loop around one. */
export function partPull(at: Spot): Pull {
  return at.stitch >= 0 && brush.peek().part.includes(at.stitch) ? movingPull(at) : loopPull(at);
}

function loopPull(at: Spot): Pull {
  loop = [at];
  return {
    move(to) {
      loop = [...loop, to];
      handle({});
    },
    end() {
      const { geometry } = shownPanel.peek()!;
      const inside = stitchesInLoop(geometry.centres, loop);
      loop = [];
      handle({ part: inside.length > 1 ? inside : withPatch(at.stitch) });
    },
    drop() {
      loop = [];
      handle({});
    },
  };
}

/** The marked part with the patch of a stitch, or without it where it is marked. */
export function withPatch(s: number): readonly number[] {
  const { part } = brush.peek();
  if (s < 0) return [];
  const { footprints, beadOf } = shownPanel.peek()!;
  const patch = patchAt(footprints, beadOf, s);
  const marked = new Set(part);
  const out = marked.has(s);
  for (const one of patch) {
    if (out) marked.delete(one);
    else marked.add(one);
  }
  return [...marked];
}

function movingPull(at: Spot): Pull {
  const stroke = beginStroke(words.peek().brush.steps.move);
  const { part } = brush.peek();
  let by = { xMm: 0, yMm: 0 };
  const panel = shownPanel.peek()!;
  const from = { beadOf: panel.beadOf, ids: idsOf(panel.beadOf.length) };
  return {
    move(to) {
      by = { xMm: to.xMm - at.xMm, yMm: to.yMm - at.yMm };
      stroke?.lay(layingsFor(from, part, by));
      handle({ part: partAt(part, by) });
    },
    end: () => stroke?.end(),
    drop() {
      stroke?.drop();
      handle({ part });
    },
  };
}

/** Moves the marked part, as one step. */
export function movePart(by: FacePoint): void {
  const { part } = brush.peek();
  const panel = shownPanel.peek();
  if (!panel || part.length === 0) return;
  const stroke = beginStroke(words.peek().brush.steps.move);
  stroke?.lay(layingsFor({ beadOf: panel.beadOf, ids: idsOf(panel.beadOf.length) }, part, by));
  stroke?.end();
  handle({ part: partAt(part, by) });
}

function idsOf(count: number): (string | undefined)[] {
  const { panel } = view.peek();
  return Array.from({ length: count }, (_, s) => idAt(panel, s));
}

/** Where the part lies when it has been moved. */
function partAt(part: readonly number[], by: FacePoint): number[] {
  const { geometry, footprints } = shownPanel.peek()!;
  const marked = new Set(part);
  const moved: number[] = [];
  for (let s = 0; s < geometry.count; s++) {
    const { [2 * s]: x, [2 * s + 1]: y } = geometry.centres;
    if (marked.has(footprints.owner(x - by.xMm, y - by.yMm))) moved.push(s);
  }
  return moved;
}

function layingsFor(
  from: { beadOf: Int16Array; ids: readonly (string | undefined)[] },
  part: readonly number[],
  by: FacePoint,
): Map<number, Laying> {
  // What is not decided cannot be laid.
  const first = new Map<number, string | undefined>();
  from.beadOf.forEach((index, s) => first.set(index, from.ids[s]));
  const changed = movedPart(shownPanel.peek()!, from.beadOf, part, by, brush.peek().copies);
  const layings = new Map<number, Laying>();
  for (const [s, index] of changed) {
    const id = first.get(index);
    if (id !== undefined) layings.set(s, id);
  }
  return layings;
}

import { batch } from '@preact/signals';
import type { Bead } from '../../../core/beads/bead.js';
import { inEveryWedge } from '../../../core/brush/places.js';
import { brush } from '../../store/brush.js';
import { chosenAt } from '../../store/chosen.js';
import { beadNamed, withLaid } from '../../store/laid.js';
import type { Laying } from '../../store/laid.js';
import { laidOver } from '../../store/paint.js';
import { chart, piece, pieces, view } from '../../store/store.js';

/** A stroke under way: however long it grows, it is one step. */
export interface Stroke {
  readonly panel: number;
  /** Lays these, and nothing else, since the stroke began. */
  lay(layings: ReadonlyMap<number, Laying>): void;
  end(): void;
  drop(): void;
}

/** Begins a stroke on the panel that is looked at. The screen follows it at once. */
export function beginStroke(name: string): Stroke | undefined {
  const before = chart.peek();
  if (!before) return undefined;
  const panel = Math.min(view.peek().panel, before.panels.length - 1);
  const from = piece.peek();
  const gesture = pieces.begin(name);
  const beadOfId = (id: string): Bead | undefined => {
    const known = beadNamed(from, id);
    const there = before.beads.find((one) => one.id === id);
    // A chart that was opened has beads that no palette of ours knows.
    return known ?? (there && { ...there, lab: there.lab ?? [50, 0, 0], filled: [] });
  };
  let wanted: ReadonlyMap<number, Laying> | undefined;
  const show = (layings: ReadonlyMap<number, Laying>): void => {
    const all = brush.peek().everyWedge ? everywhere(before.shape, layings) : layings;
    const ids = new Set([...all.values()].filter((id) => id !== undefined && id !== '.'));
    const beads = [...ids].flatMap((id) => beadOfId(id!) ?? []);
    const shown = new Map<number, string>();
    for (const [s, id] of all) {
      const lies = id ?? chosenAt(panel, s);
      if (lies !== undefined) shown.set(s, lies);
    }
    const on: ReadonlyMap<number, string>[] = [];
    on[panel] = shown;
    chart.value = laidOver(before, on, beadOfId);
    gesture.change(() => withLaid(from, panel, all, beads));
  };
  /** All that one event brought is laid at once. */
  const layWanted = (): void => {
    if (!wanted) return;
    const layings = wanted;
    wanted = undefined;
    batch(() => show(layings));
  };
  return {
    panel,
    lay(layings) {
      if (!wanted) queueMicrotask(layWanted);
      wanted = layings;
    },
    end() {
      layWanted();
      gesture.end();
    },
    drop() {
      wanted = undefined;
      gesture.drop();
      chart.value = before;
    },
  };
}

/** One stroke that is done as soon as it is begun. */
export function strokeOnce(name: string, layings: ReadonlyMap<number, Laying>): void {
  const stroke = beginStroke(name);
  stroke?.lay(layings);
  stroke?.end();
}

function everywhere(
  shape: { wedges: number; rounds: number },
  layings: ReadonlyMap<number, Laying>,
): Map<number, Laying> {
  const all = new Map<number, Laying>();
  for (const [s, id] of layings) for (const one of inEveryWedge(shape, s)) all.set(one, id);
  return all;
}

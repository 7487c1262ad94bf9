import { plainBead } from '../../core/beads/bead.js';
import type { Bead } from '../../core/beads/bead.js';
import { letters } from '../../core/pattern/marks.js';
import { countsOf } from './chart.js';
import type { Chart } from './chart.js';

/** Beads laid over a chart: those of an id have an index in `beads`, or come to it with a free letter. */
export function laidOver(
  made: Chart,
  layings: readonly ReadonlyMap<number, string>[],
  beadOfId: (id: string) => Bead | undefined,
): Chart {
  const beads = [...made.beads];
  const indexOf = new Map(beads.map(({ id }, n) => [id, n]));
  indexOf.set('.', -1);
  const indexFor = (id: string): number | undefined => {
    const known = indexOf.get(id);
    if (known !== undefined) return known;
    const bead = beadOfId(id);
    const letter = [...letters].find((one) => !beads.some((there) => there.letter === one));
    if (!bead || letter === undefined) return undefined;
    beads.push({ letter, ...plainBead(bead) });
    indexOf.set(id, beads.length - 1);
    return beads.length - 1;
  };
  const panels = made.panels.map((panel, n) => {
    const laid = layings[n];
    if (!laid || laid.size === 0) return panel;
    const beadOf = panel.beadOf.slice();
    for (const [s, id] of laid) if (s < beadOf.length) beadOf[s] = indexFor(id) ?? beadOf[s];
    return { ...panel, beadOf };
  });
  return { ...made, panels, beads, counts: countsOf(beads.length, panels) };
}

import { stitchesBefore, stitchesInRound } from '../../core/panel/shape.js';
import type { Chart, ChartPanel } from '../store/chart.js';
import { chart, shownPanel, view } from '../store/store.js';
import { figure, words } from '../words.js';

/** The panel as text, where it is wanted: a line a round, in working order. */
export function ByRound() {
  const say = words.value.table;
  const made = chart.value;
  const panel = shownPanel.value;
  if (!made || !panel || !view.value.asText) return null;
  return (
    <div class="by-round">
      <h3>{say.byRound}</h3>
      <ol tabIndex={0} aria-label={say.byRound}>
        {Array.from({ length: made.shape.rounds }, (_, n) => (
          <li key={n}>{roundLine(made, panel, n + 1)}</li>
        ))}
      </ol>
    </div>
  );
}

function roundLine({ shape, beads }: Chart, { beadOf }: ChartPanel, r: number): string {
  const say = words.value.table;
  const first = stitchesBefore(shape, r);
  const runs = runsOf(beadOf.subarray(first, first + stitchesInRound(shape, r)));
  const said = runs.map(({ index, n }) => {
    const bead = beads[index];
    return bead
      ? say.run({ n: figure(n), letter: bead.letter, name: bead.name })
      : say.bareRun(figure(n));
  });
  return say.roundLine({ r: figure(r), runs: said.join(', ') });
}

/** Equal neighbours of a round, counted. */
function runsOf(round: ArrayLike<number>): { index: number; n: number }[] {
  const runs: { index: number; n: number }[] = [];
  for (const index of Array.from(round)) {
    const last = runs.at(-1);
    if (last?.index === index) last.n++;
    else runs.push({ index, n: 1 });
  }
  return runs;
}

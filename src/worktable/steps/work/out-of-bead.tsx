import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { nearestBeads } from '../../../core/beads/nearest-beads.js';
import { stitchesBefore } from '../../../core/panel/shape.js';
import { lettersInWorkingOrder } from '../../../core/pattern/stitches.js';
import { recolour } from '../../../core/beads/recolour.js';
import { beadsInStock } from '../../../core/beads/amounts.js';
import { firstOpenRound, openStitches } from '../../../core/work/open-stitches.js';
import { progressOf } from '../../../core/work/progress.js';
import { isSaid } from '../../said.js';
import { beadNamed, withLaid } from '../../store/laid.js';
import { look, piece, pieces, tell, tellTrouble, view } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { BeadSpot } from './bead-spot.js';
import { panelName } from './panel-name.js';
import { progress, work, workPattern } from './work-store.js';

/** Beads offered in its place, the nearest first. */
const mostOffered = 8;

/** A colour runs out: what remains of it is worked in another bead. */
export function OutOfBead() {
  const say = words.value.mending;
  const pattern = workPattern.value;
  const { runsOut } = view.value;
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    // Whoever comes from the card of a heap stands before it at once.
    if (runsOut !== undefined) details.current?.scrollIntoView({ block: 'start' });
  }, []);
  const [round, setRound] = useState<number>();
  const [panel, setPanel] = useState<number | undefined>();
  const bead = pattern?.beads.find(({ id }) => id === runsOut);
  const from =
    round ?? (pattern && firstOpenRound(pattern, work.value!.at.panel, progress.value!)) ?? 1;
  const jars = useMemo(() => {
    if (!bead) return [];
    const others = piece.value.palette.beads.filter(({ id }) => id !== bead.id);
    return nearestBeads(bead, others, mostOffered);
  }, [bead, piece.value.palette]);
  if (!pattern) return null;
  const all = bead ? openOfAll().map((open, n) => toChange(n, open, bead.letter, from).length) : [];
  const needs = all.reduce(
    (sum, one, n) => (panel === undefined || n === panel ? sum + one : sum),
    0,
  );
  return (
    <details class="out-of-bead" ref={details} open={runsOut !== undefined}>
      <summary>{say.outTitle}</summary>
      <p class="small">{say.outHow}</p>
      <fieldset class="choice">
        <legend>{say.outWhich}</legend>
        <div class="bead-keys">
          {pattern.beads.map((one) => (
            <button
              key={one.letter}
              type="button"
              class="button"
              data-runs-out={one.letter}
              aria-pressed={one.id === runsOut}
              onClick={() => look({ runsOut: one.id })}
            >
              <BeadSpot bead={one} sizePx={30} />
              <b>{one.letter}</b>
              <span class="unseen">{one.name}</span>
            </button>
          ))}
        </div>
      </fieldset>
      <div class="which">
        <label>
          <span>{say.outFrom}</span>
          <input
            type="number"
            inputMode="numeric"
            data-out-from
            min={1}
            max={pattern.shape.rounds}
            value={from}
            onChange={(event) => {
              const wanted = Math.round(event.currentTarget.valueAsNumber);
              if (wanted >= 1 && wanted <= pattern.shape.rounds) setRound(wanted);
            }}
          />
        </label>
        {pattern.panels.length > 1 && (
          <label>
            <span>{say.outPanels}</span>
            <select
              data-out-panel
              value={panel ?? ''}
              onChange={({ currentTarget: { value } }) =>
                setPanel(value === '' ? undefined : Number(value))
              }
            >
              <option value="">{say.outAll}</option>
              {pattern.panels.map((_one, n) => (
                <option key={n} value={n}>
                  {panelName({ panel: n, copy: 1 }, true)}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
      {bead && needs === 0 && <p>{say.outNone}</p>}
      {bead && needs > 0 && (
        <>
          <p>{say.outNeeds(figure(needs))}</p>
          <ul class="jars-offered">
            {jars.map((other) => {
              const stock = beadsInStock(other);
              return (
                <li key={other.id}>
                  <button
                    type="button"
                    class="button"
                    data-take-instead={other.id}
                    onClick={() => {
                      takeInstead({ from: bead.id, to: other.id, round: from, panel });
                      look({ runsOut: undefined });
                    }}
                  >
                    <BeadSpot bead={other} sizePx={34} />
                    <span>
                      {other.name}
                      {stock !== undefined && (
                        <small class={stock < needs ? 'short' : ''}>
                          {say.outInJar(figure(stock))}
                        </small>
                      )}
                    </span>
                  </button>
                </li>
              );
            })}
          </ul>
        </>
      )}
    </details>
  );
}

/** Of each panel of the purse at hand, what hands have not done yet. */
function openOfAll(): Uint8Array[] {
  const now = work.peek()!;
  return now.pattern.panels.map((_one, panel) =>
    openStitches(now.pattern, panel, progressOf(now, { panel, copy: now.at.copy })),
  );
}

/** The stitches of a panel that change with a bead: of its letter, from a round on, and open. */
function toChange(panel: number, open: Uint8Array, letter: string, round: number): number[] {
  const { panels, shape } = work.peek()!.pattern;
  const first = stitchesBefore(shape, round);
  return [...lettersInWorkingOrder(panels[panel])].flatMap((mark, s) =>
    s >= first && mark === letter && open[s] ? [s] : [],
  );
}

/** Another bead from a round on, in one panel or in all; beads by their ids. */
interface Instead {
  readonly from: string;
  readonly to: string;
  readonly round: number;
  readonly panel: number | undefined;
}

/** Lays another bead by hand from a round on: in the piece, and in what is being worked; one step. */
export function takeInstead({ from, to, round, panel }: Instead): void {
  const say = words.peek().mending;
  const now = work.peek();
  const bead = beadNamed(piece.peek(), to);
  const old = now?.pattern.beads.find(({ id }) => id === from);
  if (!now || !old || !bead) return;
  const open = openOfAll();
  try {
    const { pattern } = recolour(now.pattern, {
      swap: [{ letter: old.letter, bead }],
      swapOnly: { fromRound: round, open, ...(panel !== undefined && { panel }) },
    });
    pieces.change(say.steps.runsOut, (was) => {
      let next = was;
      now.pattern.panels.forEach((_one, n) => {
        if (panel !== undefined && panel !== n) return;
        const layings = new Map(toChange(n, open[n], old.letter, round).map((s) => [s, to]));
        next = withLaid(next, n, layings, [bead]);
      });
      return was.work ? { ...next, work: { ...was.work, pattern } } : next;
    });
    tell(say.outDone({ from: old.name, to: bead.name, round: figure(round) }));
  } catch (error) {
    if (!isSaid(error)) throw error;
    tellTrouble(error);
  }
}

import { useEffect } from 'preact/hooks';
import { lab65ToHex } from '../../../core/colour/lab.js';
import { chart, look, view } from '../../store/store.js';
import { figure, words } from '../../words.js';

/** Areas that have a button of their own. */
const mostAreas = 4;

/** How much of its picture the panel that is looked at keeps; a tap shows what it lost. */
export function Stays() {
  const say = words.value.beads;
  const panels = chart.value?.settled?.report?.panels ?? [];
  const kept = panels[Math.min(view.value.panel, panels.length - 1)]?.kept;
  // Of another chart the stitches would be others.
  useEffect(() => () => look({ litArea: [] }), [kept]);
  if (kept?.edges === undefined) return null;
  const { edges, features, featuresKept, mergedAreas, lost } = kept;
  return (
    <>
      <h3>{say.stays}</h3>
      <p>
        {say.staysNow({
          // Rounded down: 100 % means all.
          edges: figure(Math.floor(100 * edges)),
          kept: figure(featuresKept),
          features: features > 0 ? figure(features) : undefined,
        })}{' '}
        {mergedAreas.length === 0 && say.noneTogether}
      </p>
      <div class="row">
        {mergedAreas.slice(0, mostAreas).map(({ lab, into, stitches, hour }) => (
          <Place
            key={stitches}
            stitches={stitches}
            hexes={[lab, into].map((one) => lab65ToHex(...one))}
            text={say.runTogether({ hour })}
          />
        ))}
        {lost.length > 0 && <Place stitches={lost} hexes={[]} text={say.lost} />}
      </div>
      {mergedAreas.length + lost.length > 0 && <p class="small">{say.staysHow}</p>}
    </>
  );
}

interface PlaceFacts {
  readonly stitches: readonly number[];
  /** Colours that the picture has there. */
  readonly hexes: readonly string[];
  readonly text: string;
}

/** Lights up where it is on the panel, and again lets it go. */
function Place({ stitches, hexes, text }: PlaceFacts) {
  const lit = view.value.litArea === stitches;
  return (
    <button
      type="button"
      class="button dot"
      data-lost={stitches.length}
      aria-pressed={lit}
      onClick={() => look({ litArea: lit ? [] : stitches, litBead: undefined, card: undefined })}
    >
      {hexes.map((hex, n) => (
        <span key={n} class="spot" style={{ background: hex }} />
      ))}
      <span>{text}</span>
    </button>
  );
}

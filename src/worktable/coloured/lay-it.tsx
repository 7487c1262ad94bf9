import { useEffect, useMemo, useState } from 'preact/hooks';
import { bare, undecided } from '../../core/beads/bead.js';
import { panelGeometry } from '../../core/panel/geometry.js';
import { panelLook } from '../keep/shelf-look.js';
import { Icon } from '../parts/icon.js';
import { isSaid } from '../said.js';
import { BeadSpot } from '../steps/work/bead-spot.js';
import { figure, words } from '../words.js';
import { beadOf, lay, sheet, white } from './sheet.js';

/** What was read, what its white cells become, and the way to the table. */
export function LayIt() {
  const say = words.value.coloured;
  const { reader } = sheet.value!;
  const { litUnevenly, stitches } = reader.read.report;
  const [trouble, setTrouble] = useState('');
  const open = beadOf.value.reduce((sum, bead) => sum + (bead === undecided ? 1 : 0), 0);
  return (
    <div class="lay-it">
      <Look />
      <div class="ask">
        <h3>{say.done}</h3>
        <p>{say.counts({ coloured: figure(stitches - open), white: figure(open) })}</p>
        {litUnevenly && <p class="said trouble">{say.uneven}</p>}
        {reader.read.unlikely && <p class="said trouble">{say.many}</p>}
        <Found />
        {open > 0 && <White />}
        {trouble && (
          <p class="said trouble" role="alert">
            {trouble}
          </p>
        )}
        <button
          type="button"
          class="button main"
          data-form="lay"
          onClick={() => {
            try {
              lay();
            } catch (error) {
              if (!isSaid(error)) throw error;
              setTrouble(words.peek().brush.noLetter);
            }
          }}
        >
          <Icon name="straighten" />
          <span>{say.lay}</span>
        </button>
      </div>
    </div>
  );
}

/** How often each bead is there, most used first, beside how it looks on the paper. */
function Found() {
  const { beads, reader } = sheet.value!;
  const counts = new Map<number, number>();
  for (const bead of beadOf.value) if (bead >= 0) counts.set(bead, (counts.get(bead) ?? 0) + 1);
  const onPaper = new Map(reader.read.report.groups.map(({ id, readHex }) => [id, readHex]));
  return (
    <ul class="found">
      {[...counts]
        .sort(([a, m], [b, n]) => n - m || a - b)
        .map(([bead, count]) => {
          const { id, name } = beads[bead];
          return (
            <li key={id}>
              <span class="crayon" style={{ background: onPaper.get(id) ?? 'none' }} />
              <BeadSpot bead={beads[bead]} sizePx={32} />
              <span>{name}</span>
              <b>{figure(count)}</b>
            </li>
          );
        })}
    </ul>
  );
}

function White() {
  const say = words.value.coloured;
  const { beads, reader } = sheet.value!;
  // White beads are what white paper mostly stands for.
  const lightest = beads.reduce((best, { lab }, n) => (lab[0] > beads[best].lab[0] ? n : best), 0);
  const offered = [...new Set([lightest, ...reader.read.found])];
  const choices = [
    { bead: undecided, name: say.whiteOpen },
    { bead: bare, name: words.value.picture.bare },
    ...offered.map((bead) => ({ bead, name: beads[bead].name })),
  ];
  return (
    <fieldset class="choice">
      <legend>{say.whiteAsk}</legend>
      <div class="row">
        {choices.map(({ bead, name }) => (
          <button
            key={bead}
            type="button"
            class="button dot"
            data-white={bead < 0 ? (bead === bare ? 'bare' : 'open') : beads[bead].id}
            aria-pressed={white.value === bead}
            onClick={() => (white.value = bead)}
          >
            {bead < 0 ? <span class="spot none" /> : <BeadSpot bead={beads[bead]} sizePx={24} />}
            <span>{name}</span>
          </button>
        ))}
      </div>
      <p class="small">{say.whiteHow}</p>
    </fieldset>
  );
}

/** The panel as it will lie on the table. */
function Look() {
  const { blank, beads } = sheet.value!;
  const [address, setAddress] = useState<string>();
  const of = beadOf.value;
  const geometry = useMemo(
    () => panelGeometry(blank.shape, { startDegrees: blank.panels[0].startDegrees }),
    [blank],
  );
  useEffect(() => {
    let made: string | undefined;
    let gone = false;
    const shown = of.map((bead) => (bead === undecided ? white.value : bead));
    void panelLook(geometry, shown, beads, 480).then((png) => {
      if (png && !gone) setAddress((made = URL.createObjectURL(png)));
    });
    return () => {
      gone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [of, white.value]);
  return <div class="look">{address && <img src={address} alt="" />}</div>;
}

import { useEffect, useState } from 'preact/hooks';
import { wishLimits } from '../../../core/pattern/wish-limits.js';
import { mistakenPairs } from '../../../core/beads/mistaken.js';
import { ActionButton } from '../../parts/action-button.js';
import { Choice } from '../../parts/choice.js';
import { Icon } from '../../parts/icon.js';
import { NumberField } from '../../parts/number-field.js';
import { setWanted } from '../../mat/bead-wishes.js';
import type { Piece } from '../../store/piece.js';
import { chart, piece } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { BeadTable } from './bead-table.js';
import { Jars } from './jars.js';
import { Stays } from './stays.js';
import { keptPalettes, layPalette, paletteTitle, readKeptPalettes } from './palettes.js';

const wished =
  (part: (value: number) => Partial<Piece['wish']>) => (now: Piece, value: number) => ({
    ...now,
    wish: { ...now.wish, ...part(value) },
  });

/** A share as it is shown here. */
const percent = ({ least, most }: { least: number; most: number }) => ({
  least: 100 * least,
  most: 100 * most,
});

/** The card of the step Beads. */
export function BeadsCard() {
  const say = words.value.beads;
  const { wish } = piece.value;
  useEffect(() => void readKeptPalettes(), []);
  return (
    <>
      <h2>{say.step}</h2>
      <div class="numbers">
        <NumberField
          name={say.colours}
          unit={say.coloursUnit}
          value={wish.colours}
          {...wishLimits.colours}
          step={1}
          done={say.steps.colours}
          put={wished((colours) => ({ colours: Math.round(colours) }))}
        />
      </div>
      <p class="small">{say.coloursHow}</p>
      <Mine />
      <Wanted />
      <h3>{say.amount}</h3>
      <div class="numbers">
        {wish.dither === undefined && (
          <NumberField
            name={say.tidy}
            unit={say.tidyUnit}
            value={wish.tidy}
            least={0}
            most={20}
            step={0.5}
            done={say.steps.tidy}
            put={wished((tidy) => ({ tidy }))}
          />
        )}
        {wish.dither !== undefined && (
          <NumberField
            name={say.mix}
            unit={say.tidyUnit}
            value={100 * wish.dither}
            {...percent(wishLimits.dither)}
            step={5}
            done={say.steps.mix}
            put={wished((percent) => ({ dither: percent / 100 }))}
          />
        )}
        <NumberField
          name={say.detail}
          unit={say.tidyUnit}
          value={100 * wish.detail}
          {...percent(wishLimits.detail)}
          step={5}
          done={say.steps.detail}
          put={wished((percent) => ({ detail: percent / 100 }))}
        />
        <NumberField
          name={say.edges}
          unit={say.tidyUnit}
          value={100 * wish.edges}
          {...percent(wishLimits.edges)}
          step={5}
          done={say.steps.edges}
          put={wished((percent) => ({ edges: percent / 100 }))}
        />
        <NumberField
          name={say.lift}
          unit={say.tidyUnit}
          value={100 * wish.lift}
          {...percent(wishLimits.lift)}
          step={5}
          done={say.steps.lift}
          put={wished((percent) => ({ lift: percent / 100 }))}
        />
        <NumberField
          name={say.ink}
          unit={say.inkUnit}
          value={100 * wish.darkCover}
          least={5}
          most={50}
          step={1}
          done={say.steps.ink}
          put={wished((percent) => ({ darkCover: percent / 100 }))}
        />
      </div>
      <p class="small">
        {wish.dither === undefined ? say.tidyHow : say.mixHow} {say.detailHow} {say.edgesHow}{' '}
        {say.liftHow} {say.inkHow}
      </p>
      <div class="row">
        <ActionButton id="mix" />
        <ActionButton id="stock" />
      </div>
      <p class="small">{say.stockHow}</p>
      <Stays />
      <Alike />
    </>
  );
}

function Mine() {
  const say = words.value.beads;
  const [typing, setTyping] = useState(false);
  const { palette } = piece.value;
  return (
    <>
      <h3>{say.mine}</h3>
      <p>{say.now({ name: paletteTitle(palette.name), n: figure(palette.beads.length) })}</p>
      <Choice name={say.oursNote} of={['palette-drawers', 'palette-harbour', 'palette-pebbles']} />
      {keptPalettes.value.length > 0 && (
        <div class="row">
          {keptPalettes.value.map((one) => (
            <button
              key={one.name}
              type="button"
              class="button"
              aria-pressed={one.name === palette.name}
              onClick={() => layPalette(one)}
            >
              <Icon name="beads" />
              <span>{paletteTitle(one.name)}</span>
            </button>
          ))}
        </div>
      )}
      <div class="row">
        <ActionButton id="open-palette" />
        <button
          type="button"
          class="button"
          aria-expanded={typing}
          onClick={() => setTyping(!typing)}
        >
          <Icon name="pencil" />
          <span>{words.value.actions['type-beads']}</span>
        </button>
        <ActionButton id="photo-jars" />
        <ActionButton id="save-palette" look="quiet" />
      </div>
      <p class="small">
        {say.openHow} {say.jarsHow}
      </p>
      <Jars />
      {typing && <BeadTable />}
    </>
  );
}

/** Beads that are always used, and never. */
function Wanted() {
  const say = words.value.beads;
  const { wish, palette } = piece.value;
  const lists = [
    { title: say.always, ids: wish.keep },
    { title: say.never, ids: wish.leaveOut },
  ];
  return (
    <>
      {lists.map(
        ({ title, ids }) =>
          ids.length > 0 && (
            <fieldset key={title} class="choice">
              <legend>{title}</legend>
              <div class="row">
                {ids.map((id) => {
                  const bead = palette.beads.find((one) => one.id === id);
                  return (
                    <button
                      key={id}
                      type="button"
                      class="button dot"
                      onClick={() => setWanted(id, 'free')}
                    >
                      {bead && <span class="spot" style={{ background: bead.hex }} />}
                      <span>{bead?.name ?? id}</span>
                      <Icon name="close" />
                    </button>
                  );
                })}
              </div>
            </fieldset>
          ),
      )}
    </>
  );
}

/** Beads on the mat that are easily mistaken for one another, by whose eyes. */
function Alike() {
  const say = words.value.beads;
  const beads = chart.value?.beads ?? [];
  const pairs = mistakenPairs(beads);
  const nameOf = (letter: string) =>
    `${letter} ${beads.find((bead) => bead.letter === letter)?.name ?? ''}`;
  return (
    <>
      <h3>{say.alike}</h3>
      {pairs.length === 0 ? (
        <p>{say.noneAlike}</p>
      ) : (
        <>
          <ul class="alike">
            {pairs.slice(0, 8).map(({ sight, letters: [one, other] }) => (
              <li key={`${sight} ${one} ${other}`}>
                {say.alikePair({
                  one: nameOf(one),
                  other: nameOf(other),
                  how: say.alikeTo[sight],
                })}
              </li>
            ))}
          </ul>
          <p class="small">{say.alikeHow}</p>
        </>
      )}
    </>
  );
}

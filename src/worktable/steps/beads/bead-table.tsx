import type { Bead } from '../../../core/beads/bead.js';
import { hexToLab65 } from '../../../core/colour/lab.js';
import { Icon } from '../../parts/icon.js';
import { piece } from '../../store/store.js';
import { words } from '../../words.js';
import { editBeads } from './palettes.js';

const replaced = (id: string, part: Partial<Bead>) =>
  editBeads((beads) => beads.map((one) => (one.id === id ? { ...one, ...part } : one)));

/** The palette bead by bead: colour, name and grams can be typed, beads added and taken out. */
export function BeadTable() {
  const say = words.value.beads;
  const { beads, diameterMm } = piece.value.palette;
  return (
    <>
      <table class="bead-table" aria-label={say.table}>
        <thead>
          <tr>
            <th scope="col">{say.colourHead}</th>
            <th scope="col">{say.nameHead}</th>
            <th scope="col">{say.gramsHead}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {beads.map(({ id, name, hex, grams }) => (
            <tr key={id}>
              <td>
                <input
                  type="color"
                  value={hex}
                  aria-label={say.colourOf(name)}
                  onChange={(event) => {
                    const wanted = event.currentTarget.value;
                    replaced(id, { hex: wanted, lab: hexToLab65(wanted) });
                  }}
                />
              </td>
              <td>
                <input
                  value={name}
                  maxLength={60}
                  aria-label={say.nameOf(name)}
                  onChange={(event) => {
                    const wanted = event.currentTarget.value.trim();
                    if (wanted) replaced(id, { name: wanted });
                  }}
                />
              </td>
              <td>
                <input
                  type="number"
                  min="0"
                  step="0.5"
                  value={grams ?? ''}
                  aria-label={say.gramsOf(name)}
                  onChange={(event) => {
                    const typed = event.currentTarget.valueAsNumber;
                    const { grams: _grams, ...rest } = beads.find((one) => one.id === id)!;
                    const known = Number.isFinite(typed) ? { ...rest, grams: typed } : rest;
                    editBeads((all) => all.map((one) => (one.id === id ? known : one)));
                  }}
                />
              </td>
              <td>
                <button
                  type="button"
                  class="button quiet"
                  aria-label={say.takeOut(name)}
                  disabled={beads.length < 2}
                  onClick={() => editBeads((all) => all.filter((one) => one.id !== id))}
                >
                  <Icon name="close" />
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <button
        type="button"
        class="button"
        onClick={() => editBeads((all) => [...all, newBead(all, diameterMm, say.newBead)])}
      >
        <Icon name="plus" />
        <span>{words.value.actions['add-bead']}</span>
      </button>
    </>
  );
}

function newBead(all: readonly Bead[], diameterMm: number, name: string): Bead {
  const ids = new Set(all.map(({ id }) => id));
  let n = all.length + 1;
  while (ids.has(`my-${n}`)) n++;
  const hex = '#8a8a8a';
  const first = all[0];
  return {
    id: `my-${n}`,
    name: `${name} ${n}`,
    hex,
    lab: hexToLab65(hex),
    filled: ['id'],
    diameterMm,
    ...(first?.size !== undefined && { size: first.size }),
    ...(first?.beadsPerGram !== undefined && { beadsPerGram: first.beadsPerGram }),
  };
}

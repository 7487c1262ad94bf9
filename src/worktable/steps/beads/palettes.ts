import { signal } from '@preact/signals';
import type { Bead } from '../../../core/beads/bead.js';
import { paletteCsv } from '../../../core/beads/palette/palette-csv.js';
import { readPalette } from '../../../core/beads/palette/read-palette.js';
import { database } from '../../keep/database.js';
import { ourPalette } from '../../sample/sample.js';
import { isSaid } from '../../said.js';
import type { PiecePalette } from '../../store/piece.js';
import { piece, pieces, tell, tellTrouble } from '../../store/store.js';
import { figure, words } from '../../words.js';
import harbour from '../../../../palettes/harbour.csv?url';
import pebbles from '../../../../palettes/pebbles.csv?url';

/** Palettes of the maker's, kept in this browser. */
export const keptPalettes = signal<readonly PiecePalette[]>([]);

const addresses = { harbour, pebbles };

/** What a palette is called: ours as its button says it, the maker's as its file without the ending. */
export function paletteTitle(file: string): string {
  const name = file.replace(/\.[^.]*$/, '');
  const ours = name === 'drawers' || name === 'harbour' || name === 'pebbles';
  return ours && file.endsWith('.csv') ? words.value.actions[`palette-${name}`] : name;
}

/** Lays another palette on the table, as one step. */
export function layPalette(palette: PiecePalette): void {
  pieces.change(words.peek().beads.steps.palette, (now) => ({ ...now, palette }));
}

/** One of ours. */
export async function layOurs(name: 'drawers' | 'harbour' | 'pebbles'): Promise<void> {
  if (name === 'drawers') {
    layPalette(ourPalette());
    return;
  }
  const file = `${name}.csv`;
  const { beads, diameterMm } = readPalette(await (await fetch(addresses[name])).text(), file);
  layPalette({ name: file, beads, diameterMm });
}

/** Reads a file of beads and lays it on the table; it stays in this browser. */
export async function openPalette(file: File): Promise<void> {
  try {
    const { beads, diameterMm } = readPalette(await file.text(), file.name);
    const palette = { name: file.name, beads, diameterMm };
    layPalette(palette);
    await keepPalette(palette);
    const say = words.peek().beads;
    tell(say.read({ name: file.name, n: figure(beads.length) }));
  } catch (error) {
    if (!isSaid(error)) console.error(error);
    tellTrouble(error);
  }
}

/** Keeps a palette of the maker's under its name. */
export async function keepPalette(palette: PiecePalette): Promise<void> {
  try {
    await (await database()).put('palettes', palette);
    await readKeptPalettes();
  } catch {
    // Where the browser keeps nothing, the piece itself still has it.
  }
}

export async function readKeptPalettes(): Promise<void> {
  try {
    keptPalettes.value = await (await database()).getAll('palettes');
  } catch {
    keptPalettes.value = [];
  }
}

/** The palette on the table as a file that the command line reads. */
export const paletteFile = (): Blob =>
  new Blob([paletteCsv(piece.peek().palette.beads)], { type: 'text/csv' });

/** The palette with its beads changed by the maker's own hand; from then on it is theirs. */
export function editBeads(edit: (beads: readonly Bead[]) => readonly Bead[]): void {
  const say = words.peek().beads;
  pieces.change(say.steps.bead, (now) => {
    const { name, beads, diameterMm } = now.palette;
    const ours = /^(drawers|harbour|pebbles)\.csv$/.test(name);
    return {
      ...now,
      palette: { name: ours ? `${say.ownName}.csv` : name, beads: edit(beads), diameterMm },
    };
  });
  void keepPalette(piece.peek().palette);
}

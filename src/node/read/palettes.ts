import { readFile } from 'node:fs/promises';

/** Our mixed palette, taken when the maker names no beads: its text and its name. */
export async function defaultPalette(): Promise<[text: string, where: string]> {
  const file = new URL('../../../palettes/drawers.csv', import.meta.url);
  return [await readFile(file, 'utf8'), 'drawers.csv'];
}

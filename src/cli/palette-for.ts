import { decodePalette } from '../core/palette/decode.js';
import { readPalette } from '../core/palette/read-palette.js';
import type { Palette } from '../core/palette/read-palette.js';
import { defaultPalette } from '../node/palettes.js';
import { readBytes } from '../node/read-bytes.js';

/** The palette that `--beads` and `--size` ask for, or our own. */
export async function paletteFor(options: { beads?: string; size?: string }): Promise<Palette> {
  const size = options.size === undefined ? {} : { size: options.size };
  if (options.beads === undefined) return readPalette(...(await defaultPalette()), size);
  const bytes = await readBytes(options.beads);
  return readPalette(decodePalette(bytes), options.beads, size);
}

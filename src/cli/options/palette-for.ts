import { decodePalette } from '../../core/beads/palette/decode.js';
import { readPalette } from '../../core/beads/palette/read-palette.js';
import type { Palette } from '../../core/beads/palette/read-palette.js';
import { defaultPalette } from '../../node/read/palettes.js';
import { readBytes } from '../../node/read/read-bytes.js';

/** The palette that `--beads` and `--size` ask for, or our own. */
export async function paletteFor(options: { beads?: string; size?: string }): Promise<Palette> {
  const size = options.size === undefined ? {} : { size: options.size };
  if (options.beads === undefined) return readPalette(...(await defaultPalette()), size);
  const bytes = await readBytes(options.beads);
  return readPalette(decodePalette(bytes), options.beads, size);
}

/** What `chart` needs besides its options: loaded while the picture is decoded. */
export { useFrom } from '../options/from-option.js';
export { panelWish, titleFrom } from '../options/chart-wish.js';
export { paletteFor } from '../options/palette-for.js';
export { useSwatch } from '../options/swatch-option.js';
export { runFolderCommand } from './folder-command.js';

/**
 * What the library does with files, on Node only: reading pictures, writing PNG and folders.
 *
 * @module rondure/node
 */
export { blankFiles } from './output/blank-files.js';
export { readBytes } from './read/read-bytes.js';
export { readPicture } from './read/read-picture.js';
export { svgSecondsLimit } from './svg/draw-svg.js';
export { encodePng, rasteriseSvg } from './output/rasterise.js';
export { readPngText, withPngScale, withPngText } from '../core/pages/surface/png-text.js';
export { checkOutputFree, ourFiles, writeFolder } from './output/output-folder.js';
export { bundledFonts } from './font/fonts.js';
export { defaultPalette } from './read/palettes.js';
export type { Files } from './output/pattern-files.js';
export { patternFiles, patternKeyword } from './output/pattern-files.js';
export { patternTextIn, readPattern } from './read/read-pattern.js';
export type { FolderKind } from './output/output-folder.js';
export type { StopSignal } from './output/stop-signal.js';
export { cardFolder, sampleFiles } from './output/sample-files.js';

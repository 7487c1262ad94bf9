/**
 * What the library does with files, on Node only: reading pictures, writing PNG and folders.
 *
 * @module rondure/node
 */
export { blankFiles } from './blank-files.js';
export { byteLimit, readBytes } from './read-bytes.js';
export { readPicture } from './read-picture.js';
export { svgLongerSidePx, svgSecondsLimit } from './draw-svg.js';
export { pixelLimit } from './sharp.js';
export { sniff } from './sniff.js';
export type { OtherFormat, PictureFormat } from './sniff.js';
export { encodePng, rasteriseSvg } from './rasterise.js';
export { readPngText, withPngScale, withPngText } from './png-text.js';
export { checkOutputFree, ourFiles, writeFolder } from './output-folder.js';
export { bundledFonts } from './fonts.js';
export { defaultPalette } from './palettes.js';
export type { Files } from './pattern-files.js';
export { patternFiles, patternKeyword } from './pattern-files.js';
export { patternTextIn, readPattern } from './read-pattern.js';
export type { FolderKind } from './output-folder.js';
export { cardFolder, sampleFiles } from './sample-files.js';

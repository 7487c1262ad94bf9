/** Files larger than this are refused, so that a wrong name cannot fill the memory; bytes. */
export const byteLimit = 300e6;
/** The most pixels a picture may have; more is refused before any of them is decoded. */
export const pixelLimit = 64e6;
/**
 * Fewer where the decoder holds the whole picture beside what it gives: JPEG and PNG that come in
 * passes (12 bytes a pixel at most, measured), and AVIF (24).
 */
export const pixelLimitInPasses = 48e6;
export const pixelLimitAvif = 24e6;
/**
 * Fewer where one side is longer than any photograph's: a picture of one row takes 39 bytes a pixel
 * to lay out small, one of one column minutes (measured at 64 million).
 */
export const pixelLimitLong = 8e6;
export const longSidePx = 30_000;
/** SVG text longer than this is refused; millions of characters. */
export const svgLimitMegabytes = 25;
/** The longer side of a drawn SVG, whatever size it declares; pixels. */
export const svgLongerSidePx = 1600;

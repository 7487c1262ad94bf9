import sharp from 'sharp';

// Every picture is read once: a cache would only hold memory.
sharp.cache(false);

/** The most pixels a picture may have; more is refused before any of them is decoded. */
export const pixelLimit = 120e6;

export { sharp };

import sharp from 'sharp';

// Every picture is read once: a cache would only hold memory.
sharp.cache(false);

export { sharp };

import { linearToSrgb8, srgbToLinear } from '../../colour/srgb.js';
import { rememberedFor } from '../../remember.js';
import type { Picture } from '../picture.js';
import { isKnownOpaque } from './row-sums.js';

/**
 * The pixels laid over a ground in linear light, so that a half-transparent colour counts as the
 * blend that is seen. Opaque pixels are given back as they are; asked again for the same pixels on
 * the same ground, it gives the same.
 *
 * @param ground r, g, b, 0 to 255
 */
export const flattenedOn = rememberedFor(flattened);

function flattened(
  data: Picture['data'],
  ground: readonly [number, number, number],
): Picture['data'] {
  if (isKnownOpaque(data)) return data;
  // A Buffer’s own slice would share its bytes.
  const out = new Uint8Array(data);
  for (let p = 0; p < out.length; p += 4) {
    const share = data[p + 3] / 255;
    if (share === 1) continue;
    for (let c = 0; c < 3; c++) {
      const under = srgbToLinear[ground[c]];
      out[p + c] = linearToSrgb8(under + share * (srgbToLinear[data[p + c]] - under));
    }
    out[p + 3] = 255;
  }
  return out;
}

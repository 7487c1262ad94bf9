// Colours for benches: random palettes, and picture-like stitches (a sky that darkens, hills, flat
// patches, grain). Seeded, so that every run measures the same.
import { srgbToLab65 } from '../dist/core/colour/lab.js';

/** Uniform 0..1 from a linear congruential sequence. */
export function uniform(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** L, a, b of random sRGB colours; length 3·count. */
export function randomColours(count, seed) {
  const next = uniform(seed);
  const lab = new Float64Array(3 * count);
  const channel = () => Math.floor(256 * next());
  for (let k = 0; k < count; k++) lab.set(srgbToLab65(channel(), channel(), channel()), 3 * k);
  return lab;
}

/** L, a, b of `count` stitches of a made-up picture; length 3·count. */
export function pictureColours(count, seed) {
  const next = uniform(seed);
  const side = Math.ceil(Math.sqrt(count));
  const waves = Array.from({ length: 9 }, () => [9 * next(), 9 * next(), 6 * next()]);
  const patches = Array.from({ length: 5 }, () => Array.from({ length: 6 }, next));
  const lab = new Float64Array(3 * count);
  for (let k = 0; k < count; k++) {
    const [u, v] = [(k % side) / side, Math.floor(k / side) / side];
    const patch = patches.find(([x, y, size]) => Math.hypot(u - x, v - y) < 0.08 + size / 9);
    const rgb = [0, 1, 2].map((channel) => {
      const wave = waves.slice(3 * channel, 3 * channel + 3);
      const field = wave.reduce((sum, [p, q, r]) => sum + Math.sin(p * u + q * v + r), 0);
      const base = patch ? 255 * patch[3 + channel] : 128 + 42 * field;
      return Math.min(255, Math.max(0, Math.round(base + 24 * (next() - 0.5))));
    });
    lab.set(srgbToLab65(...rgb), 3 * k);
  }
  return lab;
}

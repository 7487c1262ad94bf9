import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { ciede2000, ciede2000Fast } from '../src/core/colour/ciede2000.js';
import { contrastRatio, inkOn } from '../src/core/colour/contrast.js';
import { formatHex, parseHex } from '../src/core/colour/hex.js';
import { hexToLab65, lab65ToHex, linearToLab65, srgbToLab65 } from '../src/core/colour/lab.js';
import { linearToSrgb8, srgbToLinear } from '../src/core/colour/srgb.js';
import { RondureError } from '../src/core/errors.js';

/**
 * G. Sharma, W. Wu, E. N. Dalal, Color Research & Application 30(1):21-30, 2005, Table 1:
 * L1, a1, b1, L2, a2, b2, ΔE00.
 */
const published = [
  [50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425],
  [50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615],
  [50, 2.8361, -74.02, 50, 0, -82.7485, 3.4412],
  [50, -1.3802, -84.2814, 50, 0, -82.7485, 1],
  [50, -1.1848, -84.8006, 50, 0, -82.7485, 1],
  [50, -0.9009, -85.5211, 50, 0, -82.7485, 1],
  [50, 0, 0, 50, -1, 2, 2.3669],
  [50, -1, 2, 50, 0, 0, 2.3669],
  [50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.001, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195],
  [50, 2.49, -0.001, 50, -2.49, 0.0012, 7.2195],
  [50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045],
  [50, -0.001, 2.49, 50, 0.001, -2.49, 4.8045],
  [50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461],
  [50, 2.5, 0, 50, 0, -2.5, 4.3065],
  [50, 2.5, 0, 73, 25, -18, 27.1492],
  [50, 2.5, 0, 61, -5, 29, 22.8977],
  [50, 2.5, 0, 56, -27, -3, 31.903],
  [50, 2.5, 0, 58, 24, 15, 19.4535],
  [50, 2.5, 0, 50, 3.1736, 0.5854, 1],
  [50, 2.5, 0, 50, 3.2972, 0, 1],
  [50, 2.5, 0, 50, 1.8634, 0.5757, 1],
  [50, 2.5, 0, 50, 3.2592, 0.335, 1],
  [60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644],
  [63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.263],
  [61.2901, 3.7196, -5.3901, 61.4292, 2.248, -4.962, 1.8731],
  [35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645],
  [22.7233, 20.0904, -46.694, 23.0331, 14.973, -42.5619, 2.0373],
  [36.4612, 47.858, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146],
  [90.8027, -2.0831, 1.441, 91.1528, -1.6435, 0.0447, 1.4441],
  [90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381],
  [6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377],
  [2.0776, 0.0795, -1.135, 0.9033, -0.0636, -0.5514, 0.9082],
];

/** Uniform 0..1 from a linear congruential sequence. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

describe('CIEDE2000', () => {
  it.each(published)('%f,%f,%f to %f,%f,%f is %f', (L1, a1, b1, L2, a2, b2, expected) => {
    for (const difference of [ciede2000, ciede2000Fast]) {
      expect(Math.abs(difference(L1, a1, b1, L2, a2, b2) - expected)).toBeLessThanOrEqual(5e-5);
      expect(Math.abs(difference(L2, a2, b2, L1, a1, b1) - expected)).toBeLessThanOrEqual(5e-5);
    }
  });

  it('agrees with culori on pairs far apart, close together, and near grey', () => {
    const reference = differenceCiede2000();
    const next = uniform(20);
    let textbookOff = 0;
    let fastOff = 0;
    for (let pair = 0; pair < 60_000; pair++) {
      const spread = [1, 0.05, 0.001][pair % 3];
      const chroma = pair % 5 === 0 ? 4 : 240;
      const one = [100 * next(), chroma * (next() - 0.5), chroma * (next() - 0.5)];
      const other =
        spread === 1
          ? [100 * next(), 240 * (next() - 0.5), 240 * (next() - 0.5)]
          : one.map((value) => value + spread * 100 * (next() - 0.5));
      const [L1, a1, b1] = one;
      const [L2, a2, b2] = other;
      const expected = reference(
        { mode: 'lab65', l: L1, a: a1, b: b1 },
        { mode: 'lab65', l: L2, a: a2, b: b2 },
      );
      textbookOff = Math.max(textbookOff, Math.abs(ciede2000(L1, a1, b1, L2, a2, b2) - expected));
      fastOff = Math.max(fastOff, Math.abs(ciede2000Fast(L1, a1, b1, L2, a2, b2) - expected));
    }
    expect(textbookOff).toBeLessThanOrEqual(1e-9);
    expect(fastOff).toBeLessThanOrEqual(1e-5);
  });

  it('agrees with culori all round the hue circle, in the blues above all, and at grey', () => {
    const reference = differenceCiede2000();
    let off = 0;
    // Not at a mean hue of exactly 0°, where the published formula itself jumps by about 1e-4.
    for (let hue = 0.25; hue < 360; hue += 0.5) {
      for (const apart of [0.3, 7, 40, 120, 170]) {
        for (const [c1, c2] of [
          [0, 60],
          [30, 90],
          [70, 72],
          [130, 60],
        ]) {
          const h1 = ((hue - apart / 2) * Math.PI) / 180;
          const h2 = ((hue + apart / 2) * Math.PI) / 180;
          const [a1, b1] = [c1 * Math.cos(h1), c1 * Math.sin(h1)];
          const [a2, b2] = [c2 * Math.cos(h2), c2 * Math.sin(h2)];
          const expected = reference(
            { mode: 'lab65', l: 40, a: a1, b: b1 },
            { mode: 'lab65', l: 45, a: a2, b: b2 },
          );
          off = Math.max(off, Math.abs(ciede2000Fast(40, a1, b1, 45, a2, b2) - expected));
          off = Math.max(off, Math.abs(ciede2000Fast(45, a2, b2, 40, a1, b1) - expected));
        }
      }
    }
    expect(off).toBeLessThanOrEqual(1e-5);
  });

  it('is exactly 0 between equal colours and exactly symmetric', () => {
    const next = uniform(3);
    for (let turn = 0; turn < 2000; turn++) {
      const p = [100 * next(), 200 * (next() - 0.5), 200 * (next() - 0.5)] as const;
      const q = [100 * next(), 200 * (next() - 0.5), 200 * (next() - 0.5)] as const;
      expect(ciede2000Fast(...p, ...p)).toBe(0);
      expect(ciede2000Fast(...p, ...q)).toBe(ciede2000Fast(...q, ...p));
    }
    expect(ciede2000Fast(0, 0, 0, 100, 0, 0)).toBeCloseTo(100, 9);
  });
});

describe('sRGB', () => {
  // IEC 61966-2-1, worked out to 20 digits.
  it.each([
    [0, 0],
    [1, 0.000303526983548837],
    [10, 0.003035269835488374],
    [11, 0.003346535763899158],
    [12, 0.003676507324047434],
    [50, 0.03189603307301],
    [55, 0.03820437159535],
    [255, 1],
  ])('code %i is %f in linear light', (code, linear) => {
    expect(Math.abs(srgbToLinear[code] - linear)).toBeLessThanOrEqual(1e-12);
  });

  it('codes come back, and the mean of black and white is 188', () => {
    for (let code = 0; code < 256; code++) expect(linearToSrgb8(srgbToLinear[code])).toBe(code);
    // IEC 61966-2-1, inverse: 1.055 · 0.5^(1/2.4) - 0.055 = 187.52 / 255.
    expect(linearToSrgb8(0.5)).toBe(188);
    expect([-1, 2, NaN, Infinity].map(linearToSrgb8)).toEqual([0, 255, 0, 255]);
  });

  it('rounds to the nearest code as the inverse formula does', () => {
    const next = uniform(9);
    for (let turn = 0; turn < 5000; turn++) {
      const linear = next() ** 3;
      const coded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
      // Where the published constants leave a seam the two differ by far less than this.
      if (Math.abs(((coded * 255) % 1) - 0.5) < 1e-4) continue;
      expect(linearToSrgb8(linear)).toBe(Math.round(coded * 255));
    }
  });
});

describe('Lab under D65', () => {
  // colorjs.io 0.7.1 (culori 4.0.2 agrees to 5.7e-14).
  it.each([
    ['#000000', 0, 0, 0],
    ['#ffffff', 100, 0, 0],
    ['#ff0000', 53.23712, 80.09011, 67.20326],
    ['#00ff00', 87.73552, -86.1816, 83.18662],
    ['#0000ff', 32.30087, 79.19527, -107.85547],
    ['#00ffff', 91.11475, -48.07889, -14.12899],
    ['#ffff00', 97.13856, -21.55997, 94.48384],
    ['#808080', 53.58501, 0, 0],
    ['#010101', 0.27417, 0, 0],
    ['#735244', 38.01621, 11.79475, 13.66386],
    ['#d67e2c', 61.13448, 28.09948, 56.13142],
    ['#383d96', 30.35167, 26.43924, -49.66827],
    ['#0885a1', 51.15066, -19.72316, -23.37171],
    ['#f3f3f2', 95.81674, -0.17626, 0.48062],
  ])('%s is %f %f %f', (hex, L, a, b) => {
    const got = hexToLab65(hex);
    [L, a, b].forEach((value, k) => expect(Math.abs(got[k] - value)).toBeLessThanOrEqual(6e-6));
    expect(lab65ToHex(...got)).toBe(hex);
    expect(lab65ToHex(L, a, b)).toBe(hex);
  });

  it('is rounded to 1e-6, grey has no hue, and every path agrees', () => {
    for (let code = 0; code < 256; code++) {
      const [L, a, b] = srgbToLab65(code, code, code);
      expect([a, b]).toEqual([0, 0]);
      expect(L).toBe(Number(L.toFixed(6)));
      const linear = srgbToLinear[code];
      expect(linearToLab65(linear, linear, linear)).toEqual([L, a, b]);
    }
  });

  it('comes back as the same hex, and clamps what sRGB cannot show', () => {
    const next = uniform(7);
    for (let turn = 0; turn < 3000; turn++) {
      const hex = formatHex(255 * next(), 255 * next(), 255 * next());
      expect(lab65ToHex(...hexToLab65(hex))).toBe(hex);
    }
    expect(lab65ToHex(140, 0, 0)).toBe('#ffffff');
    expect(lab65ToHex(-5, 0, 0)).toBe('#000000');
    expect(lab65ToHex(50, 200, 0)).toMatch(/^#ff00/);
  });
});

describe('hex', () => {
  it('is read with and without #, short and long, in any case', () => {
    for (const text of ['#d9b36a', 'D9B36A', ' #D9b36a ']) {
      expect(parseHex(text)).toEqual([0xd9, 0xb3, 0x6a]);
    }
    expect(parseHex('#0fA')).toEqual([0, 255, 170]);
    for (const text of ['', '#', '12', '#1234', '#12345g', '1234567', 'rgb(1,2,3)', '##123456']) {
      expect(parseHex(text)).toBeUndefined();
    }
  });

  it('is written in small letters, six digits', () => {
    expect(formatHex(217, 179, 106)).toBe('#d9b36a');
    expect(formatHex(-3, 4.4, 300)).toBe('#0004ff');
  });

  it('that is no colour is refused by name', () => {
    for (const use of [() => hexToLab65('barley'), () => inkOn('barley')]) {
      expect(use).toThrow(RondureError);
      expect(use).toThrow(/barley/);
    }
  });
});

describe('contrast', () => {
  // W3C WCAG 2.1, "contrast ratio"; figures as in the tests of color.js (to 1e-4, its luminance
  // weights are not rounded) and, for the greys, as many public accessibility pages print them.
  it.each([
    ['#000000', '#ffffff', 21, 1e-9],
    ['#ffffff', '#ffffff', 1, 1e-9],
    ['#ffffee', '#ffffff', 1.01007, 1e-4],
    ['#afbaae', '#ffffff', 2.008125, 1e-4],
    ['#8b9986', '#ffffff', 3.000644, 1e-4],
    ['#776655', '#ffffff', 5.502984, 1e-4],
    ['#767676', '#ffffff', 4.54, 5e-3],
    ['#777777', '#ffffff', 4.48, 5e-3],
    ['#999999', '#ffffff', 2.85, 5e-3],
    ['#595959', '#ffffff', 7, 5e-3],
  ])('%s on %s is %f', (one, other, ratio, within) => {
    expect(Math.abs(contrastRatio(one, other) - ratio)).toBeLessThanOrEqual(within);
    expect(contrastRatio(other, one)).toBe(contrastRatio(one, other));
  });

  it('the ink on a bead is the one that reads better', () => {
    expect(inkOn('#ffffff')).toBe('#000000');
    expect(inkOn('#000')).toBe('#ffffff');
    // Equal contrast lies at luminance 0.1791, between greys 117 and 118 (WCAG 2.1, worked out).
    expect(inkOn('#757575')).toBe('#ffffff');
    expect(inkOn('#767676')).toBe('#000000');
  });
});

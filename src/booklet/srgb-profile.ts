/**
 * An ICC profile of sRGB (ICC.1:2010, version 4.3; IEC 61966-2-1 for the curve), so that a PDF says
 * what its colours mean. Primaries are those of sRGB adapted to D50 by the Bradford transform.
 */
export function srgbProfile(): Uint8Array {
  const d50 = [0.9642, 1, 0.8249];
  const curve = parametric([2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045]);
  const tags: [string, Uint8Array][] = [
    ['desc', localised('sRGB')],
    ['cprt', localised('No copyright, use freely')],
    ['wtpt', xyz(d50)],
    ['chad', bradford],
    ['rXYZ', xyz([0.436_065_67, 0.222_488_4, 0.013_916_02])],
    ['gXYZ', xyz([0.385_147_09, 0.716_873_17, 0.097_076_42])],
    ['bXYZ', xyz([0.143_066_41, 0.060_607_91, 0.714_096_07])],
    ['rTRC', curve],
    ['gTRC', curve],
    ['bTRC', curve],
  ];
  const head = 128 + 4 + 12 * tags.length;
  const places = new Map<Uint8Array, number>();
  let end = head;
  for (const [, data] of tags) {
    if (places.has(data)) continue;
    places.set(data, end);
    end += data.length + ((4 - (data.length % 4)) % 4);
  }
  const bytes = new Uint8Array(end);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, end);
  view.setUint32(8, 0x04300000);
  text(bytes, 12, 'mntrRGB XYZ ');
  [2000, 1, 1, 0, 0, 0].forEach((part, n) => view.setUint16(24 + 2 * n, part));
  text(bytes, 36, 'acsp');
  d50.forEach((value, n) => view.setInt32(68 + 4 * n, fixed(value)));
  view.setUint32(128, tags.length);
  tags.forEach(([name, data], n) => {
    const at = 132 + 12 * n;
    text(bytes, at, name);
    view.setUint32(at + 4, places.get(data)!);
    view.setUint32(at + 8, data.length);
    bytes.set(data, places.get(data));
  });
  return bytes;
}

/** From D65 to D50 (ICC.1:2010, annex E). */
const bradford = sf32([
  1.047_882_08, 0.022_918_7, -0.050_216_67, 0.029_586_79, 0.990_478_52, -0.017_074_58,
  -0.009_231_57, 0.015_075_68, 0.751_678_47,
]);

/** 15 bits before the point, 16 after it. */
function fixed(value: number): number {
  return Math.round(value * 65536);
}

function text(bytes: Uint8Array, at: number, words: string): void {
  for (let n = 0; n < words.length; n++) bytes[at + n] = words.charCodeAt(n);
}

function numbers(type: string, values: readonly number[], before = 8): Uint8Array {
  const bytes = new Uint8Array(before + 4 * values.length);
  const view = new DataView(bytes.buffer);
  text(bytes, 0, type);
  values.forEach((value, n) => view.setInt32(before + 4 * n, fixed(value)));
  return bytes;
}

function xyz(values: readonly number[]): Uint8Array {
  return numbers('XYZ ', values);
}

function sf32(values: readonly number[]): Uint8Array {
  return numbers('sf32', values);
}

/** Y = (aX + b)^g where X ≥ d, else cX. */
function parametric(values: readonly number[]): Uint8Array {
  const bytes = numbers('para', values, 12);
  new DataView(bytes.buffer).setUint16(8, 3);
  return bytes;
}

function localised(words: string): Uint8Array {
  const bytes = new Uint8Array(28 + 2 * words.length);
  const view = new DataView(bytes.buffer);
  text(bytes, 0, 'mluc');
  view.setUint32(8, 1);
  view.setUint32(12, 12);
  text(bytes, 16, 'enUS');
  view.setUint32(20, 2 * words.length);
  view.setUint32(24, 28);
  for (let n = 0; n < words.length; n++) view.setUint16(28 + 2 * n, words.charCodeAt(n));
  return bytes;
}

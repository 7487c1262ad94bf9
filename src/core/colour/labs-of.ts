import { putLab65 } from './lab.js';

const kept = new WeakMap<Float64Array, Float64Array>();

/**
 * L, a, b (D65) of a list of linear r, g, b, which nobody may change afterwards: they are kept as long as
 * the list lives. A colour that follows its like is not worked out again: in a drawing most do.
 */
export function labsOf(linear: Float64Array): Float64Array {
  const known = kept.get(linear);
  if (known) return known;
  const labs = new Float64Array(linear.length);
  let [red, green, blue] = [NaN, NaN, NaN];
  for (let at = 0; at < linear.length; at += 3) {
    const r = linear[at];
    const g = linear[at + 1];
    const b = linear[at + 2];
    if (r === red && g === green && b === blue) {
      for (let c = at; c < at + 3; c++) labs[c] = labs[c - 3];
      continue;
    }
    putLab65(r, g, b, labs, at);
    red = r;
    green = g;
    blue = b;
  }
  kept.set(linear, labs);
  return labs;
}

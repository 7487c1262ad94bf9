import { expect, test } from 'vitest';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { completeShape } from '../src/core/panel/shape.js';
import { keepLight } from '../src/core/pages/worked/kept-light.js';
import { recolourBeads } from '../src/core/pages/worked/recolour-beads.js';
import { renderWorked } from '../src/core/pages/worked/worked.js';

const looks = [
  { hex: '#cc2a2b', finish: 'opaque' },
  { hex: '#f7f5ee', finish: 'matte' },
  { hex: '#15284a', finish: 'silver-lined' },
  { hex: '#b8892e', finish: 'metallic' },
  { hex: '#9cc4b2', finish: 'pearl' },
];

/** Numbers that repeat (a linear congruence of Numerical Recipes). */
function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}

for (const [name, rounds, widthPx, more, withBare] of [
  ['a polygon', 14, 420, {}, false],
  ['bare stitches, a circle', 11, 333, { increase: 'middle' as const }, true],
  ['joined rounds, small', 25, 301, { construction: 'joined' as const }, true],
] as const) {
  test(`recoloured beads are the worked picture, byte for byte: ${name}`, () => {
    const geometry = panelGeometry(
      completeShape({ wedges: 7, rounds, beadDiameterMm: 2.1, ...more }),
    );
    const kept = recolourBeads(geometry, keepLight(geometry, widthPx, withBare));
    const next = numbers(rounds);
    const beadOf = new Int16Array(geometry.count);
    for (let state = 0; state < 6; state++) {
      beadOf.forEach((_, s) => {
        if (state > 0 && next() > 0.2) return;
        const bare = withBare && next() < 0.3;
        beadOf[s] = bare ? -1 : Math.floor(next() * looks.length);
      });
      kept.paint(beadOf, looks);
      const whole = renderWorked({
        geometry,
        hexOf: (s) => looks[beadOf[s]]?.hex,
        finishOf: (s) => looks[beadOf[s]]?.finish,
        widthPx,
      });
      let differ = 0;
      whole.data.forEach((byte, at) => (differ += byte === kept.data[at] ? 0 : 1));
      expect(differ).toBe(0);
    }
  });
}

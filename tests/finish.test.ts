import { describe, expect, it } from 'vitest';
import { ciede2000 } from '../src/core/colour/ciede2000.js';
import { linearToLab65 } from '../src/core/colour/lab.js';
import { srgbToLinear } from '../src/core/colour/srgb.js';
import { beadInk, beadPainter } from '../src/core/pages/worked/bead-light.js';
import { glossOf, lookOf, looks } from '../src/core/pages/worked/gloss.js';

const side = 120;
type Linear = [number, number, number];

/** One bead painted on white, and the mean linear light of the part that it covers. */
function painted(finish: string, rgb: readonly [number, number, number]) {
  const data = new Uint8ClampedArray(4 * side * side).fill(255);
  const gloss = glossOf(finish);
  beadPainter(gloss)(
    [{ width: side, height: side, data }],
    { x: 60, y: 60, halfAlong: 55, halfAcross: 55, alongX: 1, alongY: 0, dimple: 0 },
    [beadInk(rgb, gloss)],
  );
  const mean = [0, 0, 0];
  let most = 0;
  let count = 0;
  for (let y = 10; y < 110; y++) {
    for (let x = 10; x < 110; x++) {
      if ((x - 59.5) ** 2 + (y - 59.5) ** 2 > 50 ** 2) continue;
      const at = 4 * (y * side + x);
      for (let c = 0; c < 3; c++) mean[c] += srgbToLinear[data[at + c]];
      most = Math.max(most, data[at] + data[at + 1] + data[at + 2]);
      count += 1;
    }
  }
  return { mean: mean.map((sum) => sum / count), most, data };
}

const rgb = [0x9c, 0x5a, 0x3c] as const;

describe('finishes', () => {
  it('words of the trade mean a look (common practice, no source)', () => {
    const meant = { opaque: 'glossy', 'matt frosted': 'matte', transparent: 'clear' } as const;
    for (const [word, look] of Object.entries(meant)) expect(lookOf(word)).toBe(look);
    expect(lookOf('Metallic')).toBe('metal');
    expect(lookOf('galvanised')).toBe('metal');
    expect(lookOf('silver-lined')).toBe('clear');
    expect(lookOf('lustre')).toBe('soft');
    expect(lookOf(undefined)).toBe('glossy');
    expect(lookOf('something else')).toBe('glossy');
  });

  it('every look differs from every other on the bead', () => {
    const pictures = ['opaque', 'matt', 'transparent', 'metallic', 'lustre'].map(
      (finish) => painted(finish, rgb).data,
    );
    expect(pictures).toHaveLength(Object.keys(looks).length);
    for (let a = 0; a < pictures.length; a++) {
      for (let b = 0; b < a; b++) {
        let sum = 0;
        for (let at = 0; at < pictures[a].length; at++) {
          sum += Math.abs(pictures[a][at] - pictures[b][at]);
        }
        expect(sum / pictures[a].length).toBeGreaterThan(1);
      }
    }
  });

  it('highlights: matt has none, lustre a soft one, glass a bright one', () => {
    const most = (finish: string) => painted(finish, rgb).most;
    expect(most('matt')).toBeLessThan(most('lustre'));
    expect(most('lustre')).toBeLessThan(most('transparent'));
    expect(most('lustre')).toBeLessThan(most('opaque'));
  });

  it('translucency: the thread shows through clear glass as a pale stripe, and only there', () => {
    const row = (finish: string, y: number) => {
      const { data } = painted(finish, rgb);
      return data[4 * (y * side + 85)];
    };
    expect(row('transparent', 60)).toBeGreaterThan(row('transparent', 88) + 20);
    expect(row('matt', 60) - row('matt', 88)).toBeLessThan(
      row('transparent', 60) - row('transparent', 88),
    );
  });

  it('from afar every finish keeps its colour: CIEDE2000 of the mean light below 6', () => {
    for (const colour of [rgb, [0xd9, 0xb3, 0x6a], [0x2f, 0x7d, 0x9d]] as const) {
      const own = linearToLab65(...(colour.map((code) => srgbToLinear[code]) as Linear));
      for (const finish of ['opaque', 'matt', 'transparent', 'metallic', 'lustre']) {
        const { mean } = painted(finish, colour);
        const apart = ciede2000(...own, ...linearToLab65(...(mean as Linear)));
        expect(apart, `${finish} ${colour.join()}`).toBeLessThan(6);
      }
    }
  });
});

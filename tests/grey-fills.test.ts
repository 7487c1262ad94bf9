import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contrastRatio, inkOn } from '../src/core/colour/contrast.js';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { asGrey, greyFills } from '../src/core/pages/panel/grey-fills.js';
import { letters } from '../src/core/pattern/marks.js';

const hex = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`);
const someBeads = fc
  .array(hex, { minLength: 1, maxLength: 24 })
  .map((hexes) => hexes.map((one, n) => ({ letter: letters[n], hex: one })));

test('up to 24 beads all differ in grey or mark, in the order of their lightness', () => {
  fc.assert(
    fc.property(someBeads, (beads) => {
      const fills = greyFills(beads);
      const said = beads.map(({ letter }) => fills.get(letter)!);
      expect(new Set(said.map((fill) => `${fill.hex} ${fill.mark}`)).size).toBe(beads.length);
      const sorted = [...beads].sort((a, b) => hexToLab65(a.hex)[0] - hexToLab65(b.hex)[0]);
      const greys = sorted.map(({ letter }) => hexToLab65(fills.get(letter)!.hex)[0]);
      expect(greys).toEqual([...greys].sort((a, b) => a - b));
      // A grey: three equal parts.
      for (const { hex: grey } of said) expect(grey).toMatch(/^#(..)\1\1$/);
    }),
  );
});

test('letters read at 4.5:1 on every grey (W3C, WCAG 2.1, 1.4.3)', () => {
  const beads = Array.from({ length: 24 }, (_, n) => ({
    letter: letters[n],
    hex: `#${(n * 11).toString(16).padStart(2, '0').repeat(3)}`,
  }));
  for (const fill of greyFills(beads).values()) {
    expect(contrastRatio(fill.hex, inkOn(fill.hex))).toBeGreaterThanOrEqual(4.5);
  }
});

test('few beads take the greys nearest to them: pale ones stay pale', () => {
  const fills = greyFills([
    { letter: 'A', hex: '#fdf6e3' },
    { letter: 'B', hex: '#d9d2c0' },
    { letter: 'C', hex: '#b0a890' },
  ]);
  expect([...fills.values()].map((fill) => fill.hex).sort()).toEqual([
    '#a6a6a6',
    '#d0d0d0',
    '#ffffff',
  ]);
});

test('a colour turned grey keeps its contrasts', () => {
  fc.assert(
    fc.property(hex, (colour) => {
      const grey = asGrey(colour);
      // Eight bits a part leave it within a few hundredths.
      expect(contrastRatio(grey, '#ffffff') / contrastRatio(colour, '#ffffff')).toBeCloseTo(1, 1);
    }),
  );
});

import { differenceCiede2000, filterDeficiencyDeuter, filterDeficiencyProt } from 'culori';
import { filterDeficiencyTrit } from 'culori';
import { describe, expect, it } from 'vitest';
import { srgbToLinear } from '../src/core/colour/srgb.js';
import { linearToLab65 } from '../src/core/colour/lab.js';
import { seenAs } from '../src/core/colour/vision.js';
import { mistakenBelow, mistakenPairs, mistakenWarnings } from '../src/core/beads/mistaken.js';
import { warningSentence } from '../src/core/errors.js';
import { letterBeads } from '../src/core/beads/lettering.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { en } from '../src/words/index.js';

const bead = (letter: string, hex: string) => ({ letter, hex });

describe('colours as others see them', () => {
  // culori carries the matrices of Machado, Oliveira and Fernandes (2009) too. It applies them to
  // coded values, so linear ones are handed to it as if they were coded.
  const peers = [
    ['protanopia', filterDeficiencyProt(1)],
    ['deuteranopia', filterDeficiencyDeuter(1)],
    ['tritanopia', filterDeficiencyTrit(1)],
  ] as const;
  for (const [sight, peer] of peers) {
    it(`${sight}: agrees with culori over a grid of colours`, () => {
      for (let code = 0; code < 512; code++) {
        const [r, g, b] = [code >> 6, (code >> 3) & 7, code & 7].map((step) => step / 7);
        const theirs = peer({ mode: 'rgb', r, g, b })!;
        const ours = seenAs(sight, [r, g, b]);
        [theirs.r, theirs.g, theirs.b].forEach((value, at) => {
          expect(ours[at]).toBeCloseTo(Math.min(1, Math.max(0, value)), 12);
        });
      }
    });
    it(`${sight}: leaves greys as they are`, () => {
      // The rows of the published matrices add up to 1.
      for (const level of [0, 0.2, 0.5, 1]) {
        for (const value of seenAs(sight, [level, level, level])) {
          expect(value).toBeCloseTo(level, 5);
        }
      }
    });
  }
  it('a grey print keeps the luminance: L as it was, no colour', () => {
    for (const code of [0x000000, 0xd9b36a, 0x2f6fb0, 0xffffff]) {
      const linear = [code >> 16, (code >> 8) & 255, code & 255].map((c) => srgbToLinear[c]);
      const [r, g, b] = linear;
      const [L, a, bb] = linearToLab65(...seenAs('grey', [r, g, b]));
      // Weights of ITU-R BT.709 have four digits.
      expect(L).toBeCloseTo(linearToLab65(r, g, b)[0], 1);
      expect(Math.hypot(a, bb)).toBeLessThan(0.01);
    }
  });
});

describe('beads that will be mistaken', () => {
  it('names a pair nearer than 5 once, not again for other eyes', () => {
    const beads = [bead('A', '#d9b36a'), bead('B', '#d6b06e'), bead('C', '#1d3557')];
    const apart = differenceCiede2000()('#d9b36a', '#d6b06e');
    expect(apart).toBeLessThan(mistakenBelow);
    const pairs = mistakenPairs(beads);
    expect(pairs).toHaveLength(1);
    expect(pairs[0]).toMatchObject({ sight: 'usual', letters: ['A', 'B'] });
    expect(pairs[0].difference).toBeCloseTo(apart, 6);
  });

  it('red and green of one lightness are parted by most eyes, not with red-green blindness', () => {
    const pairs = mistakenPairs([bead('A', '#a06a28'), bead('B', '#6f7f28')]);
    expect(pairs.map(({ sight }) => sight)).toContain('deuteranopia');
    expect(pairs.map(({ sight }) => sight)).not.toContain('usual');
    expect(pairs.map(({ sight }) => sight)).not.toContain('tritanopia');
  });

  it('blue and green of one lightness are alike with tritanopia only', () => {
    const pairs = mistakenPairs([bead('A', '#00849c'), bead('B', '#008576')]);
    expect(pairs.map(({ sight }) => sight)).toEqual(['tritanopia', 'grey']);
  });

  it('says it in sentences, and counts what it does not name', () => {
    const beads = [...'ABCDEFGH'].map((letter, n) => bead(letter, `#d9b36${n}`));
    const [needle] = mistakenWarnings(beads).map((one) => warningSentence(en, one));
    expect(needle).toMatch(/^Easily mistaken .*A\/B.* and 22 more pairs\. Keep these beads/);
    const grey = mistakenWarnings([bead('A', '#c0392b'), bead('B', '#2f7d4f')]);
    const sentences = grey.map((one) => warningSentence(en, one)).join('\n');
    expect(sentences).toContain('grey print');
    expect(mistakenWarnings([bead('A', '#000000'), bead('B', '#ffffff')])).toEqual([]);
  });
});

describe('measured colours', () => {
  // Lab of two beads 0.15 apart whose hex are red and blue: what was measured goes before what is shown.
  const palette =
    'id,name,hex,L,a,b\nr,red,#b02020,40,30,20\nn,near red,#2020b0,40,30.2,20\nw,white,#f4f4f0,,,\n';
  const { beads } = readPalette(palette, 'palette', {});
  const lettered = letterBeads(beads, Int16Array.of(0, 0, 0, 1, 1, 2)).beads;

  it('are kept in the pattern where they say more than hex', () => {
    expect(lettered.map(({ lab }) => lab)).toEqual([[40, 30, 20], [40, 30.2, 20], undefined]);
  });

  it('are what beads are mistaken by', () => {
    const [pair] = mistakenPairs(lettered);
    expect(pair).toMatchObject({ sight: 'usual', letters: ['A', 'B'] });
    expect(pair.difference).toBeCloseTo(
      differenceCiede2000()(
        { mode: 'lab65', l: 40, a: 30, b: 20 },
        { mode: 'lab65', l: 40, a: 30.2, b: 20 },
      ),
      4,
    );
  });
});

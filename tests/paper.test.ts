import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { run } from '../src/cli/program.js';
import { sampledWithoutTurn } from '../src/core/picture/leaned.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { evenPaper } from '../src/core/picture/sampling/paper.js';
import { strengthenLines } from '../src/core/picture/sampling/paper-lines.js';
import { pictureFromPng } from '../src/core/picture/thumbnail.js';
import { en } from '../src/words/index.js';
import { paint, sequence } from './support/paint.js';
import { rulingOf, sketchOf } from './support/sketch.js';
import { scoreSketch, usualPanel } from './support/sketch-panel.js';
import type { Score } from './support/sketch-score.js';

const width = 800;
const height = 600;

/** Grey, shaded paper: darker to the right. */
const shade = (x: number): number => Math.round(205 - 70 * (x / width));

describe('evening out paper', () => {
  it('shaded paper becomes exactly white', () => {
    const even = evenPaper(paint(width, height, (x) => [shade(x), shade(x), shade(x) - 20]));
    expect(even.data.every((value) => value === 255)).toBe(true);
  });

  it('a mark is as much darker than white as it was darker than the paper under it', () => {
    // Half the light of the paper, in linear light; IEC 61966-2-1 codes that as 188.
    const half = (code: number): number => {
      const linear =
        code / 255 <= 0.04045 ? code / 255 / 12.92 : ((code / 255 + 0.055) / 1.055) ** 2.4;
      return Math.round(255 * (1.055 * (linear / 2) ** (1 / 2.4) - 0.055));
    };
    const inMark = (x: number, y: number): boolean => Math.abs(y - 300) < 40 && x > 100 && x < 700;
    const even = evenPaper(
      paint(width, height, (x, y) => {
        const code = inMark(x, y) ? half(shade(x)) : shade(x);
        return [code, code, code];
      }),
    );
    for (const x of [150, 400, 650]) {
      expect(Math.abs(even.data[4 * (300 * width + x)] - 188)).toBeLessThanOrEqual(3);
    }
    expect(even.data[4 * (100 * width + 400)]).toBe(255);
  });

  it('specks of dust go, dots of a pencil stay; transparent parts are white', () => {
    const dot = (x: number, y: number, cx: number, half: number): boolean =>
      Math.max(Math.abs(x - cx), Math.abs(y - 300)) < half;
    const even = evenPaper(
      paint(width, height, (x, y) => {
        if (y < 50) return [0, 0, 0, 0];
        return dot(x, y, 200, 1) || dot(x, y, 500, 4) ? [60, 60, 60] : [190, 190, 190];
      }),
    );
    expect(even.data[4 * (300 * width + 200)]).toBe(255);
    expect(even.data[4 * (300 * width + 500)]).toBeLessThan(120);
    expect(even.data[4 * (20 * width + 400)]).toBe(255);
  });

  it('a large photograph is evened out at 1024 pixels', () => {
    const even = evenPaper(paint(2000, 1500, () => [200, 200, 190]));
    expect([even.width, even.height]).toEqual([1024, 768]);
  });

  it.each([
    [1, 1],
    [1, 400],
    [400, 1],
    [3, 2],
  ])('no picture is too small: %i × %i', (w, h) => {
    const even = evenPaper(paint(w, h, () => [180, 180, 170]));
    expect(even.data.every((value) => value === 255)).toBe(true);
    expect(strengthenLines(even, 5).data.every((value) => value === 255)).toBe(true);
  });
});

describe('lines', () => {
  it('thinner than 0.6 stitches are drawn that wide, wider areas stay', () => {
    const even = paint(400, 400, (x, y) => {
      if (Math.abs(y - 100) < 1) return [40, 80, 160];
      return y > 200 && y < 300 && x > 100 && x < 300 ? [200, 40, 40] : [255, 255, 255];
    });
    const strong = strengthenLines(even, 20);
    const column = (x: number, from: number, to: number): number =>
      Array.from({ length: to - from }, (_, k) => strong.data[4 * ((from + k) * 400 + x) + 1])
        .filter((green) => green < 255).length; // prettier-ignore
    expect(column(200, 60, 140)).toBeGreaterThanOrEqual(12);
    expect(column(200, 60, 140)).toBeLessThanOrEqual(14);
    expect(column(200, 180, 320)).toBe(100);
    expect([...strong.data.subarray(4 * (104 * 400 + 200), 4 * (104 * 400 + 200) + 3)]).toEqual([
      40, 80, 160,
    ]);
  });
});

/**
 * Sketches drawn by program, so that the truth is known: five pencil lines 0.07 to 0.3 stitches
 * wide, three patches of crayon with gaps (every second sketch: one of them over a quarter of the
 * page), on tinted paper with uneven light, corners that darken, every third with the shadow of a
 * hand, grain, noise and JPEG. Limits in the code were set on seeds 1 to 12; these are others.
 *
 * Measured at 1200 × 900 pixels: without --paper (commonest bead taken for the paper's), seeds 1 to
 * 12: 85 % of paper stitches, 22 % of line stitches, a mean CIEDE2000 of 21. With --paper, seeds 101
 * to 112: 100 %, 98.7 % and 2.8, and beside lines 0.6 stitches too many to every 100 of a line.
 */
describe('sketches of known truth', () => {
  it('seeds 101 to 103: clean paper, kept lines, kept colours', async () => {
    const scores: Score[] = [];
    for (const seed of [101, 102, 103]) {
      scores.push(await scoreSketch(sketchOf(seed), width, height, true));
    }
    const sum = (of: (score: Score) => number): number =>
      scores.reduce((total, score) => total + of(score), 0);
    const colour = scores.flatMap((score) => score.colour);
    expect(sum((s) => s.paperKept) / sum((s) => s.paper)).toBeGreaterThan(0.995);
    expect(sum((s) => s.lineKept) / sum((s) => s.line)).toBeGreaterThan(0.93);
    expect(sum((s) => s.grown) / sum((s) => s.line)).toBeLessThan(0.08);
    expect(colour.length).toBeGreaterThan(200);
    expect(colour.reduce((total, one) => total + one, 0) / colour.length).toBeLessThan(6);
  });
});

/**
 * The same sketches on ruled (odd seeds) and squared paper, turned by up to five degrees and seen
 * aslant. Limits in the code were set on seeds 1 to 6 and 108. Seeds 101 to 104 at 800 × 600, before the
 * ruling was looked for: 70, 0, 58 and 20 % of the paper clean. Seeds 101 to 112 with it: 98.8 % on average,
 * 92.4 % (108) at least, and 98.7 % of the lines kept, 92 % (104: 12 of 13 stitches, as on paper without
 * ruling) at least.
 */
describe('ruled and squared paper', () => {
  it.each([103, 102])('seed %i: clean paper, kept lines', async (seed) => {
    const sketch = { ...sketchOf(seed), ruling: rulingOf(seed) };
    const score = await scoreSketch(sketch, width, height, true);
    expect(score.paperKept / score.paper).toBeGreaterThan(0.95);
    expect(score.lineKept / score.line).toBeGreaterThan(0.95);
  });

  it('a crayon patch over the ruling is not carved, a drawn grid of few lines stays', () => {
    const squared = (x: number, y: number): boolean => x % 24 < 2 || y % 24 < 2;
    const patch = (x: number, y: number): boolean => Math.hypot(x - 400, y - 300) < 120;
    const even = evenPaper(
      paint(width, height, (x, y) => {
        const ruled = squared(x, y) ? 0.75 : 1;
        return (patch(x, y) ? [180, 60, 50] : [210, 205, 195]).map((c) => Math.round(c * ruled)) as [number, number, number]; // prettier-ignore
      }),
    );
    let [carved, paper, bare] = [0, 0, 0];
    for (let p = 0; p < width * height; p++) {
      const [x, y] = [p % width, Math.floor(p / width)];
      const isWhite = even.data[4 * p + 1] === 255;
      if (Math.hypot(x - 400, y - 300) < 110 && isWhite) carved++;
      if (patch(x, y) || Math.hypot(x - 400, y - 300) < 130) continue;
      paper++;
      if (isWhite) bare++;
    }
    expect(carved).toBe(0);
    expect(bare / paper).toBeGreaterThan(0.98);
    const fence = (x: number): boolean => [200, 300, 400, 500].some((at) => Math.abs(x - at) < 2);
    const drawn = evenPaper(
      paint(width, height, (x) => (fence(x) ? [90, 90, 90] : [210, 205, 195])),
    );
    expect(drawn.data[4 * (300 * width + 300) + 1]).toBeLessThan(160);
  });
});

describe('the pattern', () => {
  const below = sequence(3);
  const picture = paint(1200, 900, (x, y) => {
    const paper = shade((x * width) / 1200) + below(5);
    return Math.abs(Math.hypot(x - 600, y - 450) - 250) < 2
      ? [paper * 0.4, paper * 0.3, paper * 0.5]
      : [paper, paper, paper - 15];
  });
  const { pattern, report } = usualPanel(picture, true);

  it('remembers that the picture was on paper, and keeps it evened out', () => {
    const entry = pattern.panels[0].picture!;
    expect(entry).toMatchObject({ paper: true, art: 'drawing', width: 1200, height: 900 });
    const { data } = pictureFromPng(entry.thumbnail)!;
    expect([...data.subarray(0, 4)]).toEqual([255, 255, 255, 255]);
    expect(report.artDecided).toBe(false);
    expect(parsePattern(patternText(pattern), 'pattern.json')).toEqual(pattern);
  });

  it('the circle is there, one bead thick, and also in the picture of what lean would do', () => {
    const inked = pattern.beads.slice(1).length;
    expect(inked).toBeGreaterThan(0);
    const letters = pattern.panels[0].rounds.join('');
    const line = [...letters].filter((letter) => letter !== 'A').length;
    // A circle of radius 250 of 450 pixels, on a panel 40 stitches across: 70 stitches around.
    expect(line).toBeGreaterThan(60);
    expect(line).toBeLessThan(100);
    const { beadOf } = sampledWithoutTurn(pattern, 0)!;
    const leaned = beadOf.filter((bead) => bead?.letter !== 'A').length;
    expect(Math.abs(leaned - line)).toBeLessThan(20);
  });
});

describe('lines lost', () => {
  /** Rings around the middle, one every 60 pixels, of a width in pixels; 20 pixels are a stitch. */
  const rings = (thick: number) =>
    paint(800, 800, (x, y) => {
      const r = Math.hypot(x - 400, y - 400);
      return Math.abs((r % 60) - 30) < thick / 2 ? [30, 30, 30] : [255, 255, 255];
    });
  const percentLost = (thick: number, paper: boolean): number | undefined => {
    const { warnings } = usualPanel(rings(thick), paper).report;
    const found = warnings.find(({ code }) => code === 'thin-lines-lost');
    return (found?.facts as { percent: number } | undefined)?.percent;
  };

  it('is told of a drawing whose lines are far thinner than a stitch, with their share', () => {
    expect(percentLost(1.5, false)).toBe(100);
  });

  it('names as many rounds as show the lines, where a panel can have them', () => {
    const roundsFor = (thick: number, rounds?: number) => {
      const { warnings } = usualPanel(rings(thick), false, rounds).report;
      const found = warnings.find(({ code }) => code === 'thin-lines-lost');
      return found && ((found.facts as { rounds?: number }).rounds ?? 'too many');
    };
    expect(roundsFor(0.8)).toBe('too many');
    const enough = roundsFor(2);
    expect(enough).toBeGreaterThan(25);
    expect(enough).toBeLessThanOrEqual(80);
    expect(roundsFor(2, Number(enough))).toBeUndefined();
  });

  it('is not told of bolder lines, nor where --paper has drawn them thicker', () => {
    expect(percentLost(12, false)).toBeUndefined();
    expect(percentLost(1.5, true)).toBeUndefined();
    const letters = usualPanel(rings(1.5), true).pattern.panels[0].rounds.join('');
    // Stitches that the rings inside the panel go around.
    const around = [30, 90, 150, 210, 270, 330].reduce((sum, r) => sum + (6.2832 * r) / 20, 0);
    const line = [...letters].filter((letter) => letter !== 'A').length;
    expect(line).toBeGreaterThan(0.85 * around);
    expect(line).toBeLessThan(1.6 * around);
  });
});

describe('the option', () => {
  const command = async (...argv: string[]) => {
    let [out, err] = ['', ''];
    const io = {
      out: (text: string) => void (out += text),
      err: (text: string) => void (err += text),
      progress: undefined,
      signal: new AbortController().signal,
    };
    const engraving = fileURLToPath(
      new URL('../fixtures/pictures/onebit-engraving.png', import.meta.url),
    );
    return { code: await run(['chart', engraving, '--dry-run', ...argv], en, io), out, err };
  };

  it('makes a drawing of it, and refuses to be told that it is a photo', async () => {
    const { code, out } = await command('--paper', '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ art: 'drawing', artDecided: false });
    expect(await command('--paper', '--art', 'photo')).toMatchObject({ code: 2 });
  });
});

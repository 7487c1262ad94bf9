import { describe, expect, test } from 'vitest';
import { contrastRatio } from '../src/core/colour/contrast.js';
import { drawHand } from '../src/core/pages/hand/draw.js';
import { handDrawings } from '../src/core/pages/hand/drawings.js';
import type { HandDrawing, HandFacts } from '../src/core/pages/hand/facts.js';
import { handFactsOf, handSaidOf } from '../src/core/pages/hand/of-pattern.js';
import { heavyMm, ink, lightMm } from '../src/core/pages/hand/pen.js';
import { bellyLine, railLine } from '../src/core/purse/frame/outline.js';
import { drawnPairs } from '../src/core/pages/hand/seam.js';
import { seamBeside, sewnPairs } from '../src/core/pages/lists/sewing.js';
import type {
  Fill,
  GlyphRun,
  Polyline,
  Stroke,
  Surface,
} from '../src/core/pages/surface/surface.js';
import { backStartDegrees, pairStartDegrees } from '../src/core/panel/meet.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';
import type { Frame } from '../src/core/purse/frame/measures.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { railLengthMm } from '../src/core/purse/frame/rail.js';
import { bundledFonts } from '../src/node/font/fonts.js';
import { languages } from '../src/words/index.js';
import { loadPages } from '../src/words/pages/load.js';
import { someBeads } from './support/patterns.js';

const fonts = await bundledFonts();
const half: Frame = {
  kind: 'half-round',
  widthMm: 85,
  heightMm: 45,
  fixing: 'sewn',
  ratio: 1.15,
  gatherPercent: 0,
};
const frames: (Frame | undefined)[] = [
  undefined,
  half,
  { ...half, kind: 'squared', fixing: 'glued' },
  { ...half, kind: 'oval', heightMm: 55 },
];

function patternOf(wish: Partial<ShapeWish> = {}, frame?: Frame): Pattern {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish });
  const front = pairStartDegrees(shape);
  const rounds = Array.from({ length: shape.rounds }, (_, r) => 'A'.repeat(shape.wedges * (r + 1)));
  return {
    format: 'rondure-pattern',
    version: 1,
    title: 'Lighthouse',
    shape,
    beads: someBeads(3),
    panels: [
      { name: 'front', startDegrees: front, rounds },
      { name: 'back', startDegrees: backStartDegrees(shape, front), rounds },
    ],
    ...(frame && { frame }),
  };
}

interface Mark {
  readonly kind: 'fill' | 'line' | 'circle';
  readonly points: readonly (readonly [number, number])[];
  readonly colour: string;
  /** Of its line; 0 for none. */
  readonly widthMm: number;
  readonly radius: number;
}

/** Keeps everything that is drawn, in order. */
class Recorder implements Surface {
  readonly widthMm = 100;
  readonly heightMm = 100;
  readonly marks: Mark[] = [];
  readonly texts: { text: string; x: number; y: number; glyphs: GlyphRun['glyphs'] }[] = [];

  fillPath(rings: readonly Polyline[], { fill, outline }: Fill): void {
    for (const ring of rings) this.add('fill', ring, fill, outline?.widthMm ?? 0);
  }
  strokePath(lines: readonly Polyline[], { stroke, widthMm }: Stroke): void {
    for (const line of lines) this.add('line', line, stroke, widthMm);
  }
  strokeCurve(): void {
    throw new Error('no curves are expected');
  }
  circle(x: number, y: number, radius: number, { fill, outline }: Fill): void {
    const common = { kind: 'circle', points: [[x, y]], colour: fill } as const;
    this.marks.push({ ...common, widthMm: outline?.widthMm ?? 0, radius });
  }
  glyphs({ title, sizeMm, glyphs }: GlyphRun): void {
    const left = Math.min(...glyphs.map(({ glyph, x }) => x + sizeMm * glyph.box.left));
    const right = Math.max(...glyphs.map(({ glyph, x }) => x + sizeMm * glyph.box.right));
    const top = Math.min(...glyphs.map(({ glyph, y }) => y + sizeMm * glyph.box.top));
    const bottom = Math.max(...glyphs.map(({ glyph, y }) => y + sizeMm * glyph.box.bottom));
    this.texts.push({ text: title, x: (left + right) / 2, y: (top + bottom) / 2, glyphs });
    this.add('fill', [left, top, right, bottom], ink, 0);
  }
  beginGroup(): void {}
  endGroup(): void {}

  private add(kind: 'fill' | 'line', line: Polyline, colour: string, widthMm: number): void {
    const points = Array.from(
      { length: line.length / 2 },
      (_, n) => [line[2 * n], line[2 * n + 1]] as const,
    );
    this.marks.push({ kind, points, colour, widthMm, radius: 0 });
  }
}

function drawn(drawing: HandDrawing, facts: HandFacts, frame: number): Recorder {
  const recorder = new Recorder();
  drawHand(recorder, drawing, facts, frame);
  return recorder;
}

const ways = ['both-loops', 'bead-side-loop', 'slip'] as const;
const cases = (['right', 'left'] as const).flatMap((hand) =>
  (['away', 'toward'] as const).flatMap((beadsFace) =>
    (['spiral', 'joined'] as const).flatMap((construction) =>
      ways.map((stitch) => ({ hand, beadsFace, construction, stitch })),
    ),
  ),
);
const applying = (facts: HandFacts) => handDrawings.filter((one) => one.applies(facts));
const byName = (name: HandDrawing['name']) => handDrawings.find((one) => one.name === name)!;

test.each(cases)(
  'keeps every drawing in its box: $hand, $beadsFace, $construction, $stitch',
  (wish) => {
    for (const [n, wedges] of [3, 7, 12].entries()) {
      for (const frame of frames) {
        const pattern = patternOf({ ...wish, wedges, rounds: [30, 20, 14][n] }, frame);
        const facts = handFactsOf(pattern, fonts);
        for (const drawing of applying(facts)) {
          drawing.frames.forEach((_, k) => {
            const outside = drawn(drawing, facts, k).marks.flatMap((mark) => {
              // White beside an arrow may reach over the edge: it shows nowhere.
              const white = mark.colour === '#ffffff' && mark.kind === 'line';
              const reach = white ? 0 : mark.radius + mark.widthMm / 2;
              return mark.points.filter(
                ([x, y]) =>
                  Math.min(x, y) - reach < -1e-6 ||
                  x + reach > drawing.widthMm + 1e-6 ||
                  y + reach > drawing.heightMm + 1e-6,
              );
            });
            expect(outside, `${drawing.name} ${k + 1}`).toEqual([]);
          });
        }
      }
    }
  },
);

test.each(cases.filter(({ hand }) => hand === 'right'))(
  'draws the left hand as the mirror image of the right: $beadsFace, $construction, $stitch',
  (wish) => {
    const right = handFactsOf(patternOf(wish), fonts);
    const left = handFactsOf(patternOf({ ...wish, hand: 'left' }), fonts);
    const mirrored = applying(right).filter(({ ofPurse }) => !ofPurse);
    expect(mirrored.length).toBeGreaterThan(8);
    for (const drawing of mirrored) {
      drawing.frames.forEach((_, k) => {
        const [one, other] = [drawn(drawing, right, k), drawn(drawing, left, k)];
        const outlines = ({ marks }: Recorder) =>
          marks.filter(({ colour, widthMm }) => colour !== ink || widthMm > 0);
        const [ones, others] = [outlines(one), outlines(other)];
        expect(others).toHaveLength(ones.length);
        const same = ones.every((mark, n) =>
          mark.points.every(([x, y], p) => {
            const [otherX, otherY] = others[n].points[p];
            return Math.abs(otherX - drawing.widthMm + x) + Math.abs(otherY - y) < 1e-6;
          }),
        );
        expect(same, `${drawing.name} ${k + 1}`).toBe(true);
        // Figures move to the other side, but read the same way.
        one.texts.forEach(({ text, x, y, glyphs }, n) => {
          expect(other.texts[n].text).toBe(text);
          expect(other.texts[n].x).toBeCloseTo(drawing.widthMm - x, 0);
          expect(other.texts[n].y).toBeCloseTo(y, 6);
          const steps = (run: GlyphRun['glyphs']) => run.map((glyph) => glyph.x - run[0].x);
          steps(other.texts[n].glyphs).forEach((step, g) =>
            expect(step).toBeCloseTo(steps(glyphs)[g], 6),
          );
        });
      });
    }
  },
);

/** Middle of the shapes of a tint with a line of a width. */
function middles({ marks }: Recorder, colour: string, widthMm: number): [number, number][] {
  return marks
    .filter((mark) => mark.kind === 'fill' && mark.colour === colour && mark.widthMm === widthMm)
    .map(({ points }) => [mean(points.map(([x]) => x)), mean(points.map(([, y]) => y))]);
}
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

describe.each(['right', 'left'] as const)('for the %s hand', (hand) => {
  test.each(['away', 'toward'] as const)(
    'puts the bead on the side of a stitch: beads %s',
    (beadsFace) => {
      const facts = handFactsOf(patternOf({ hand, beadsFace }), fonts);
      const done = drawn(byName('stitch'), facts, 4);
      // The new stitch: a bead, and its leaves of thread, of which the topmost two are its loops.
      const beads = middles(done, facts.tints.bead, heavyMm);
      const loops = middles(done, facts.tints.thread, heavyMm)
        .sort(([, a], [, b]) => a - b)
        .slice(0, 2);
      const [x, y] = [mean(loops.map(([at]) => at)), mean(loops.map(([, at]) => at))];
      const [bead] = beads.sort((a, b) => Math.abs(a[0] - x) - Math.abs(b[0] - x));
      expect(Math.abs(bead[0] - x)).toBeLessThan(2);
      // Far is higher on the page.
      if (beadsFace === 'away') expect(bead[1]).toBeLessThan(y - 2);
      else expect(bead[1]).toBeGreaterThan(y + 2);
    },
  );

  test.each(['away', 'toward'] as const)('shows the bead with an eye: beads %s', (beadsFace) => {
    const facts = handFactsOf(patternOf({ hand, beadsFace }), fonts);
    const recorder = drawn(byName('bead-side'), facts, 0);
    const [bead] = middles(recorder, facts.tints.bead, heavyMm);
    const [stitch] = middles(recorder, facts.tints.thread, heavyMm);
    const pupil = recorder.marks.find(
      ({ kind, colour, widthMm }) => kind === 'fill' && colour === ink && widthMm === 0,
    )!;
    const eye = mean(pupil.points.map(([x]) => x));
    const towardEye = Math.sign(eye - stitch[0]);
    expect(Math.sign(bead[0] - stitch[0])).toBe(beadsFace === 'toward' ? towardEye : -towardEye);
  });
});

test('knows two widths of line, besides white', () => {
  const widths = new Set<number>();
  for (const wish of cases) {
    const facts = handFactsOf(patternOf(wish, half), fonts);
    for (const drawing of applying(facts)) {
      drawing.frames.forEach((_, k) => {
        for (const { widthMm, colour } of drawn(drawing, facts, k).marks) {
          if (widthMm > 0 && colour !== '#ffffff') widths.add(widthMm);
        }
      });
    }
  }
  expect([...widths].sort((a, b) => a - b)).toEqual([lightMm, heavyMm]);
  // 1.2 and 0.6 pt, a point being 1/72 inch.
  expect(heavyMm).toBeCloseTo((1.2 * 25.4) / 72, 9);
  expect(lightMm).toBeCloseTo((0.6 * 25.4) / 72, 9);
});

test('keeps lines, beads and thread apart in grey', () => {
  for (const grey of [true, false]) {
    const { tints } = handFactsOf(patternOf(), fonts, { grey });
    // WCAG 2.1, 1.4.11: parts of a picture 3:1.
    expect(contrastRatio(ink, tints.bead)).toBeGreaterThan(4.5);
    expect(contrastRatio(ink, tints.thread)).toBeGreaterThan(4.5);
    expect(contrastRatio(tints.thread, tints.bead)).toBeGreaterThan(1.5);
  }
});

const seams = (['right', 'left'] as const).flatMap((hand) =>
  (['away', 'toward'] as const).flatMap((beadsFace) =>
    (['spiral', 'joined'] as const).flatMap((construction) =>
      [5, 6, 7, 8].map((wedges) => ({ hand, beadsFace, construction, wedges })),
    ),
  ),
);

test.each(seams)(
  'joins in the seam the stitches that meet: $hand, $beadsFace, $construction, $wedges wedges',
  (wish) => {
    const pattern = patternOf({ ...wish, rounds: 24 }, half);
    const pairs = drawnPairs(handFactsOf(pattern, fonts));
    const many = wish.wedges * 24;
    expect(pairs).toHaveLength(many);
    // Every stitch of the back once.
    expect(new Set(pairs.map(({ back }) => back)).size).toBe(many);
    for (const { frontAt, backAt } of pairs) {
      const angle = ([x, y]: readonly [number, number]) => Math.atan2(y - 41, x - 41);
      const apart = Math.abs(angle(frontAt) - angle(backAt));
      expect(Math.min(apart, 2 * Math.PI - apart)).toBeLessThan((1.5 * 2 * Math.PI) / many);
    }
    // The same pairs as in the sewing list, which is written by the clock.
    for (const { front, back } of sewnPairs(pattern)) expect(pairs[front - 1].back).toBe(back);
    const { first, last, pairs: sewn } = seamBeside(pattern, half);
    const inSeam = pairs.filter((one) => one.sewn);
    expect(inSeam).toHaveLength(sewn);
    for (const end of [first!, last!]) {
      expect(inSeam).toContainEqual(expect.objectContaining({ front: end.front, back: end.back }));
    }
  },
);

test.each(frames.filter((one) => one !== undefined))(
  'draws the rail as long as it is: $kind',
  (frame) => {
    const line = railLine(frame);
    const long = line
      .slice(1)
      .reduce((sum, [x, y], n) => sum + Math.hypot(x - line[n][0], y - line[n][1]), 0);
    expect(long / railLengthMm(frame)).toBeGreaterThan(0.997);
    expect(long / railLengthMm(frame)).toBeLessThan(1.0001);
    expect(line[0][1]).toBeCloseTo(0, 6);
    expect(line[line.length - 1][1]).toBeCloseTo(0, 6);
  },
);

test('draws the panel below the hinges as long as its seam', () => {
  for (const [hinges, seamMm] of [
    [85, 180],
    [60, 200],
    [80, 100],
  ]) {
    const line = bellyLine(hinges, seamMm);
    const long = line
      .slice(1)
      .reduce((sum, [x, y], n) => sum + Math.hypot(x - line[n][0], y - line[n][1]), 0);
    expect(long / seamMm).toBeCloseTo(1, 2);
    expect(Math.abs(line[0][0] - line[line.length - 1][0])).toBeCloseTo(hinges, 4);
  }
});

/** Every picture that a pattern may have, once: what is said beside it, and the numbers in it. */
const pictures = [
  ...new Map(
    cases
      .filter(({ hand }) => hand === 'right')
      .flatMap((wish) => frames.map((frame) => patternOf({ ...wish, rounds: 20 }, frame)))
      .flatMap((pattern) => {
        const facts = handFactsOf(pattern, fonts);
        const said = handSaidOf(pattern);
        return applying(facts).map((drawing) => ({ drawing, facts, said }));
      })
      .map((one) => [JSON.stringify([one.drawing.name, one.said]), one] as const),
  ).values(),
].map(({ drawing, facts, said }) => ({
  drawing,
  said,
  // The numbers of a seam are those of stitches.
  numbers: drawing.frames.map((_, k) =>
    drawing.name === 'seam' ? [] : drawn(drawing, facts, k).texts.map(({ text }) => text),
  ),
}));

describe.each(languages)('in %s', (language) => {
  test('each picture has its sentence, with the numbers of its movements', async () => {
    const { hands } = await loadPages[language]();
    expect(pictures.length).toBeGreaterThan(100);
    for (const { drawing, said, numbers } of pictures) {
      const { ask, steps } = hands[drawing.name];
      expect(ask).toMatch(/[?？]$/u);
      const sentences = steps(said);
      expect(sentences).toHaveLength(drawing.frames.length);
      sentences.forEach((sentence, k) => {
        const told = [...sentence.matchAll(/\(([\d, 、]+)\)/g)].flatMap(
          ([, n]) => n.match(/\d/g) ?? [],
        );
        expect(told.sort(), sentence).toEqual([...numbers[k]].sort());
      });
    }
  });
});

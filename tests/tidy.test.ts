/** Tidying of whole panels, measured by culori and counted anew from the finished pattern. */
import { readFileSync } from 'node:fs';
import { differenceCiede2000 } from 'culori';
import { beforeAll, describe, expect, it } from 'vitest';
import { drain } from '../src/core/steps.js';
import { chooseBeads } from '../src/core/beads/choice/choose.js';
import { linearToLab65 } from '../src/core/colour/lab.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { makePattern } from '../src/core/make.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { findProblems } from '../src/core/pattern/read/find-problems.js';
import { lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import type { Picture } from '../src/core/picture/picture.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { samplePanel } from '../src/core/picture/sampling/sample.js';
import { completeShape } from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';
import { colourChanges } from '../src/core/pattern/stitches.js';
import { tidyBeads } from '../src/core/beads/tidy/tidy.js';
import { readPicture } from '../src/node/read/read-picture.js';
import { paint, sequence } from './support/paint.js';
import { inProcess } from './support/run.js';

const fixture = (name: string) => new URL(`../fixtures/pictures/${name}`, import.meta.url);
const { beads } = readPalette(
  readFileSync(new URL('../palettes/drawers.csv', import.meta.url), 'utf8'),
  'drawers.csv',
);
const palette = new Float64Array(beads.flatMap(({ lab }) => lab));
const pictures = new Map<string, Picture>();
beforeAll(async () => {
  for (const name of ['dahlia.jpg', 'cat-chelsea.png']) {
    pictures.set(name, await readPicture(readFileSync(fixture(name)), name));
  }
});

/** Blots with grain, without any symmetry: many strays. */
function grain(): Picture {
  const next = sequence(3);
  return paint(90, 90, (x, y) => [
    Math.min(255, (x > y ? 200 : 60) + next(56)),
    Math.min(255, (x + y > 90 ? 150 : 40) + next(90)),
    60 + next(60),
  ]);
}

/** A panel whose stitches have the nearest of the best K beads. */
function panelOf(picture: Picture, colours: number, wish: Partial<ShapeWish>, repeat = false) {
  const shape = completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish });
  const geometry = panelGeometry(shape);
  const footprints = panelFootprints(geometry);
  const place = placePicture(picture, geometry, { place: 'fill', repeat });
  const sampled = samplePanel({
    picture,
    geometry,
    footprints,
    place,
    art: 'photo',
    background: [255, 255, 255],
  });
  const stitches = new Float64Array(3 * geometry.count);
  for (let s = 0; s < geometry.count; s++) {
    const [r, g, b] = sampled.linear.subarray(3 * s, 3 * s + 3);
    stitches.set(linearToLab65(r, g, b), 3 * s);
  }
  const { chosen, beadOf } = chooseBeads({ stitches, palette, most: colours });
  return { shape, footprints, stitches, palette, chosen, beadOf, repeat };
}

const reference = differenceCiede2000();
const asLab = (lab: Float64Array, k: number) =>
  ({ mode: 'lab65', l: lab[3 * k], a: lab[3 * k + 1], b: lab[3 * k + 2] }) as const;

/** Σ CIEDE2000 by culori. */
function sumOf(stitches: Float64Array, beadOf: ArrayLike<number>, weights?: Float64Array): number {
  let sum = 0;
  for (let s = 0; s < beadOf.length; s++) {
    if (beadOf[s] < 0) continue;
    sum += (weights?.[s] ?? 1) * reference(asLab(stitches, s), asLab(palette, beadOf[s]));
  }
  return sum;
}

type PanelOf = ReturnType<typeof panelOf>;
const straysOf = ({ footprints }: PanelOf, beadOf: ArrayLike<number>) =>
  Array.from(beadOf).filter(
    (bead, s) => bead >= 0 && footprints.neighbours(s).every((other) => beadOf[other] !== bead),
  ).length;
const changesIn = (beadOf: ArrayLike<number>) =>
  Array.from(beadOf)
    .filter((bead) => bead >= 0)
    .filter((bead, n, all) => n > 0 && bead !== all[n - 1]).length;

describe('tidying', () => {
  it.each(
    ['dahlia.jpg', 'cat-chelsea.png'].flatMap((name) =>
      [6, 12].flatMap((colours) => [20, 30].map((rounds) => ({ name, colours, rounds }))),
    ),
  )(
    '$name, $colours colours, $rounds rounds: at 5 % at most 70 % of runs and 20 % of strays',
    (one) => {
      const panel = panelOf(pictures.get(one.name)!, one.colours, { rounds: one.rounds });
      const { beadOf, report } = drain(tidyBeads({ ...panel, percent: 5 }));
      expect(report.changesBefore).toBe(changesIn(panel.beadOf));
      expect(report.changesAfter).toBe(changesIn(beadOf));
      expect(report.straysBefore).toBe(straysOf(panel, panel.beadOf));
      expect(report.straysAfter).toBe(straysOf(panel, beadOf));
      expect(report.changesAfter + 1).toBeLessThanOrEqual(0.7 * (report.changesBefore + 1));
      expect(report.straysAfter).toBeLessThanOrEqual(0.2 * report.straysBefore);
      const cost = 100 * (sumOf(panel.stitches, beadOf) / sumOf(panel.stitches, panel.beadOf) - 1);
      expect(cost).toBeLessThanOrEqual(5 + 1e-3);
      expect(cost).toBeGreaterThan(2);
      expect(cost).toBeCloseTo(report.costPercent, 2);
      expect(drain(tidyBeads({ ...panel, percent: 5 })).beadOf).toEqual(beadOf);
    },
  );

  it.each<Partial<ShapeWish>>([
    { rounds: 9 },
    { rounds: 12, construction: 'joined', wedges: 3, hand: 'left' },
    { rounds: 10, wedges: 12, increase: 'middle', lean: -0.5 },
  ])('never costs more than it may, whatever the budget: %o', (wish) => {
    const panel = panelOf(grain(), 5, wish);
    const weights = Float64Array.from(panel.beadOf, (_, s) => (s % 5) / 2);
    for (const percent of [0, 0.01, 1, 3, 10, 100]) {
      for (const given of [{}, { weights }]) {
        const { beadOf, report } = drain(tidyBeads({ ...panel, ...given, percent }));
        const before = sumOf(panel.stitches, panel.beadOf, given.weights);
        const after = sumOf(panel.stitches, beadOf, given.weights);
        expect(after).toBeLessThanOrEqual(before * (1 + percent / 100) + 1e-3);
        expect(report.costPercent).toBeLessThanOrEqual(percent + 1e-9);
        expect(report.changesAfter).toBeLessThanOrEqual(report.changesBefore);
        for (const bead of beadOf) expect(panel.chosen).toContain(bead);
      }
    }
  });

  it('never touches guarded and bare stitches', () => {
    const panel = panelOf(grain(), 5, { rounds: 12 });
    const next = sequence(8);
    const guarded = Uint8Array.from(panel.beadOf, () => (next(4) === 0 ? 1 : 0));
    const given = panel.beadOf.map((bead) => (next(5) === 0 ? -1 : bead));
    const { beadOf, report } = drain(tidyBeads({ ...panel, beadOf: given, guarded, percent: 30 }));
    expect(report.changesAfter).toBeLessThan(report.changesBefore);
    expect(report.changesAfter).toBe(changesIn(beadOf));
    beadOf.forEach((bead, s) => {
      if (given[s] < 0 || guarded[s]) expect(bead).toBe(given[s]);
      else expect(bead).toBeGreaterThanOrEqual(0);
    });
  });

  it('lets a colour vanish, unless it must be kept', () => {
    const panel = panelOf(grain(), 6, { rounds: 8 });
    const { beadOf } = drain(tidyBeads({ ...panel, percent: 60 }));
    const gone = panel.chosen.filter((bead) => !beadOf.includes(bead));
    expect(gone.length).toBeGreaterThan(0);
    const kept = drain(tidyBeads({ ...panel, percent: 60, keep: panel.chosen })).beadOf;
    for (const bead of panel.chosen) expect(kept).toContain(bead);
  });

  it('takes no more of a bead than there is', () => {
    const panel = panelOf(grain(), 5, { rounds: 12 });
    const counts = (beadOf: ArrayLike<number>) =>
      beads.map((_, bead) => Array.from(beadOf).filter((one) => one === bead).length);
    const before = counts(panel.beadOf);
    for (const spare of [0, 3, 20, 1000]) {
      const limits = before.map((count) => count + spare);
      const { beadOf, report } = drain(tidyBeads({ ...panel, percent: 20, limits }));
      counts(beadOf).forEach((count, bead) => expect(count).toBeLessThanOrEqual(limits[bead]));
      if (spare === 1000) expect(report.changesAfter).toBeLessThan(report.changesBefore);
    }
  });

  it.each<Partial<ShapeWish>>([
    {},
    { construction: 'joined', wedges: 5 },
    { wedges: 3, hand: 'left' },
  ])('keeps the wedges of a repeat alike: %o', (wish) => {
    const panel = panelOf(grain(), 6, { rounds: 16, ...wish }, true);
    const { beadOf, report } = drain(tidyBeads({ ...panel, percent: 10 }));
    const { wedges, rounds } = panel.shape;
    for (let r = 1, s = 0; r <= rounds; s += wedges * r, r++) {
      for (let i = r; i < wedges * r; i++) expect(beadOf[s + i]).toBe(beadOf[s + i - r]);
    }
    expect(report.changesBefore).toBe(changesIn(panel.beadOf));
    expect(report.changesAfter).toBe(changesIn(beadOf));
    expect(report.changesAfter).toBeLessThan(0.9 * report.changesBefore);
    const before = sumOf(panel.stitches, panel.beadOf);
    expect(sumOf(panel.stitches, beadOf)).toBeLessThanOrEqual(1.1 * before + 1e-3);
  });

  it('stands in the pattern, and the difference reported is the one after it', () => {
    const wish = {
      picture: grain(),
      pictureName: 'grain',
      title: 'grain',
      beads,
      colours: 5,
      shape: { wedges: 7, rounds: 12, beadDiameterMm: 2.1 },
      place: { place: 'fill' },
      art: 'photo',
      background: '#ffffff',
      detail: 0,
    } as const;
    const plain = makePattern(wish);
    expect(plain.pattern.choice).not.toHaveProperty('tidy');
    expect(plain.report.meanDifference).toBeCloseTo(plain.pattern.choice!.objective, 4);
    const { pattern, report } = makePattern({ ...wish, tidy: 4 });
    const { tidy, objective } = pattern.choice!;
    expect(objective).toBe(plain.pattern.choice!.objective);
    expect(tidy!.changesBefore).toBe(colourChanges(plain.pattern));
    expect(tidy!.changesAfter).toBe(colourChanges(pattern));
    expect(report.meanDifference).toBeCloseTo(objective * (1 + tidy!.costPercent / 100), 4);
    expect(lettersInWorkingOrder(pattern.panels[0])).not.toBe(
      lettersInWorkingOrder(plain.pattern.panels[0]),
    );
    expect(findProblems(JSON.stringify(pattern), 'pattern.json').problems).toEqual([]);
  });
});

describe('on the command line', () => {
  const chart = (...more: string[]) =>
    inProcess('chart', fixture('dahlia.jpg').pathname, '--dry-run', '--rounds', '9', ...more);

  it('tidies at 2 % unless told otherwise, and not at all where it dithers', async () => {
    const said = async (...more: string[]) =>
      JSON.parse((await chart('--json', ...more)).out) as Record<string, unknown>;
    expect(await said()).toMatchObject({ tidy: { percent: 2 }, dither: null });
    expect(await said('--tidy', '0')).toMatchObject({ tidy: null, dither: null });
    expect(await said('--dither', '0.75')).toMatchObject({
      tidy: null,
      dither: { strength: 0.75 },
    });
    expect((await chart('--tidy', '5')).out).toMatch(
      /tidied +colour changes from \d+ to \d+, stray/,
    );
    expect((await chart('--dither', '1')).out).toMatch(/dithered +strength 1/);
  });

  it('refuses both at once and says why', async () => {
    const { code, err } = await chart('--tidy', '3', '--dither', '0.5');
    expect(code).toBe(2);
    expect(err).toContain('tidying takes away the single beads that dithering strews in');
    for (const wrong of [['--tidy', '-1'], ['--tidy', 'x'], ['--dither', '2'], ['--dither']]) {
      expect((await chart(...wrong)).code).toBe(2);
    }
  });
});

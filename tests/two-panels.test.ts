import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chooseBeads } from '../src/core/beads/choice/choose.js';
import { parseHex } from '../src/core/colour/hex.js';
import { linearToLab65 } from '../src/core/colour/lab.js';
import { decideBeads } from '../src/core/beads/decide-beads.js';
import { RondureError } from '../src/core/errors.js';
import { panelFootprints } from '../src/core/panel/footprints.js';
import { backStartDegrees } from '../src/core/panel/meet.js';
import { layPanel } from '../src/core/panel/lay.js';
import { planFrame } from '../src/core/purse/frame/plan.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import {
  defaultDetail,
  stitchImportance,
} from '../src/core/picture/importance/stitch-importance.js';
import { makePattern } from '../src/core/make.js';
import type { PanelWish } from '../src/core/make.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { checkPattern } from '../src/core/pattern/read/check.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { beadCounts, beadsOfPanel, lettersInWorkingOrder } from '../src/core/pattern/stitches.js';
import { placePicture } from '../src/core/picture/sampling/place.js';
import { samplePanel } from '../src/core/picture/sampling/sample.js';
import { completeShape } from '../src/core/panel/shape.js';
import { stockLimits } from '../src/core/beads/stock/limits.js';
import { materials } from '../src/core/pages/lists/materials.js';
import { roundsText } from '../src/core/pages/lists/rounds.js';
import { seamBeside, sewingText, sewnPairs } from '../src/core/pages/lists/sewing.js';
import { expandStringing, stringingCsv } from '../src/core/pages/lists/stringing.js';
import { en } from '../src/words/index.js';
import { paint, sequence } from './support/paint.js';

const mixed = readPalette(readFileSync('palettes/drawers.csv', 'utf8'), 'drawers').beads;

/** Blots in a dozen colours. */
function blots(seed: number) {
  const next = sequence(seed);
  const spots = Array.from({ length: 40 }, () => [next(100), next(100), next(12)]);
  const colours = Array.from({ length: 12 }, () => [next(256), next(256), next(256)] as const);
  return paint(100, 100, (x, y) => {
    const near = spots.reduce((a, b) =>
      Math.hypot(x - a[0], y - a[1]) < Math.hypot(x - b[0], y - b[1]) ? a : b,
    );
    return colours[near[2]];
  });
}

function wish(more: Partial<PanelWish> = {}): PanelWish {
  return {
    picture: blots(1),
    pictureName: 'one.png',
    title: 'two',
    beads: mixed,
    colours: 6,
    shape: { wedges: 7, rounds: 10, beadDiameterMm: 2.1 },
    place: { place: 'fill' },
    art: 'photo',
    background: '#ffffff',
    tidy: 3,
    ...more,
  };
}

const other = { picture: blots(2), pictureName: 'other.png' };

describe('a pattern of two panels', () => {
  it('chooses for both as for one panel with the stitches of both', () => {
    const { pattern, report } = makePattern(wish({ back: other, tidy: 0 }));
    expect(pattern.panels.map(({ name }) => name)).toEqual(['front', 'back']);
    expect(checkPattern(pattern)).toEqual([]);
    const labs: number[] = [];
    const weights: number[] = [];
    [wish().picture, other.picture].forEach((picture, n) => {
      const { startDegrees } = pattern.panels[n];
      const geometry = panelGeometry(pattern.shape, { startDegrees });
      const footprints = panelFootprints(geometry);
      const place = placePicture(picture, geometry, { place: 'fill' });
      const background = parseHex('#ffffff')!;
      const more = { picture, geometry, footprints, place, art: 'photo', background } as const;
      const { linear, bare } = samplePanel(more);
      const own = Array.from({ length: geometry.count }, (_, s) => [
        ...linearToLab65(linear[3 * s], linear[3 * s + 1], linear[3 * s + 2]),
      ]).flat();
      labs.push(...own);
      const { neighbours } = footprints;
      const weighed = { geometry, neighbours, labs: Float64Array.from(own), bare };
      weights.push(
        ...stitchImportance({ ...weighed, detail: defaultDetail, repeat: false }).weights,
      );
    });
    const expected = chooseBeads({
      stitches: Float64Array.from(labs),
      weights: Float64Array.from(weights),
      palette: Float64Array.from(mixed.flatMap((bead) => [...bead.lab])),
      most: 6,
    });
    const idOf = new Map(pattern.beads.map(({ letter, id }) => [letter, id]));
    const got = pattern.panels.map(lettersInWorkingOrder).join('');
    expect(Array.from(got, (letter) => idOf.get(letter))).toEqual(
      Array.from(expected.beadOf, (bead) => mixed[bead].id),
    );
    expect(pattern.choice!.objective).toBeCloseTo(expected.objective, 6);
    expect(pattern.choice!.proven).toBe(true);
    expect(report.panels.map(({ beads, stitches }) => [beads, stitches])).toEqual([
      [385, 385],
      [385, 385],
    ]);
    expect(report.panels[0].meanDifference).toBe(report.meanDifference);
    expect(report.panels[1].meanDifference).not.toBe(report.meanDifference);
  });

  it('puts what is top left in the picture top left on both faces', () => {
    // Four quarters in four colours; their middles are looked at on the bead face.
    const quarters = paint(100, 100, (x, y) =>
      x < 50 ? (y < 50 ? [200, 30, 30] : [30, 30, 200]) : y < 50 ? [30, 160, 30] : [240, 240, 240],
    );
    for (const [hand, beadsFace, start] of [
      ['right', 'away', undefined],
      ['left', 'away', 77],
      ['right', 'toward', -130],
    ] as const) {
      for (const back of ['same', { picture: quarters, pictureName: 'b' }] as const) {
        const shape = { wedges: 7, rounds: 12, beadDiameterMm: 2.1, hand, beadsFace };
        const { pattern } = makePattern(
          wish({
            picture: quarters,
            shape,
            back,
            colours: 4,
            ...(start !== undefined && { startDegrees: start }),
          }),
        );
        for (const panel of pattern.panels) {
          const { startDegrees } = panel;
          const { centres, count } = panelGeometry(pattern.shape, { startDegrees });
          const marks = lettersInWorkingOrder(panel);
          const hexAt = new Map(pattern.beads.map(({ letter, hex }) => [letter, parseHex(hex)!]));
          for (let s = 0; s < count; s++) {
            const [x, y] = centres.subarray(2 * s);
            if (Math.abs(x) < 4 || Math.abs(y) < 4) continue;
            const [red, green, blue] = hexAt.get(marks[s])!;
            const topLeft = red > 1.5 * green && red > 1.5 * blue;
            expect(topLeft, `${panel.name} ${x} ${y}`).toBe(x < 0 && y < 0);
          }
        }
      }
    }
  });

  it('gives the same picture the same rounds on both sides, unless it starts elsewhere', () => {
    const { pattern } = makePattern(wish({ back: 'same' }));
    const [front, back] = pattern.panels;
    expect(back.rounds).toEqual(front.rounds);
    expect(back.picture).toEqual(front.picture);
    const turned = makePattern(wish({ back: 'same', startDegrees: 10 })).pattern.panels;
    expect(turned[0].startDegrees).toBe(10);
    expect(turned[1].startDegrees).toBe(backStartDegrees(pattern.shape, 10));
    expect(turned[1].rounds).not.toEqual(turned[0].rounds);
  });

  it('makes a plain back of one bead, which is kept and has no say in the rest', () => {
    const plain = mixed.findIndex(({ id }) => id === 'op-21');
    const { pattern, report } = makePattern(wish({ back: { plain }, tidy: 0 }));
    const [front, back] = pattern.panels;
    expect(back.picture).toBeUndefined();
    const letter = pattern.beads.find(({ id }) => id === 'op-21')!.letter;
    expect(new Set(lettersInWorkingOrder(back))).toEqual(new Set([letter]));
    expect(report.panels[1]).toEqual({ name: 'back', stitches: 385, beads: 385, colourChanges: 0 });
    expect(checkPattern(pattern)).toEqual([]);
    // The front is what it is alone with that bead kept.
    const alone = makePattern(wish({ keep: [plain], tidy: 0, startDegrees: front.startDegrees }));
    const ids = ({ beads }: Pattern, marks: string) =>
      Array.from(marks, (mark) => beads.find((bead) => bead.letter === mark)!.id);
    expect(ids(pattern, lettersInWorkingOrder(front))).toEqual(
      ids(alone.pattern, lettersInWorkingOrder(alone.pattern.panels[0])),
    );
    expect(pattern.choice!.objective).toBe(alone.pattern.choice!.objective);
    expect(materials(pattern).reduce((sum, { count }) => sum + count, 0)).toBe(770);
    // Each panel's key names its own beads only.
    expect(beadsOfPanel(pattern, 1).map(({ id }) => id)).toEqual(['op-21']);
    const names = (text: string) => text.match(/^ {2}[A-Z] {2}.*$/gm)!.length;
    expect(names(roundsText(pattern, 1, en))).toBe(1);
    expect(names(roundsText(pattern, 0, en))).toBe(beadsOfPanel(pattern, 0).length);
  });

  it('tidies each panel within its own budget and tells both together', () => {
    const before = makePattern(wish({ back: other, tidy: 0 })).report.panels;
    const { pattern, report } = makePattern(wish({ back: other, tidy: 4 }));
    const { tidy } = pattern.choice!;
    const changes = (panels: typeof before) =>
      panels.reduce((sum, { colourChanges }) => sum + colourChanges, 0);
    expect(tidy!.changesBefore).toBe(changes(before));
    expect(tidy!.changesAfter).toBe(changes(report.panels));
    expect(tidy!.changesAfter).toBeLessThan(tidy!.changesBefore);
    expect(tidy!.costPercent).toBeLessThanOrEqual(4);
  });

  it('reads back from the stringing lists of both', () => {
    const { pattern } = makePattern(
      wish({ back: other, background: 'bare', place: { place: 'inside' } }),
    );
    pattern.panels.forEach((panel, index) => {
      const strung = expandStringing(stringingCsv(pattern, index));
      const worked = lettersInWorkingOrder(panel).replaceAll('.', '');
      expect([...strung].reverse().join('')).toBe(worked);
    });
    expect(lettersInWorkingOrder(pattern.panels[1])).toContain('.');
  });

  it('repeats a motif in every wedge of both', () => {
    const { pattern } = makePattern(
      wish({ back: other, place: { place: 'inside', repeat: true } }),
    );
    for (const { rounds } of pattern.panels) {
      rounds.forEach((marks, index) => expect(marks).toBe(marks.slice(0, index + 1).repeat(7)));
    }
  });

  it('decides for one panel what it decided before there were two', () => {
    const geometry = panelGeometry(completeShape({ wedges: 7, rounds: 8, beadDiameterMm: 2.1 }));
    const footprints = panelFootprints(geometry);
    const { picture } = wish();
    const place = placePicture(picture, geometry, { place: 'fill' });
    const more = { picture, geometry, footprints, place, art: 'photo' } as const;
    const colours = samplePanel({ ...more, background: [255, 255, 255] });
    const one = decideBeads(wish(), { geometry, footprints, colours, repeat: false });
    const { pattern } = makePattern(wish({ shape: { wedges: 7, rounds: 8, beadDiameterMm: 2.1 } }));
    expect(one.choice).toEqual(pattern.choice);
  });
});

describe('two panels out of one stock', () => {
  const leftovers = readPalette(readFileSync('fixtures/leftovers.csv', 'utf8'), 'x').beads;
  const stocked = (more: Partial<PanelWish>) => wish({ beads: leftovers, useStock: true, ...more });

  it('never takes more of a jar for both than it holds', () => {
    const limits = stockLimits(leftovers);
    const limitOf = new Map(leftovers.map(({ id }, j) => [id, limits[j]]));
    const plain = limits.indexOf(Math.max(...limits));
    for (const more of [
      { back: other },
      { back: 'same' },
      { back: { plain } },
      { back: other, place: { place: 'inside', repeat: true } },
    ] as Partial<PanelWish>[]) {
      const { pattern, report } = makePattern(stocked({ tidy: 10, ...more }));
      const counts = beadCounts(pattern);
      for (const { id, letter } of pattern.beads) {
        expect(counts.get(letter)).toBeLessThanOrEqual(limitOf.get(id)!);
        const told = report.stock!.beads.find((bead) => bead.id === id)!;
        expect(told.used).toBe(counts.get(letter));
      }
    }
  });

  it('says which jar is too small for a plain back', () => {
    const limits = stockLimits(leftovers);
    const plain = limits.indexOf(Math.min(...limits));
    const { id, name } = leftovers[plain];
    try {
      makePattern(stocked({ back: { plain } }));
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(RondureError);
      expect(error).toMatchObject({
        code: 'stock-too-small-for-plain',
        facts: { id, name, needed: 385, most: limits[plain] },
      });
    }
  });
});

describe('sewing.txt', () => {
  it('counts pairs that make N·R+1, at mirrored hours', () => {
    const { pattern } = makePattern(wish({ back: other }));
    const pairs = sewnPairs(pattern);
    expect(pairs).toHaveLength(12);
    for (const { front, back, frontHour, backHour } of pairs) {
      expect(front + back).toBe(71);
      expect((frontHour + backHour) % 12).toBe(0);
    }
    const text = sewingText(pattern, en);
    expect(text).toMatch(/Stitch 1 of the front meets stitch 70 of the back/);
    expect(text).toMatch(/up to one\s+row apart/);
    // A little less than half of the rim stays open (common practice, no source).
    const told = [...text.matchAll(/^ {2}(\d+) o’clock/gm)].map(([, hour]) => Number(hour));
    expect(told).toEqual([3, 4, 5, 6, 7, 8, 9]);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThan(80);
    const shape = { wedges: 7, rounds: 10, beadDiameterMm: 2.1, construction: 'joined' as const };
    const joined = makePattern(wish({ back: other, shape })).pattern;
    expect(sewingText(joined, en)).toMatch(/edge on edge/);
  });

  it('sews what the frame leaves, and says what lies in it', () => {
    const frame = {
      kind: 'half-round',
      widthMm: 40,
      heightMm: 20,
      fixing: 'sewn',
      ratio: 1.15,
      gatherPercent: 0,
    } as const;
    for (const construction of ['spiral', 'joined'] as const) {
      const shape = { wedges: 7, rounds: 10, beadDiameterMm: 2.1, construction };
      for (const back of [other, { plain: 3 }]) {
        const { pattern, report } = makePattern(wish({ back, frame, shape }));
        const seam = seamBeside(pattern, pattern.frame!);
        const held = [seam.frontInFrame, seam.backInFrame].map((runs) =>
          runs.reduce((sum, { from, to }) => sum + to - from + 1, 0),
        );
        // Every pair is sewn, or one or both of its stitches lie in the frame.
        const both = (held[0] + held[1] - seam.halves) / 2;
        expect(seam.pairs + seam.halves + both).toBe(70);
        expect(seam.halves).toBeLessThanOrEqual(construction === 'joined' ? 0 : 4);
        expect(seam.first!.front + seam.first!.back).toBe(71);
        expect(seam.last!.front - seam.first!.front + 1).toBe(seam.pairs);
        pattern.panels.forEach((panel, n) => {
          const { length } = lettersInWorkingOrder(panel).replaceAll('.', '');
          expect(length).toBeLessThan(385);
          expect(report.panels[n].beads).toBe(length);
          const rim = panel.rounds[9];
          expect(rim.split('.').length - 1).toBe(held[n]);
        });
        const text = sewingText(pattern, en).replaceAll(/\s+/g, ' ');
        expect(text).toContain(`Sew ${seam.pairs} pairs,`);
        expect(/climb alike/.test(text)).toBe(seam.halves > 0);
        // What is pinned is sewn: none of it lies in the frame.
        const rows = [...text.matchAll(/\d o’clock \(\d+ on the back\) (\d+) (\d+)/g)];
        expect(rows.length).toBeGreaterThan(4);
        for (const [, at, meets] of rows) {
          expect(Number(at)).toBeGreaterThanOrEqual(seam.first!.front);
          expect(Number(at)).toBeLessThanOrEqual(seam.last!.front);
          expect(Number(at) + Number(meets)).toBe(71);
        }
        const plan = planFrame(pattern.frame!, layPanel(pattern.shape, pattern.panels[0]).geometry);
        expect(text).toContain(`(${plan.stitches}) evenly over the rail, `);
        expect(text).toMatch(/(\d % shorter .* stretch it|\d % longer .* ease it in) evenly\. $/);
      }
    }
  });

  it('tells the pair where the starts of the panels were changed by hand', () => {
    const { pattern } = makePattern(wish({ back: other }));
    const [front, back] = pattern.panels;
    // Three rim stitches further on.
    const moved = { ...back, startDegrees: back.startDegrees + (3 * 360) / 70 };
    const text = sewingText({ ...pattern, panels: [front, moved] }, en);
    expect(text).toMatch(/Stitch 70 of the front meets stitch 68 of the back/);
  });
});

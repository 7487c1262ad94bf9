import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acrossRange } from '../src/core/panel/across.js';
import { acrossMm } from '../src/core/panel/edge.js';
import { patternText } from '../src/core/pattern/serialise.js';
import { parsePattern } from '../src/core/pattern/read/parse.js';
import type { Pattern, Thread } from '../src/core/pattern/pattern.js';
import { rimMm, sewing } from '../src/core/thread/sewing.js';
import { texOf, threadDiameterMm, threadFit, threadWarnings } from '../src/core/thread/fit.js';
import { beadLengths, panelLengths } from '../src/core/thread/lengths.js';
import { lengthThread, panelThread, threadFor } from '../src/core/thread/need.js';
import { threadPerStitch } from '../src/core/thread/per-stitch.js';
import { shoppingText } from '../src/core/pages/lists/shopping-text.js';
import { stringingText } from '../src/core/pages/lists/stringing.js';
import { en } from '../src/words/index.js';
import { anyPattern, patternOf, someBeads } from './support/patterns.js';
import { smallSwatch } from './support/swatch.js';

const plain = (wedges: number, rounds: number, size = '11/0') =>
  patternOf(
    Array.from({ length: rounds }, (_, n) => 'A'.repeat(wedges * (n + 1))),
    { wedges },
    [{ ...someBeads(1)[0], size }],
  );
const withThread = (pattern: Pattern, thread: Thread): Pattern => ({ ...pattern, thread });

describe('thread of a stitch', () => {
  it('is by bead size (common practice, no source)', () => {
    const sizes = ['15/0', '11/0', '10/0', '8/0', '6/0'];
    expect(sizes.map((size) => threadPerStitch(plain(7, 3, size)).mm)).toEqual([
      18, 24, 27, 36, 48,
    ]);
  });

  it('is 11 stitch widths where the size is another or not known, and the own figure goes first', () => {
    const odd = plain(7, 3, '9/0');
    expect(threadPerStitch(odd)).toMatchObject({ mm: 11 * odd.shape.stitchWidthMm, from: 'width' });
    const own = withThread(odd, { perStitchMm: 26 });
    expect(threadPerStitch(own)).toMatchObject({ mm: 26, from: 'pattern' });
  });

  it('is that of the size that is worked most', () => {
    const [a, b] = someBeads(2);
    const pattern = patternOf(['AAB', 'ABBBBB'], {}, [a, { ...b, size: '8/0' }]);
    expect(threadPerStitch(pattern).mm).toBe(36);
  });
});

describe('thread of a piece', () => {
  it('3,000 stitches of 11/0 take 72 m net and about 85 m with reserve and tails (worked by hand)', () => {
    // Two panels of two lengths each: 4 lengths, 8 tails of 20 cm.
    const need = threadFor(plain(7, 20), 3000, 4);
    expect(need.netMm).toBe(72_000);
    expect(need.reserveMm).toBeCloseTo(10_800, 6);
    expect(need.tailsMm).toBe(1600);
    expect(Math.ceil(need.totalMm / 1000)).toBe(85);
  });

  it('its lengths add up to it, bare stitches count, and each join has two tails', () => {
    fc.assert(
      fc.property(anyPattern, fc.integer({ min: 3, max: 300 }), (given, lengthBeads) => {
        const pattern = withThread(given, { lengthBeads, tailMm: 150, reservePercent: 20 });
        const lengths = panelLengths(pattern, 0);
        const whole = panelThread(pattern, 0);
        const stitches = given.panels[0].rounds.join('').length;
        expect(whole.stitches).toBe(stitches);
        expect(whole.tailsMm).toBe(150 + 150 + (lengths.length - 1) * 2 * 150);
        const sum = lengths.reduce((mm, one) => mm + lengthThread(pattern, one).totalMm, 0);
        expect(sum).toBeCloseTo(whole.totalMm, 3);
      }),
      { numRuns: 100 },
    );
  });

  it('stringing.txt tells the thread of each length', () => {
    const text = stringingText(plain(7, 20), 0, en).replace(/\s+/g, ' ');
    // 735 stitches of 24 mm, 15 % more, two tails of 20 cm: 17.64 + 2.646 + 0.4 = 20.686 m.
    expect(text.match(/It takes about 20.7 m of thread/g)).toHaveLength(2);
    const one = stringingText(plain(7, 10), 0, en).replace(/\s+/g, ' ');
    // 385 stitches: 9.24 + 1.386 + 0.4 = 11.026 m.
    expect(one).toContain('about 0.58 m when strung, and takes about 11.1 m of thread');
  });

  it('a measured bead length holds for the commonest size only', () => {
    const [a, b, c] = someBeads(3);
    const beads = [a, { ...b, size: '8/0' }, c];
    expect([...beadLengths(beads, { beadLengthMm: 1.42 }).values()]).toEqual([1.42, 2.1, 1.42]);
    const short = withThread(plain(7, 20), { beadLengthMm: 1 });
    expect(panelLengths(short, 0)).toHaveLength(1);
    expect(panelLengths(short, 0)[0].strungMm).toBeCloseTo(1470, 6);
  });
});

describe('thread against bead hole', () => {
  it('thickness by tex agrees with the usual table (worked out: 0.0376 · root of tex)', () => {
    const table = [
      [200, 0.53],
      [125, 0.42],
      [92, 0.36],
      [182, 0.51],
      [50, 0.27],
      [35, 0.22],
    ];
    for (const [tex, mm] of table) expect(threadDiameterMm({ tex })).toBeCloseTo(mm, 2);
    for (const [tex] of table) expect(texOf(threadDiameterMm({ tex })!)).toBeCloseTo(tex, 2);
  });

  it('11/0 (hole 0.8 mm): singly up to 0.52 mm, folded up to 0.38 mm, with a warning beyond', () => {
    const codes = (thread: Thread) =>
      threadWarnings(withThread(plain(7, 5), thread)).map(({ code }) => code);
    expect(codes({})).toEqual([]);
    expect(codes({ diameterMm: 0.38 })).toEqual([]);
    expect(codes({ diameterMm: 0.39 })).toEqual(['thread-too-thick-doubled']);
    expect(codes({ diameterMm: 0.52 })).toEqual(['thread-too-thick-doubled']);
    expect(codes({ diameterMm: 0.53 })).toEqual(['thread-too-thick']);
    expect(codes({ tex: 125 })).toEqual(['thread-too-thick-doubled']);
    expect(codes({ tex: 70 })).toEqual([]);
  });

  it('goes by the narrowest hole of the beads that are worked', () => {
    const [a, b, c] = someBeads(3);
    const beads = [a, { ...b, size: '8/0' }, { ...c, size: '15/0' }];
    expect(threadFit(patternOf(['AAB', 'ABBBBB'], {}, beads))!.size.name).toBe('11/0');
    expect(threadFit(patternOf(['AAB', 'ABBBBC'], {}, beads))!.size.name).toBe('15/0');
    expect(threadFit(plain(7, 3, '9/0'))).toBeUndefined();
  });

  it('a slip in the thread of a stitch is told with what is usual', () => {
    const pattern = withThread(plain(7, 5), { perStitchMm: 2.4 });
    const [found] = threadWarnings(pattern);
    expect(found.code).toBe('thread-per-stitch-unusual');
    expect(threadWarnings(withThread(plain(7, 5), { perStitchMm: 28 }))).toEqual([]);
  });
});

describe('seam and frame', () => {
  it('a rim is as long as a circle or a polygon', () => {
    const shape = { wedges: 6, rounds: 20, roundHeightMm: 2 } as const;
    expect(rimMm({ ...shape, outline: 'circle' })).toBeCloseTo(Math.PI * 82, 9);
    // A hexagon with its sides 41 mm from the centre: six sides of 2·41/√3.
    expect(rimMm({ ...shape, outline: 'polygon' })).toBeCloseTo((12 * 41) / Math.sqrt(3), 9);
  });

  it('3 times the seam, 5 times the arc on each side; 95 mm: 13.4 cm of arc (worked out, no source)', () => {
    const pattern = plain(6, 20);
    pattern.shape = { ...pattern.shape, outline: 'circle', roundHeightMm: 95 / 41 };
    const { rimMm: rim, arcMm, seamMm, seamThreadMm, frameThreadMm } = sewing(pattern);
    expect(rim).toBeCloseTo(298.5, 1);
    expect(arcMm).toBeCloseTo(134.3, 1);
    expect(arcMm + seamMm).toBeCloseTo(rim, 9);
    expect(seamThreadMm).toBeCloseTo(3 * seamMm, 9);
    // 60 to 80 cm of sewing thread a side.
    expect(frameThreadMm / 2).toBeGreaterThan(600);
    expect(frameThreadMm / 2).toBeLessThan(800);
  });
});

it('a frame to be bought goes with every size that the panel may have, and with one after a swatch', () => {
  const pattern = plain(7, 20);
  const { leastMm, mostMm } = acrossRange(pattern);
  const found = sewing(pattern);
  // Panel over frame 1.1 to 1.3, usually 1.15 (worked out, no source).
  expect(found.frameWidthMm).toBeCloseTo((leastMm + mostMm) / 2 / 1.15, 9);
  expect(found.frameRangeMm).toEqual([mostMm / 1.3, leastMm / 1.1]);
  const measured = sewing({ ...pattern, swatch: smallSwatch() });
  expect(measured.frameWidthMm).toBeCloseTo(acrossMm(pattern.shape) / 1.15, 9);
});

describe('a frame in the pattern', () => {
  const frame = { kind: 'half-round', widthMm: 85, heightMm: 42.5, fixing: 'sewn' };
  const framed = (more: object = {}) => {
    const pattern = plain(7, 20) as unknown as Record<string, unknown>;
    pattern.frame = { ...frame, ratio: 1.15, gatherPercent: 0, ...more };
    return pattern as unknown as Pattern;
  };

  it('gives its rail: half a circle 85 mm wide is π · 42.5 mm long', () => {
    const found = sewing(framed());
    expect(found).toMatchObject({ estimate: false, frameWidthMm: 85, fixing: 'sewn' });
    expect(found.arcMm).toBeCloseTo(Math.PI * 42.5, 5);
    expect(found.frameThreadMm).toBeCloseTo(10 * Math.PI * 42.5, 4);
    expect(found.seamMm).toBeCloseTo(found.rimMm - Math.PI * 42.5, 5);
    expect(found.braidMm).toBeCloseTo(2 * (Math.PI * 42.5 + 20), 4);
  });

  it('gathered rim leaves less to sew together; glue takes no thread', () => {
    const gathered = sewing(framed({ gatherPercent: 10 }));
    expect(gathered.seamMm).toBeCloseTo(gathered.rimMm - 1.1 * Math.PI * 42.5, 4);
    const glued = framed({ fixing: 'glued' });
    expect(sewing(glued).frameThreadMm).toBe(0);
    const text = shoppingText(glued, en).replace(/\s+/g, ' ');
    expect(text).toContain('Clasp frame, half-round, to glue in, 85 mm wide');
    expect(text).toContain('paper cord to pack its channel: 27 cm');
    expect(text).toContain('are glued into the frame.');
  });

  it('what cannot be read of it is estimated', () => {
    const found = sewing(framed({ kind: 'star', heightMm: 'tall' }));
    expect(found).toMatchObject({ estimate: true, frameWidthMm: 85, kind: undefined });
  });
});

it('pattern.json keeps what is said of the thread, in one order', () => {
  const thread: Thread = {
    tailMm: 150,
    name: 'silk',
    perStitchMm: 25.5,
    tex: 90,
    reservePercent: 0,
    beadLengthMm: 1.48,
  };
  const text = patternText(withThread(plain(7, 3), thread));
  expect(parsePattern(text, 'x').thread).toEqual(thread);
  expect(patternText(parsePattern(text, 'x'))).toBe(text);
});

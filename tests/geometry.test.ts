/**
 * The layout of a panel, measured where the beads lie: on centres in millimetres. Figures come from
 * published tables or from arithmetic typed in here, never from the formula under test.
 */
import { describe, expect, it } from 'vitest';
import { parentOf, pairStart } from '../src/core/panel/links.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import type { PanelGeometry } from '../src/core/panel/geometry.js';
import { defaultStartDegrees, turnsInWedges } from '../src/core/panel/turn.js';
import {
  completeShape,
  directionOf,
  naturalOutline,
  stitchCount,
} from '../src/core/panel/shape.js';
import type { ShapeWish } from '../src/core/panel/shape.js';

const increases = ['first', 'middle', 'last'] as const;
const constructions = ['spiral', 'joined'] as const;
const hands = ['right', 'left'] as const;
const faces = ['away', 'toward'] as const;

const shapeOf = (wish: Partial<ShapeWish> = {}) =>
  completeShape({ wedges: 7, rounds: 20, beadDiameterMm: 2.1, ...wish });

/** x, y of the centre of stitch i of round r. */
function centre({ centres, shape }: PanelGeometry, r: number, i: number): [number, number] {
  const s = (shape.wedges * r * (r - 1)) / 2 + i;
  return [centres[2 * s], centres[2 * s + 1]];
}

/** Angle of a point clockwise from 12 o'clock, radians; y points down. */
const clockwise = ([x, y]: readonly [number, number]) => Math.atan2(x, -y);
const wrap = (angle: number) => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));

/**
 * How far the stitches of round r sit behind the ones they are worked into, on average, in stitch
 * widths: angle between child and parent, as a share of the angle that one stitch takes up.
 */
function measuredLean(geometry: PanelGeometry, r: number): number {
  const { shape } = geometry;
  const n = shape.wedges * r;
  const againstWork = clockwiseOfWork(geometry) ? -1 : 1;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const child = clockwise(centre(geometry, r, i));
    const parent = clockwise(centre(geometry, r - 1, parentOf(shape, r, i)));
    sum += againstWork * wrap(child - parent);
  }
  return sum / n / ((2 * Math.PI) / n);
}

/** Which way the beads follow each other, from three centres of the rim. */
function clockwiseOfWork(geometry: PanelGeometry): boolean {
  const { rounds } = geometry.shape;
  const [ax, ay] = centre(geometry, rounds, 0);
  const [bx, by] = centre(geometry, rounds, 1);
  return ax * by - ay * bx > 0;
}

describe('counts', () => {
  it.each([
    // Counted by hand: N·R(R+1)/2.
    [7, 20, 1470],
    [7, 60, 12810],
    [3, 2, 9],
    [12, 80, 38880],
  ])('%i wedges, %i rounds: %i stitches', (wedges, rounds, count) => {
    const shape = shapeOf({ wedges, rounds });
    expect(stitchCount(shape)).toBe(count);
    const { centres, tilts, count: made } = panelGeometry(shape);
    expect([made, centres.length, tilts.length]).toEqual([count, 2 * count, count]);
    expect(centres.every(Number.isFinite) && tilts.every(Number.isFinite)).toBe(true);
  });

  it('keeps centres to a millionth of a millimetre and has no negative zero', () => {
    const { centres } = panelGeometry(shapeOf());
    for (const length of centres) {
      expect(Math.abs(length * 1e6 - Math.round(length * 1e6))).toBeLessThan(1e-6);
      expect(Object.is(length, -0)).toBe(false);
    }
  });
});

describe('links', () => {
  it('gives every stitch one child and one in each wedge two', () => {
    for (const increase of increases) {
      for (let r = 2; r <= 30; r++) {
        const children = new Array<number>(5 * (r - 1)).fill(0);
        let before = 0;
        for (let i = 0; i < 5 * r; i++) {
          const parent = parentOf({ increase }, r, i);
          expect(parent - before).toBeGreaterThanOrEqual(0);
          expect(parent - before).toBeLessThanOrEqual(1);
          children[parent]++;
          before = parent;
        }
        for (let k = 0; k < 5; k++) {
          const wedge = children.slice(k * (r - 1), (k + 1) * (r - 1));
          expect([...wedge].sort()).toEqual([...new Array<number>(r - 2).fill(1), 2]);
          const at = wedge.indexOf(2);
          expect(pairStart({ increase }, r)).toBe(at);
          if (increase === 'first') expect(at).toBe(0);
          if (increase === 'last') expect(at).toBe(r - 2);
          if (increase === 'middle') expect(Math.abs(at - (r - 2) / 2)).toBeLessThanOrEqual(0.5);
        }
      }
    }
  });

  it('alternates the two middles of even rounds', () => {
    // Round 2 doubles 0 of 0, 1; round 4 doubles 2 of 0-3; round 6 doubles 2 of 0-5; round 8 4.
    expect([3, 5, 7, 9].map((r) => pairStart({ increase: 'middle' }, r))).toEqual([0, 2, 2, 4]);
  });
});

describe('lean, measured from child to parent', () => {
  const wishes = constructions.flatMap((construction) =>
    increases.flatMap((increase) =>
      hands.flatMap((hand) =>
        faces.map((beadsFace) => ({ construction, increase, hand, beadsFace })),
      ),
    ),
  );
  it.each(wishes)('$construction, $increase, $hand hand, beads $beadsFace', (wish) => {
    for (const wedges of [5, 6, 7, 12]) {
      for (const lean of [-1, -0.3, 0, 0.25, 0.5, 1]) {
        for (const outline of new Set(['circle', naturalOutline(wish.increase, lean)] as const)) {
          const geometry = panelGeometry(shapeOf({ ...wish, wedges, lean, outline, rounds: 24 }));
          for (let r = 4; r <= 24; r++) {
            const off = Math.abs(measuredLean(geometry, r) - lean);
            if (off > 0.05) {
              expect.fail(`${wedges} wedges, lean ${lean}, ${outline}, round ${r}: off by ${off}`);
            }
          }
        }
      }
    }
  });

  it('is not kept when turn is left out', () => {
    // First stitch doubled, nothing turned: children then lie half a stitch ahead, not behind.
    const geometry = panelGeometry(shapeOf({ increase: 'first' }), { withoutTurn: true });
    expect(measuredLean(geometry, 20)).toBeCloseTo(-0.5, 1);
  });
});

describe('turn', () => {
  // Harmonic numbers H_n as exact fractions: OEIS A001008 / A002805.
  const harmonic: Record<number, [number, number]> = {
    5: [137, 60],
    10: [7381, 2520],
    15: [1195757, 360360],
    20: [55835135, 15519504],
    22: [19093197, 5173168],
    25: [34052522467, 8923714800],
  };

  it.each(Object.entries(harmonic))('follows the closed forms at round %s', (at, [over, under]) => {
    const R = Number(at);
    const H = over / under;
    let steps = 0;
    for (let r = 2; r < R; r += 2) steps += (r % 4 === 2 ? -0.5 : 0.5) / (r * (r + 1));
    for (const lean of [-1, 0, 0.25, 0.5, 1]) {
      const turn = (increase: (typeof increases)[number]) =>
        turnsInWedges({ rounds: R, increase, lean })[R];
      expect(turn('last')).toBeCloseTo((0.5 - lean) * (H - 1) - 0.5 * (1 - 1 / R), 12);
      expect(turn('first')).toBeCloseTo(0.5 * (1 - 1 / R) - (0.5 + lean) * (H - 1), 12);
      expect(turn('middle')).toBeCloseTo(-lean * (H - 1) + steps, 12);
    }
  });

  it.each([
    ['last', -28.64],
    ['first', -132.81],
    ['middle', -84.65],
  ] as const)('for 6 wedges, 22 rounds, lean 0.5, %s stitch: %f degrees', (increase, degrees) => {
    const turn = turnsInWedges({ rounds: 22, increase, lean: 0.5 })[22] * 60;
    expect(turn).toBeCloseTo(degrees, 2);
    // And on the page: the start of round 22 of joined rounds lies that far from round 1's.
    for (const hand of hands) {
      const geometry = panelGeometry(
        shapeOf({
          wedges: 6,
          rounds: 22,
          increase,
          hand,
          construction: 'joined',
          outline: 'circle',
        }),
        { startDegrees: 0 },
      );
      const [first, last] = [
        clockwise(centre(geometry, 22, 0)),
        clockwise(centre(geometry, 22, 131)),
      ];
      // The wedge line runs midway between the round's last stitch and its first.
      const line = (wrap((first + last) / 2) * 180) / Math.PI;
      const expected = wrap(((hand === 'right' ? 1 : -1) * degrees * Math.PI) / 180);
      const off = ((line - (expected * 180) / Math.PI + 540) % 180) - 0;
      expect(Math.min(off, 180 - off)).toBeLessThan(0.01);
    }
  });

  it.each([
    // A direct placement simulation, degrees by round 5, 10, 15, 22, for 6 wedges.
    ['first', 0.5, [-53, -89, -111, -133]],
    ['last', 0.5, [-24, -27, -28, -29]],
    ['last', 0.25, [-5, 2, 7, 12]],
    ['first', 0, [-15, -31, -42, -52]],
    ['last', 0, [15, 31, 42, 52]],
  ] as const)('agrees with the simulated table: %s stitch, lean %f', (increase, lean, degrees) => {
    const turns = turnsInWedges({ rounds: 22, increase, lean });
    [5, 10, 15, 22].forEach((r, index) => {
      expect(Math.abs(turns[r] * 60 - degrees[index])).toBeLessThanOrEqual(0.75);
    });
  });
});

describe('start', () => {
  it('is 24.459184 degrees for 7 wedges, 20 rounds, last stitch, lean 0.5, right hand, spiral', () => {
    // -(turn(20) + (turn(21) - turn(20))/2)·360/7; with lean 0.5 turn(R) = -(1 - 1/R)/2, so
    // turn(20) = -0.475 and turn(21) = -10/21; their mean is -799/1680 and 799/1680·360/7 = 24.459184.
    expect((799 / 1680) * (360 / 7)).toBeCloseTo(24.459184, 6);
    expect(panelGeometry(shapeOf()).startDegrees).toBe(24.459184);
    expect(panelGeometry(shapeOf({ hand: 'left' })).startDegrees).toBe(-24.459184);
  });

  it('brings the rim’s start to 12 o’clock', () => {
    for (const construction of constructions) {
      for (const hand of hands) {
        for (const increase of increases) {
          const shape = shapeOf({ construction, hand, increase, rounds: 30 });
          const geometry = panelGeometry(shape);
          const first = clockwise(centre(geometry, 30, 0));
          const last = clockwise(centre(geometry, 30, 209));
          const half = Math.PI / 210;
          const sign = hand === 'right' ? 1 : -1;
          // Joined: between last and first stitch. Spiral: half a stitch beyond the last one.
          expect(Math.abs(last + sign * half)).toBeLessThan(0.25 * half);
          if (construction === 'joined')
            expect(Math.abs(first - sign * half)).toBeLessThan(0.25 * half);
          expect(geometry.startDegrees).toBe(defaultStartDegrees(shape, directionOf(shape)));
        }
      }
    }
  });
});

describe('direction and mirror images', () => {
  const [right, left] = hands;
  it.each([
    // Seen on the bead face (common practice, no source).
    [right, 'away', true],
    [right, 'toward', false],
    [left, 'away', false],
    [left, 'toward', true],
  ] as const)('%s hand, beads %s: clockwise %s', (hand, beadsFace, runsClockwise) => {
    const shape = shapeOf({ hand, beadsFace });
    expect(clockwiseOfWork(panelGeometry(shape))).toBe(runsClockwise);
    expect(directionOf(shape)).toBe(runsClockwise ? 1 : -1);
  });

  it.each(
    constructions.flatMap((construction) =>
      increases.flatMap((increase) =>
        [0, 24.5, -77].map((start) => ({ construction, increase, start })),
      ),
    ),
  )('$construction, $increase, start $start', ({ construction, increase, start }) => {
    const made = (hand: 'right' | 'left', beadsFace: 'away' | 'toward', startDegrees: number) =>
      panelGeometry(shapeOf({ construction, increase, hand, beadsFace, rounds: 12 }), {
        startDegrees,
      }).centres;
    const plain = made('right', 'away', start);
    const mirrored = plain.map((length, index) => (index % 2 === 0 ? -length + 0 : length));
    expectSame(made('left', 'away', -start), mirrored);
    expectSame(made('right', 'toward', -start), mirrored);
    expectSame(made('left', 'toward', start), plain);
  });

  it('holds for the default start as well', () => {
    const plain = panelGeometry(shapeOf()).centres;
    const mirrored = plain.map((length, index) => (index % 2 === 0 ? -length + 0 : length));
    expectSame(panelGeometry(shapeOf({ hand: 'left' })).centres, mirrored);
    expectSame(panelGeometry(shapeOf({ hand: 'left', beadsFace: 'toward' })).centres, plain);
  });

  function expectSame(got: Float64Array, wanted: Float64Array) {
    let most = 0;
    got.forEach((length, index) => (most = Math.max(most, Math.abs(length - wanted[index]))));
    expect(most).toBeLessThanOrEqual(1.1e-6);
  }
});

describe('distances', () => {
  it('keep beads half a pitch apart from round 2 on, for every number of wedges and lean', () => {
    for (let wedges = 3; wedges <= 12; wedges++) {
      for (const lean of [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1]) {
        for (const increase of increases) {
          for (const construction of constructions) {
            const shape = shapeOf({ wedges, lean, increase, construction, rounds: 14 });
            const least = leastDistance(panelGeometry(shape), 2) / (1.05 * 2.1);
            // Triangles are the exception: away from the lean at which their rounds nest, the sharp
            // corners of one round come into the sides of the next.
            const nests =
              Math.abs({ first: -0.5, middle: lean, last: 0.5 }[increase] - lean) <= 0.1;
            const triangle = wedges === 3 && shape.outline === 'polygon' && !nests;
            if (least < (triangle ? 0.3 : 0.5)) {
              expect.fail(`${wedges} wedges, ${increase}, lean ${lean}, ${construction}: ${least}`);
            }
          }
        }
      }
    }
  });

  it('along a round are a stitch width, on circles and along sides of polygons', () => {
    for (const outline of ['circle', 'polygon'] as const) {
      const shape = shapeOf({ outline, construction: 'joined', rounds: 25 });
      const geometry = panelGeometry(shape);
      for (const r of [5, 12, 25]) {
        let girth = 0;
        for (let i = 0; i < 7 * r; i++) {
          const [ax, ay] = centre(geometry, r, i);
          const [bx, by] = centre(geometry, r, (i + 1) % (7 * r));
          const apart = Math.hypot(ax - bx, ay - by);
          girth += apart;
          // Corners are cut short and arcs are longer than their chords.
          if (outline === 'circle') expect(apart).toBeCloseTo(shape.stitchWidthMm, 1);
          else if ((i + 1) % r !== 0) expect(apart).toBeCloseTo(shape.stitchWidthMm, 2);
        }
        expect(girth / (7 * r) / shape.stitchWidthMm).toBeGreaterThan(0.95);
        expect(girth / (7 * r) / shape.stitchWidthMm).toBeLessThan(1.001);
      }
    }
  });

  it('from the centre are h·r: on rings exactly, in a spiral on average', () => {
    for (const construction of constructions) {
      const shape = shapeOf({ outline: 'circle', construction });
      const geometry = panelGeometry(shape);
      for (let r = 1; r <= 20; r++) {
        const distances = Array.from({ length: 7 * r }, (_, i) =>
          Math.hypot(...centre(geometry, r, i)),
        );
        const mean = distances.reduce((sum, distance) => sum + distance) / distances.length;
        expect(mean).toBeCloseTo(r * shape.roundHeightMm, 5);
        const climb = Math.max(...distances) - Math.min(...distances);
        const expected =
          construction === 'joined' || r === 1 ? 0 : shape.roundHeightMm * (1 - 1 / (7 * r));
        expect(climb).toBeCloseTo(expected, 5);
      }
    }
  });

  function leastDistance({ centres, shape }: PanelGeometry, fromRound: number): number {
    const from = (shape.wedges * fromRound * (fromRound - 1)) / 2;
    const cell = 4;
    const grid = new Map<number, number[]>();
    let least = Infinity;
    for (let s = from; s < centres.length / 2; s++) {
      const [x, y] = [centres[2 * s], centres[2 * s + 1]];
      const [column, row] = [Math.floor(x / cell), Math.floor(y / cell)];
      for (let c = column - 1; c <= column + 1; c++) {
        for (let l = row - 1; l <= row + 1; l++) {
          for (const other of grid.get(c * 10007 + l) ?? []) {
            least = Math.min(least, Math.hypot(centres[2 * other] - x, centres[2 * other + 1] - y));
          }
        }
      }
      const key = column * 10007 + row;
      const here = grid.get(key);
      if (here) here.push(s);
      else grid.set(key, [s]);
    }
    return least;
  }
});

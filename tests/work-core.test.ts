import { expect, test } from 'vitest';
import { atHook } from '../src/core/work/at-hook.js';
import {
  stepAt,
  strungBefore,
  stringPlans,
  threadStands,
} from '../src/core/work/stringing-steps.js';
import { cuesAt, workStep, workedBefore } from '../src/core/work/round-at-hand.js';
import { parentOf } from '../src/core/panel/links.js';
import { panelGeometry } from '../src/core/panel/geometry.js';
import { completeShape, stitchCount, stitchesBefore } from '../src/core/panel/shape.js';
import { expandStringing, stringingCsv } from '../src/core/pages/lists/stringing.js';
import { panelLengths } from '../src/core/thread/lengths.js';
import { findPlaces, placeOf } from '../src/core/thread/find/find-place.js';
import { beadsOnThread, placesOnThread, workableMarks } from '../src/core/work/on-thread.js';
import { firstOpenRound, openStitches } from '../src/core/work/open-stitches.js';
import { pieceCost } from '../src/core/work/piece-cost.js';
import {
  beginWork,
  goneOver,
  progressOf,
  sameToHands,
  withProgress,
  workedOtherwise,
} from '../src/core/work/progress.js';
import { notesForSlips, readThread } from '../src/core/work/slips.js';
import { somePattern } from './support/work-pattern.js';

// What is done with the hands, step by step: every step together is the panel, and the panel lies as it lies in the hand.

const hands = ['right', 'left'] as const;
const faces = ['away', 'toward'] as const;
const constructions = ['spiral', 'joined'] as const;
const increases = ['first', 'middle', 'last'] as const;

const turned = (x: number, y: number, degrees: number): [number, number] => {
  const a = (degrees * Math.PI) / 180;
  return [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)];
};

test('the present stitch lies at the hook and the round runs as the hand works, for both hands and faces', () => {
  for (const hand of hands)
    for (const beadsFace of faces)
      for (const construction of constructions)
        for (const increase of increases) {
          const wish = { wedges: 7, rounds: 12, beadDiameterMm: 2.1 };
          const shape = completeShape({ ...wish, hand, beadsFace, construction, increase });
          // Right-handers crochet from right to left, left-handers from left to right (handbooks of crochet, passim).
          const away = hand === 'right' ? -1 : 1;
          for (let r = 2; r <= shape.rounds; r++) {
            const first = stitchesBefore(shape, r);
            for (const i of [0, 1, Math.floor(3.4 * r), 7 * r - 2]) {
              const s = first + i;
              const { geometry, degrees } = atHook(shape, s);
              const at = (n: number) =>
                turned(geometry.centres[2 * n], geometry.centres[2 * n + 1], degrees);
              const [x, y] = at(s);
              expect(Math.abs(x)).toBeLessThan(1e-6);
              expect(y).toBeLessThan(0);
              expect(Math.sign(at(s + 1)[0])).toBe(away);
              expect(Math.sign(at(s - 1)[0])).toBe(
                i === 0 && construction === 'joined' ? Math.sign(at(s - 1)[0]) : -away,
              );
              // What it is worked into lies nearer the middle, below the hook.
              const below = stitchesBefore(shape, r - 1) + parentOf(shape, r, i);
              expect(at(below)[1]).toBeGreaterThan(y);
            }
          }
        }
});

test('the maker sees the bead face where beads lie toward them, and else its mirror image', () => {
  for (const hand of hands)
    for (const beadsFace of faces) {
      const shape = completeShape({ wedges: 6, rounds: 9, hand, beadsFace, beadDiameterMm: 2 });
      const face = panelGeometry(shape);
      const { geometry } = atHook(shape, 0);
      const side = beadsFace === 'away' ? -1 : 1;
      for (let s = 0; s < face.count; s++) {
        expect(geometry.centres[2 * s]).toBeCloseTo(side * face.centres[2 * s], 5);
        expect(geometry.centres[2 * s + 1]).toBeCloseTo(face.centres[2 * s + 1], 5);
      }
    }
});

test('stringing step by step puts the printed list on the thread', () => {
  const pattern = somePattern({ wedges: 7, rounds: 20, lengthBeads: 400 });
  const plans = stringPlans(pattern, 0);
  expect(plans.length).toBeGreaterThan(3);
  const all = plans.map((plan) => {
    let thread = '';
    const stops: number[] = [];
    for (let step = stepAt(plan, 0); step; step = stepAt(plan, thread.length)) {
      expect(step.from).toBe(thread.length);
      stops.push(thread.length);
      thread += step.letter.repeat(step.to - step.from);
      expect(step.to - step.from).toBeLessThanOrEqual(20);
      expect(strungBefore(plan, thread.length)).toBe(step.from);
    }
    expect(thread).toBe(plan.beads);
    expect([...thread].reverse().join('')).toBe(plan.length.beads);
    return thread;
  });
  expect(all.reverse().join('')).toBe(expandStringing(stringingCsv(pattern, 0)));
});

test('a long run is strung in tens, and a step that is begun is shown to its end', () => {
  const pattern = somePattern({ wedges: 9, rounds: 4, marks: () => 'A' });
  const [plan] = stringPlans(pattern, 0);
  // Round 4: 36 beads A, so 10 + 10 + 10 + 6; round 2: 18 are strung at once.
  expect(plan.steps.map(({ from, to }) => to - from)).toEqual([10, 10, 10, 6, 10, 10, 7, 18, 9]);
  expect(stepAt(plan, 13)).toMatchObject({ from: 10, to: 20, runFrom: 0, runTo: 36, round: 4 });
  expect(stepAt(plan, 90)).toBeUndefined();
  expect(strungBefore(plan, 13)).toBe(10);
  expect(strungBefore(plan, 0)).toBe(0);
});

test('count, metres and grams of the thread, by the sizes of beads', () => {
  const pattern = somePattern({ wedges: 7, rounds: 10 });
  const [plan] = stringPlans(pattern, 0);
  const all = threadStands(pattern, plan, plan.beads.length);
  expect(all.beads).toBe(385);
  expect(all.mm).toBeCloseTo(panelLengths(pattern, 0)[0].strungMm, 6);
  // 110 beads a gram stand in the pattern.
  expect(all.grams).toBeCloseTo(385 / 110, 9);
  const unknown = { ...pattern, beads: pattern.beads.map((bead) => ({ ...bead })) };
  delete unknown.beads[0].beadsPerGram;
  delete unknown.beads[0].size;
  expect(threadStands(unknown, plan, 385).grams).toBeUndefined();
});

test('crocheting step by step works the panel, at every pace and with every increase', () => {
  for (const increase of increases)
    for (const pace of ['stitch', 'run', 'wedge'] as const) {
      const pattern = somePattern({ wedges: 5, rounds: 9, increase });
      const marks = pattern.panels[0].rounds.join('');
      let worked = 0;
      const stops = [0];
      let pairs = 0;
      for (let step; (step = workStep(pattern.shape, marks, worked, pace));) {
        expect(step.from).toBe(worked);
        const told = step.parts.map((part) => part.marks).join('');
        expect(told).toBe(marks.slice(step.from, step.to));
        for (const { pair, from } of step.parts) {
          if (!pair) continue;
          pairs++;
          const first = stitchesBefore(pattern.shape, step.round);
          const [one, two] = [from - first, from - first + 1];
          expect(parentOf(pattern.shape, step.round, one)).toBe(
            parentOf(pattern.shape, step.round, pace === 'stitch' ? one : two),
          );
        }
        worked = step.to;
        stops.push(worked);
      }
      expect(worked).toBe(stitchCount(pattern.shape));
      // One increase in every wedge of every round but the first.
      if (pace !== 'stitch') expect(pairs).toBe(5 * 8);
      for (let n = stops.length - 1; n > 0; n--)
        expect(workedBefore(pattern.shape, marks, stops[n], pace)).toBe(stops[n - 1]);
    }
});

test('ends of rounds and joins are told where they come, with the sums of the list', () => {
  const pattern = somePattern({ wedges: 7, rounds: 12, lengthBeads: 200 });
  const { shape } = pattern;
  const marks = pattern.panels[0].rounds.join('');
  const lengths = panelLengths(pattern, 0);
  const joins: number[] = [];
  for (let s = 0; s <= marks.length; s++) {
    const { roundDone, join, begins, done } = cuesAt(shape, marks, lengths, s);
    expect(begins).toBe(s === 0);
    expect(done).toBe(s === marks.length);
    if (join !== undefined) joins.push(join);
    // Round r ends after N·r(r+1)/2 stitches.
    const r = [...Array(12).keys()].map((n) => n + 1).find((n) => (7 * n * (n + 1)) / 2 === s);
    expect(roundDone?.round).toBe(r);
    if (r) expect(roundDone).toMatchObject({ stitches: 7 * r, beads: 7 * r, beadsInAll: s });
  }
  expect(joins).toEqual(lengths.slice(1).map(({ number }) => number));
});

test('what comes off the thread is the string from its other end, without bare stitches', () => {
  const pattern = somePattern({ wedges: 7, rounds: 12, lengthBeads: 200, bareEvery: 5 });
  const marks = pattern.panels[0].rounds.join('');
  for (const plan of stringPlans(pattern, 0)) {
    const beads = beadsOnThread(marks, plan.length);
    expect(
      beads
        .map(({ letter }) => letter)
        .reverse()
        .join(''),
    ).toBe(plan.beads);
    for (const { letter, stitch } of beads) expect(marks[stitch]).toBe(letter);
  }
});

const fromThread = (beads: readonly { letter: string }[]) =>
  beads.map(({ letter }) => letter).join('');

test('a place is found by the beads that come next, as the command line finds it', () => {
  const pattern = somePattern({ wedges: 7, rounds: 14, lengthBeads: 300, bareEvery: 9 });
  const marks = pattern.panels[0].rounds.join('');
  const threads = stringPlans(pattern, 0).map(({ length }) => beadsOnThread(marks, length));
  for (const thread of threads) {
    for (let at = 0; at + 12 <= thread.length; at += 17) {
      const beads = fromThread(thread.slice(at, at + 12));
      const mine = placesOnThread(threads, beads);
      const theirs = findPlaces(pattern, { beads, panel: 0 });
      expect(mine.every(({ slips }) => slips === 0)).toBe(true);
      expect(mine.map(({ stitch }) => placeOf(pattern, stitch))).toEqual(
        theirs.map(({ round, stitch, wedge, inWedge }) => ({ round, stitch, wedge, inWedge })),
      );
      expect(mine.map(({ stitch }) => stitch)).toContain(thread[at].stitch);
    }
  }
});

/** Runs of uneven lengths that do not come again, by a linear congruence (Park and Miller 1988). */
function anyRun(): (s: number) => string {
  let [seed, left, letter] = [7, 0, 'A'];
  const next = () => (seed = (seed * 16807) % 2147483647);
  return () => {
    if (left === 0) {
      letter = [...'ABC'].filter((one) => one !== letter)[next() % 2];
      left = 1 + (next() % 4);
    }
    left--;
    return letter;
  };
}

test('a place is found though one of the beads that were read is wrong, missing or too many', () => {
  const pattern = somePattern({ wedges: 7, rounds: 14, marks: anyRun() });
  const marks = pattern.panels[0].rounds.join('');
  const [thread] = stringPlans(pattern, 0).map(({ length }) => beadsOnThread(marks, length));
  const letters = fromThread(thread);
  let sure = 0;
  for (let at = 10; at + 30 < letters.length; at += 23) {
    const read = letters.slice(at, at + 24);
    const other = [...'ABC'].find((letter) => letter !== read[11] && letter !== read[12])!;
    const slipped = [
      read.slice(0, 11) + other + read.slice(12),
      read.slice(0, 11) + read.slice(12),
      read.slice(0, 11) + other + read.slice(11),
    ];
    for (const beads of slipped) {
      const places = placesOnThread([thread], beads);
      expect(places.map(({ stitch }) => stitch)).toContain(thread[at].stitch);
      if (places.length === 1) sure++;
    }
  }
  expect(sure).toBeGreaterThan(10);
});

test('slips of a string are found in either order of reading, and pinned to the same stitches', () => {
  const pattern = somePattern({ wedges: 7, rounds: 8 });
  const marks = pattern.panels[0].rounds.join('');
  const [plan] = stringPlans(pattern, 0);
  const working = beadsOnThread(marks, plan.length);
  const right = fromThread(working);
  // A run of one colour has no single bead that is the slip: places between other colours are taken.
  const places = [...right].flatMap((_, n) =>
    n > 3 && n < right.length - 4 && new Set(right.slice(n - 1, n + 2)).size === 3 ? [n] : [],
  );
  expect(places.length).toBeGreaterThan(5);
  for (const n of places) {
    for (const [thread, kind] of [
      [right.slice(0, n) + right.slice(n + 1), 'missing'],
      [right.slice(0, n) + right[n + 1] + right.slice(n + 1), 'other'],
      [right.slice(0, n) + right[n + 1] + right[n] + right.slice(n + 2), 'swap'],
    ] as const) {
      if (kind === 'other' && right[n + 1] === right[n + 2]) continue;
      const forth = readThread(working, thread, false);
      const back = readThread([...working].reverse(), [...thread].reverse().join(''), true);
      const notes = [notesForSlips([], forth.slips!, false), notesForSlips([], back.slips!, true)];
      for (const pinned of notes) {
        // The thread that the notes tell of is the thread that there is.
        const told = beadsOnThread(marks, plan.length, pinned);
        expect(fromThread(told)).toBe(thread);
        // Without what comes off, and with what is sewn on, it is the panel.
        const sewn = new Map(
          pinned.flatMap(({ stitch, sewOn }) => (sewOn ? [[stitch, sewOn]] : [])),
        );
        const worked = [...workableMarks(marks, pinned)].map((mark, s) => sewn.get(s) ?? mark);
        expect(worked.join('')).toBe(marks);
      }
    }
    const extra = right.slice(0, n) + right[n + 1] + right.slice(n);
    if (right[n + 1] !== right[n - 1]) {
      const back = readThread([...working].reverse(), [...extra].reverse().join(''), true);
      const told = beadsOnThread(marks, plan.length, notesForSlips([], back.slips!, true));
      expect(fromThread(told)).toBe(extra);
    }
  }
});

test('a string that is not finished is right as far as it goes, and another string is none', () => {
  const pattern = somePattern({ wedges: 7, rounds: 10 });
  const marks = pattern.panels[0].rounds.join('');
  const [plan] = stringPlans(pattern, 0);
  const strungFirst = beadsOnThread(marks, plan.length).reverse();
  expect(readThread(strungFirst, plan.beads.slice(0, 57), true)).toEqual({
    slips: [],
    covered: 57,
  });
  expect(readThread(strungFirst, 'CACBCACBACBC'.repeat(4), true).slips).toBeUndefined();
});

test('the cost of a piece is beads by their packets, thread by its spool and time by the hour', () => {
  const pattern = somePattern({ wedges: 7, rounds: 10 });
  const priced = {
    ...pattern,
    beads: pattern.beads.map((bead) => ({ ...bead, price: 2.2, packGrams: 10 })),
    thread: {
      ...pattern.thread,
      spoolMm: 100_000,
      spoolPrice: 5,
      perStitchMm: 20,
      reservePercent: 0,
      tailMm: 0,
    },
  };
  const cost = pieceCost(priced, 5400, 12);
  // 385 beads of 110 a gram in packets of 10 g at 2.20; 385 stitches of 20 mm off 100 m at 5; an hour and a half at 12.
  expect(cost.beads).toBeCloseTo((385 / 1100) * 2.2, 9);
  expect(cost.thread).toBeCloseTo(0.385, 9);
  expect(cost.time).toBe(18);
  expect(cost.sum).toBeCloseTo(0.77 + 0.385 + 18, 9);
  expect(pieceCost(pattern, 5400)).toMatchObject({ beads: undefined, thread: undefined, sum: 0 });
});

test('work goes over to a changed pattern as far as it is the same', () => {
  const pattern = somePattern({ wedges: 7, rounds: 8 });
  const [plan] = stringPlans(pattern, 0);
  let work = withProgress(beginWork(pattern), { strung: [200], checked: [150], worked: 0 });
  const changed = somePattern({
    wedges: 7,
    rounds: 8,
    marks: (s) => (s === 251 - 120 ? 'D' : pattern.panels[0].rounds.join('')[s]),
  });
  // 252 stitches; the one that is another bead now was strung as number 121.
  const over = goneOver(work, changed);
  expect(plan.beads.length).toBe(252);
  expect(progressOf(over)).toMatchObject({ strung: [120], checked: [120], worked: 0 });
  work = withProgress(work, { strung: [252], worked: 140 });
  expect(workedOtherwise(work, changed)).toBe(1);
  expect(sameToHands(pattern, changed)).toBe(false);
  expect(sameToHands(pattern, { ...pattern, title: 'Another name' })).toBe(true);
});

test('what hands have not done: the inner part of a thread that is half strung, and what is not worked', () => {
  const pattern = somePattern({ wedges: 7, rounds: 8 });
  const [plan] = stringPlans(pattern, 0);
  // One length of 252 beads, the rim first: of 43 on the thread the list's own tail is closed.
  const open = openStitches(pattern, 0, { strung: [43], worked: 0 });
  expect([...open].reduce((sum, one) => sum + one, 0)).toBe(252 - 43);
  expect(open.indexOf(0)).toBe(252 - 43);
  expect(firstOpenRound(pattern, 0, { strung: [43], worked: 0 })).toBe(1);
  // Twenty stitches worked: round 1 has 7, round 2 14.
  expect(openStitches(pattern, 0, { strung: [43], worked: 21 }).indexOf(1)).toBe(21);
  expect(firstOpenRound(pattern, 0, { strung: [43], worked: 21 })).toBe(3);
  expect(firstOpenRound(pattern, 0, { strung: [plan.beads.length], worked: 5 })).toBe(8);
});

test('of equal beads the last is the one that is missing, so that few come off the thread', () => {
  const wanted = [...'BAAAAACDDE'].map((letter, n) => ({ letter, stitch: 9 - n, extra: false }));
  const slipOf = (got: string) => readThread(wanted, got, true).slips!;
  expect(slipOf('BAAAACDD')).toMatchObject([{ kind: 'missing', at: 5, wanted: 'A', wantedAt: 5 }]);
  expect(slipOf('BAAAAAACDD')).toMatchObject([{ kind: 'extra', at: 6, got: 'A', wantedAt: 6 }]);
  expect(slipOf('AAAAACDD')).toMatchObject([{ kind: 'missing', at: 0, wanted: 'B' }]);
});

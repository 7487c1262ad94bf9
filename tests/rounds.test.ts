import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { roundBody, roundsText } from '../src/core/pages/lists/rounds.js';
import { parseRoundsText, readRoundList } from '../src/core/pages/lists/read-rounds.js';
import { parentOf } from '../src/core/panel/links.js';
import { panelJoins, panelLengths } from '../src/core/thread/lengths.js';
import { en } from '../src/words/index.js';
import { anyPattern, patternOf, someBeads } from './support/patterns.js';

const roundLines = (text: string) => text.split('\n').filter((line) => /^R\d+ \(/.test(line));

describe('the lines of rounds.txt', () => {
  it('count, bracket the pair and fold equal wedges, by hand for three rounds of three wedges', () => {
    const pattern = patternOf(['AAB', 'ABABAB', 'AABAAB.AB']);
    expect(roundLines(roundsText(pattern, 0, en))).toEqual([
      'R1 (3 stitches, 3 beads, total 3): 2A 1B',
      'R2 (6 stitches, 6 beads, total 9): ([A B]) x 3',
      'R3 (9 stitches, 8 beads, total 17): (1A [A B]) x 2 1 bare [A B]',
    ]);
  });

  it('has the example of the 7th round of 7 wedges: 49 stitches, 196 in all', () => {
    // 7·(1+2+…+7) = 196, counted by hand.
    const rounds = Array.from({ length: 7 }, (_, r) => 'A'.repeat(7 * (r + 1)));
    rounds[6] = 'AAABAAC'.repeat(7);
    expect(roundLines(roundsText(patternOf(rounds), 0, en))[6]).toBe(
      'R7 (49 stitches, 49 beads, total 196): (3A 1B 1A [A C]) x 7',
    );
  });

  it('puts the pair where the increase is', () => {
    // Round 4 is worked into round 3: its pair follows stitch 0, 1 or 2 of each wedge of 3.
    const marks = 'ABCDABCDABCE';
    expect(roundBody({ increase: 'first' }, 4, marks, en)).toBe('([A B] 1C 1D) x 2 [A B] 1C 1E');
    expect(roundBody({ increase: 'middle' }, 4, marks, en)).toBe('(1A [B C] 1D) x 2 1A [B C] 1E');
    expect(roundBody({ increase: 'last' }, 4, marks, en)).toBe('(1A 1B [C D]) x 2 1A 1B [C E]');
  });

  it('lets a run go on over the border between wedges that differ', () => {
    expect(roundBody({ increase: 'middle' }, 4, 'AAAACBBAAAAD', en)).toBe(
      '1A [A A] 1A 1C [B B] 2A [A A] 1D',
    );
  });

  it('brackets exactly the stitches that share a parent, for every increase', () => {
    for (const increase of ['first', 'middle', 'last'] as const) {
      for (let r = 2; r <= 24; r++) {
        const wedges = 5;
        const marks = Array.from({ length: wedges * r }, (_, i) => 'ABCDE'[(i * 7 + (i >> 2)) % 5]);
        const body = roundBody({ increase }, r, marks.join(''), en);
        const inPairs: number[] = [];
        let at = 0;
        const flat = body.replace(/\(([^)]*)\) x (\d+)/g, (_, part: string, n: string) =>
          Array<string>(Number(n)).fill(part).join(' '),
        );
        for (const [, pair, count] of flat.matchAll(/\[([^\]]*)\]|(\d+)[A-Z]/g)) {
          if (pair) inPairs.push(at);
          at += pair ? 2 : Number(count);
        }
        const shared = marks.flatMap((_, i) =>
          i > 0 && parentOf({ increase }, r, i) === parentOf({ increase }, r, i - 1) ? [i - 1] : [],
        );
        expect(inPairs).toEqual(shared);
      }
    }
  });

  it('read back to the chart, whatever the pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const text = roundsText(pattern, 0, en);
        expect(parseRoundsText(text, 'rounds.txt')).toEqual(pattern.panels[0].rounds);
      }),
      { numRuns: 150 },
    );
  });

  it('give counts that add up, whatever the pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        let total = 0;
        roundLines(roundsText(pattern, 0, en)).forEach((line, index) => {
          const found = /^R(\d+) \((\d+) stitch(?:es)?, (\d+) beads?, total (\d+)\)/.exec(line);
          const [r, stitches, beads, sum] = found?.slice(1).map(Number) ?? [];
          total += pattern.panels[0].rounds[index].replace(/[._]/g, '').length;
          expect([r, stitches, sum]).toEqual([index + 1, pattern.shape.wedges * r, total]);
          expect(beads).toBeLessThanOrEqual(stitches);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('are broken at 76 characters, each line readable by itself, and read back', () => {
    const rounds = Array.from({ length: 40 }, (_, r) => 'ABCA._BBD'.repeat(6 * (r + 1)).slice(0, 6 * (r + 1))); // prettier-ignore
    const pattern = patternOf(rounds, { wedges: 6 });
    const text = roundsText(pattern, 0, en);
    const lines = text.slice(text.indexOf('\nR1 (') + 1).split('\n');
    expect(lines.some((line) => line.startsWith('    '))).toBe(true);
    for (const line of lines) {
      expect(line.length).toBeLessThanOrEqual(76);
      expect(line.split('[').length).toBe(line.split(']').length);
      // A note is no list.
      if (!line.startsWith('-- ')) {
        expect(line).not.toMatch(/\d$(?<!x \d+|\))|^\s+(x \d|bare|open)/);
      }
    }
    expect(parseRoundsText(text, 'rounds.txt')).toEqual(rounds);
  });

  it('stand in the order of the work: between two stops just the beads of one length', () => {
    const letters = (body: string): string =>
      body
        .replace(/^R\d+ \([^)]*\):/gm, '')
        .replace(/\(([^)]*)\) x (\d+)/g, (_, part: string, n: string) =>
          Array<string>(Number(n)).fill(part).join(' '),
        )
        .replace(/\d+ (bare|open)|bare|open|[[\]]/g, ' ')
        .replace(/(\d+)?([A-Z])/g, (_, n: string | undefined, letter: string) =>
          letter.repeat(Number(n ?? 1)),
        )
        .replace(/\s/g, '');
    fc.assert(
      fc.property(anyPattern, fc.integer({ min: 1, max: 120 }), (given, lengthBeads) => {
        const pattern = { ...given, thread: { lengthBeads } };
        const text = roundsText(pattern, 0, en);
        const list = text.slice(text.indexOf('\nR1 (') + 1);
        const worked = list
          .split(/^-- Stop(?:.*\n-- )*.*\n/m)
          .map((part) => letters(part.replace(/^--.*$/gm, '')));
        expect(worked).toEqual(panelLengths(pattern, 0).map(({ beads }) => beads));
        expect(parseRoundsText(text, 'rounds.txt')).toEqual(pattern.panels[0].rounds);
      }),
      { numRuns: 100 },
    );
  });

  it('end with how the last round ends, and every tail is the pattern’s', () => {
    const pattern = patternOf(['AAB', 'ABABAB']);
    for (const construction of ['spiral', 'joined'] as const) {
      const shape = { ...pattern.shape, construction };
      const text = roundsText({ ...pattern, shape, thread: { tailMm: 250 } }, 0, en);
      const [head, end] = text.replaceAll('\n-- ', '\n').split(/\nR2 .*\n/);
      expect(end.replace(/\s+/g, ' ')).toContain('Cut the thread 25 cm long'.slice(1));
      expect(head).not.toMatch(/[Cc]ut the thread/);
      expect(head).toContain('a tail of 25 cm');
    }
  });

  it('have a note where a length is joined on, which reads back as none', () => {
    const rounds = Array.from({ length: 40 }, (_, r) => 'AB'.repeat(3 * (r + 1)));
    const pattern = patternOf(rounds, { wedges: 6 });
    const text = roundsText(pattern, 0, en);
    const joins = panelJoins(pattern, 0, panelLengths(pattern, 0));
    expect(joins.length).toBeGreaterThan(1);
    const lines = text.split('\n');
    for (const { round, stitch, atRoundEnd, length } of joins) {
      const at = lines.findIndex((line) => line.startsWith(`R${round} (`));
      let from = at;
      if (atRoundEnd) while (lines[from - 1].startsWith('-- ')) from--;
      else while (!lines[from].startsWith('-- ')) from++;
      const to = from + lines.slice(from).findIndex((line) => !line.startsWith('-- '));
      const note = lines.slice(from, to).join(' ').replaceAll('-- ', '');
      expect(note).toContain(
        atRoundEnd
          ? `the last stitch of round ${round - 1},`
          : `stitch ${stitch} of round ${round},`,
      );
      expect(note).toContain(`length ${length} of ${joins.length + 1}`);
    }
    expect(text.match(/^-- Stop/gm)).toHaveLength(joins.length);
    expect(parseRoundsText(text, 'rounds.txt')).toEqual(rounds);
    expect(text.replace(/\s+/g, ' ')).toContain('take the new thread over the hook');
    // One length: nothing is joined, and nothing is said of it.
    expect(roundsText(patternOf(rounds.slice(0, 6), { wedges: 6 }), 0, en)).not.toContain(
      'new thread',
    );
  });

  it.each([
    [{}, 'under both loops of the next stitch, from your side', undefined],
    [{ beadsFace: 'toward' }, 'under both loops of the next stitch, from the far side', undefined],
    [{ stitch: 'bead-side-loop' }, 'under the far loop alone', 'bead-side-loop'],
    [
      { stitch: 'bead-side-loop', beadsFace: 'toward' },
      'under the near loop alone',
      'bead-side-loop',
    ],
    [{ lean: 0.1 }, 'under the far loop alone', undefined],
    [{ lean: 0.1, stitch: 'both-loops' }, 'under both loops', 'both-loops'],
    [{ stitch: 'slip' }, 'under the loop that holds the bead', 'slip'],
    [{ stitch: 'slip', beadsFace: 'toward' }, 'from the far side toward you', 'slip'],
  ] as const)('say how the stitch is worked, and that is read back: %j', (wish, said, read) => {
    const rounds = ['ABABAB', 'AB'.repeat(6), 'AB'.repeat(9)];
    const text = roundsText(patternOf(rounds, { wedges: 6, ...wish }), 0, en);
    expect(text.replace(/\s+/g, ' ')).toContain(said);
    expect(readRoundList(text, 'rounds.txt').head.shape.stitch).toBe(read);
  });

  it('stay one entry a round and print numbers without separators', () => {
    const rounds = Array.from({ length: 60 }, (_, r) => 'AB'.repeat(6 * (r + 1)));
    const lines = roundLines(roundsText(patternOf(rounds, { wedges: 12 }), 0, en));
    expect(lines).toHaveLength(60);
    // 12·60·61/2 by hand.
    expect(lines[59]).toMatch(/^R60 \(720 stitches, 720 beads, total 21960\): /);
  });
});

describe('the head of rounds.txt', () => {
  const rounds = ['AAB', 'ABABAB', 'AABAABAAB'];
  const head = (wish: Parameters<typeof patternOf>[1] = {}) =>
    roundsText(patternOf(rounds, wish), 0, en).split('\nR1 (')[0].replace(/\s+/g, ' ');

  it('is wrapped at 76 characters and tells title, beads, start, stitch and pairs', () => {
    const text = roundsText(patternOf(rounds), 0, en);
    const lines = text.slice(0, text.indexOf('\nR1 (')).split('\n');
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(76);
    expect(lines[0]).toBe('Rounds of Barley moon, front panel');
    expect(head()).toMatch(/magic ring, or 3 or 4 chains closed into a ring/);
    expect(head()).toMatch(/the 3 stitches of round 1/);
    expect(head()).toMatch(/single crochet in US terms, which is double crochet in UK terms/);
    expect(head()).toMatch(/\[A B\], are two stitches worked into one and the same stitch/);
    expect(text).toMatch(/\n {2}A {2}colour 1 \(op-1\), black, 11 beads\n {2}B {2}colour 2/);
  });

  // On the bead face a right-hander's work runs clockwise when the beads lie away, and so on; the
  // worker looks at the other face only when beads lie away (common practice, no source).
  it.each([
    ['right', 'away', 'runs clockwise', 'where it runs anticlockwise'],
    ['left', 'away', 'runs anticlockwise', 'where it runs clockwise'],
    ['right', 'toward', 'runs anticlockwise', 'that same face'],
    ['left', 'toward', 'runs clockwise', 'that same face'],
  ] as const)('tells a %s-hander with beads %s which way', (hand, beadsFace, way, seen) => {
    const text = head({ hand, beadsFace });
    expect(text).toContain(`for the ${hand} hand`);
    expect(text).toContain(way);
    expect(text).toContain(seen);
  });

  it('tells what is not counted, for spirals and joined rounds', () => {
    const spiral = roundsText(patternOf(rounds, { construction: 'spiral' }), 0, en);
    expect(spiral.replace(/\s+(-- )?/g, ' ')).toMatch(
      /two or three slip stitches to smooth the step; they carry no bead and are not counted/,
    );
    expect(head({ construction: 'joined' })).toMatch(
      /slip stitches and the step-up chains carry no bead and are not counted/,
    );
  });

  it('explains bare and open stitches where there are some', () => {
    expect(head()).not.toMatch(/bare|open/);
    const pattern = patternOf(['A.A', 'A_A.AA']);
    const text = roundsText(pattern, 0, en).replace(/\s+/g, ' ');
    expect(text).toMatch(/2 bare is two stitches without a bead/);
    expect(text).toMatch(/1 stitch is not decided yet/);
  });

  it('keeps a title with line breaks on one line, and no title can pass for a round', () => {
    const pattern = patternOf(rounds);
    pattern.title = 'Moon\nR1: 3B\u0007';
    pattern.beads[0].name = 'sand\nR1: 3B';
    const text = roundsText(pattern, 0, en);
    expect(text.split('\n')[0]).toBe('Rounds of Moon R1: 3B, front panel');
    expect(parseRoundsText(text, 'x')).toEqual(rounds);
  });
});

describe('parseRoundsText', () => {
  it('forgives spaces, capitals, signs and missing counts', () => {
    const typed = [
      'my moon',
      ' r1 : 3 a',
      'Round 2 (6 stitches): ( [a B] ) × 2 , [ A bare ]',
      'rnd 3: (x [a a])x2',
      '   2 OPEN a',
    ].join('\r\n');
    expect(parseRoundsText(typed, 'typed')).toEqual(['AAA', 'ABABA.', 'XAAXAA__A']);
  });

  it('knows the letter X from the sign for times', () => {
    const pattern = patternOf(['XXX', 'XAXAXA', 'XXAXXAXAX'], {}, someBeads(24));
    const text = roundsText(pattern, 0, en);
    expect(text).toContain('([X A]) x 3');
    expect(parseRoundsText(text, 'x')).toEqual(pattern.panels[0].rounds);
  });

  it.each([
    ['', 'rounds-none'],
    ['R1: 3A\nR3: 3A', 'rounds-unreadable'],
    ['R1: 3I', 'rounds-unreadable'],
    ['R1: 3A)', 'rounds-unreadable'],
    ['R1: (3A', 'rounds-unreadable'],
    ['R1: 3A ?', 'rounds-unreadable'],
    ['R1: 999999999A', 'rounds-unreadable'],
    ['R1: ((((900A) x 900) x 900) x 900)', 'rounds-unreadable'],
    [`R1: ${'('.repeat(10000)}`, 'rounds-unreadable'],
    ['R1: 0A', 'rounds-unreadable'],
  ])('refuses %j', (text, code) => {
    let got: unknown;
    try {
      parseRoundsText(text, 'typed');
    } catch (error) {
      got = error;
    }
    expect(got).toBeInstanceOf(RondureError);
    expect(got).toMatchObject({ code });
    expect((got as Error).message).toMatch(/typed/);
  });
});

import type { StitchLight } from './drawing.js';

/** What the chooser for drawings found under each stitch; arrays by stitch number. */
export interface Inks {
  /** Luma, 0..255, of the colour that won, and its cover, 0 to 1. */
  readonly luma: Float64Array;
  readonly cover: Float64Array;
  /** The clearly darker colour that lost: luma, cover (0: there was none). */
  readonly darkLuma: Float64Array;
  readonly darkCover: Float64Array;
  /** Its linear r, g, b; length 3·count. */
  readonly dark: Float64Array;
  /** Share of all that is clearly darker than what won. */
  readonly darkShare: Float64Array;
}

export function makeInks(count: number): Inks {
  return {
    luma: new Float64Array(count),
    cover: new Float64Array(count),
    darkLuma: new Float64Array(count),
    darkCover: new Float64Array(count),
    dark: new Float64Array(3 * count),
    darkShare: new Float64Array(count),
  };
}

/** Writes down what the chooser found under stitch s; nothing where nothing was covered. */
export function keepInk(inks: Inks, s: number, choice: StitchLight | undefined): void {
  const darker = choice?.darker;
  inks.luma[s] = choice?.luma ?? 255;
  inks.cover[s] = choice?.cover ?? 0;
  inks.darkLuma[s] = darker?.luma ?? 255;
  inks.darkCover[s] = darker?.cover ?? 0;
  for (let c = 0; c < 3; c++) inks.dark[3 * s + c] = darker ? darker.linear[c] : 0;
  inks.darkShare[s] = choice?.darkShare ?? 0;
}

/** A fainter trace of a line is left alone. */
const leastCover = 0.14;
/** At the end of a line, or alone, a stitch needs more: lines must not grow nor specks appear. */
const leastCoverAtEnd = 0.25;
/** Inks this much lighter still belong to one line, luma. */
const sameInk = 40;

/**
 * An outline is left out where both sides of it differ by this many times what it is darker than the darker
 * one: black round red on white, of which the eye sees the red.
 */
const sidesOverInk = 2;

/**
 * Lines thinner than a stitch never cover enough of one to win it. A stitch that lost its dark
 * colour gets it back when it lies on the ridge of a line: at most two neighbours hold more of that
 * ink, and these do not touch each other (stitches beside a line have two that do).
 *
 * @param linear r, g, b of each stitch, changed in place
 * @param sparing leave out outlines between two sides that stand apart without them
 * @returns the stitches whose line shows: that got their dark colour back, or whose edge stands without it
 */
export function keepThinLines(
  inks: Inks,
  neighbours: (s: number) => readonly number[],
  linear: Float64Array,
  sparing = false,
): ReadonlySet<number> {
  const { luma, cover, darkLuma, darkCover, dark } = inks;
  const inkOf = (n: number, limit: number): number =>
    luma[n] <= limit ? cover[n] : darkCover[n] > 0 && darkLuma[n] <= limit ? darkCover[n] : 0;
  const kept = new Set<number>();
  for (let s = 0; s < luma.length; s++) {
    if (darkCover[s] < leastCover) continue;
    const more = neighbours(s).filter((n) => {
      const ink = inkOf(n, darkLuma[s] + sameInk);
      return ink > darkCover[s] || (ink === darkCover[s] && n < s);
    });
    if (more.length > 2) continue;
    if (more.length < 2 && darkCover[s] < leastCoverAtEnd) continue;
    if (more.length === 2 && neighbours(more[0]).includes(more[1])) continue;
    kept.add(s);
  }
  const spared = sparing ? sparedLines(inks, neighbours, kept) : new Set<number>();
  if (spared.size > 0) joinSides(inks, neighbours, linear, { kept, spared });
  const drawn = new Set(spared);
  for (const s of kept) {
    if (spared.has(s)) continue;
    const limit = darkLuma[s] + sameInk;
    const joins = neighbours(s).some((n) => kept.has(n) || luma[n] <= limit);
    if (!joins && darkCover[s] < leastCoverAtEnd) continue;
    linear.set(dark.subarray(3 * s, 3 * s + 3), 3 * s);
    drawn.add(s);
  }
  return drawn;
}

/** Of the stitches on thin lines those whose edge stands as well without, and what would be left alone of them. */
function sparedLines(
  { luma, darkLuma }: Inks,
  neighbours: (s: number) => readonly number[],
  kept: ReadonlySet<number>,
): Set<number> {
  const spared = new Set<number>();
  for (const s of kept) {
    const sides = [s, ...neighbours(s)]
      .map((n) => luma[n])
      .filter((one) => one > darkLuma[s] + sameInk);
    const darker = Math.min(...sides);
    if (Math.max(...sides) - darker > sidesOverInk * (darker - darkLuma[s])) spared.add(s);
  }
  // Where one ends, or turns, a bead alone would be left of it.
  const leftAlone = [...kept].filter((s) => {
    const line = neighbours(s).filter((n) => kept.has(n));
    return line.length > 0 && line.every((n) => spared.has(n));
  });
  for (const s of leftAlone) spared.add(s);
  return spared;
}

/** Where the line itself won a stitch, alone among those that were spared, it shows the darker side too. */
function joinSides(
  { luma, darkLuma }: Inks,
  neighbours: (s: number) => readonly number[],
  linear: Float64Array,
  { kept, spared }: { kept: ReadonlySet<number>; spared: ReadonlySet<number> },
): void {
  const ink = (n: number): number => (kept.has(n) && !spared.has(n) ? darkLuma[n] : luma[n]);
  for (let s = 0; s < luma.length; s++) {
    const near = neighbours(s);
    const limit = luma[s] + sameInk;
    const line = near.filter((n) => spared.has(n) && darkLuma[n] <= limit);
    if (line.length === 0 || near.some((n) => ink(n) <= limit)) continue;
    const side = near.reduce((one, n) => (luma[n] < luma[one] ? n : one));
    for (let c = 0; c < 3; c++) linear[3 * s + c] = linear[3 * side + c];
  }
}

/** Cover from which a stitch shows one colour and little else. */
const oneColourFrom = 0.8;

/**
 * How much of a drawing is finer than a stitch: stitches that hold two colours or more, as a share
 * of all that are not plain ground (the colour of most stitches that hold one). A drawing of bold
 * shapes has them along its edges only.
 *
 * @returns 0 to 1
 */
export function mixedStitches({ luma, cover }: Inks): number {
  const toneOf = (s: number) => Math.round(luma[s] / 8);
  const plain = new Uint32Array(33);
  for (let s = 0; s < luma.length; s++) if (cover[s] >= oneColourFrom) plain[toneOf(s)]++;
  const ground = plain.indexOf(Math.max(...plain));
  let [mixed, all] = [0, 0];
  for (let s = 0; s < luma.length; s++) {
    if (cover[s] < oneColourFrom) mixed++;
    else if (toneOf(s) === ground) continue;
    all++;
  }
  return all === 0 ? 0 : mixed / all;
}

/** Less of a panel is no hatching, whatever lies beside it. */
const fewestHatched = 0.1;
/** Luma by which the stitches of one ink, or of its paper, may differ, of 255. */
const oneTone = 24;
/** Share of what is finely drawn that has the tone of the ink or of its paper where it is hatched. */
const twoTonesFrom = 0.85;

/**
 * How much of what is finer than a stitch is hatching: of the stitches that hold several colours the
 * share that lies among its like, with one neighbour at most that holds one colour. Along outlines
 * and edges hardly any does. A small picture in many colours is finely drawn as well, and no hatching:
 * that is one ink on one paper.
 *
 * @returns 0 to 1; 0 where too few stitches hold several colours to tell
 */
export function hatchedStitches(
  { luma, cover }: Inks,
  neighbours: (s: number) => readonly number[],
): number {
  const tones: number[] = [];
  let mixed = 0;
  for (let s = 0; s < cover.length; s++) {
    if (cover[s] >= oneColourFrom) continue;
    mixed++;
    let alone = 0;
    for (const n of neighbours(s)) if (cover[n] >= oneColourFrom) alone++;
    if (alone <= 1) tones.push(luma[s]);
  }
  if (mixed < fewestHatched * cover.length || tones.length === 0) return 0;
  const [ink, paper] = [Math.min(...tones), Math.max(...tones)];
  const inTwo = tones.filter((tone) => tone - ink <= oneTone || paper - tone <= oneTone).length;
  return inTwo < twoTonesFrom * tones.length ? 0 : tones.length / mixed;
}

/** Luma by which a colour is clearly darker, of 255. */
const clearlyDarker = 50;

/** Lines of a drawing that are too thin to be seen. */
export interface LostLines {
  /** Share of its dark lines, 0 to 1. */
  readonly share: number;
  /** How thick they are, about, as a share of a stitch; 0 where none is lost. */
  readonly stroke: number;
}

/**
 * How much of the dark ink of a drawing was lost, because its lines are too thin: the ink of
 * stitches that neither took a dark colour nor have a neighbour that did, as a share of all ink
 * that has a lighter colour beside it. And how thick its strokes are.
 *
 * @param drawn what `keepThinLines` returned
 * @param kept 1 for stitches that were given a line's colour afterwards (see lines/)
 */
export function lostLines(
  { luma, cover, darkShare }: Inks,
  neighbours: (s: number) => readonly number[],
  drawn: ReadonlySet<number>,
  kept?: Uint8Array,
): LostLines {
  const shown = (s: number): boolean => drawn.has(s) || kept?.[s] === 1;
  let [lost, squares, all] = [0, 0, 0];
  for (let s = 0; s < luma.length; s++) {
    const near = neighbours(s);
    if (near.some((n) => luma[n] >= luma[s] + clearlyDarker)) all += cover[s];
    all += darkShare[s];
    const dark = luma[s] - clearlyDarker;
    if (shown(s) || near.some((n) => shown(n) || luma[n] <= dark)) continue;
    lost += darkShare[s];
    squares += darkShare[s] ** 2;
  }
  // Ink of a few stitches in all is no drawing.
  const none = all < luma.length / 500;
  return { share: none ? 0 : lost / all, stroke: lost > 0 ? squares / lost : 0 };
}

import { colourFamilies } from '../../../words/pages/looks.js';
import type { Bead, PatternBead } from '../../beads/bead.js';
import { RondureError, warning } from '../../errors.js';
import type { Warning } from '../../errors.js';
import { panelGeometry } from '../../panel/geometry.js';
import { letters } from '../marks.js';
import type { Pattern } from '../pattern.js';
import { completeShape } from '../../panel/shape.js';
import type { Shape, ShapeWish } from '../../panel/shape.js';
import { checkRoundList, increaseOfList, wedgesOfList } from '../../pages/lists/check-rounds.js';
import { oneLine } from '../../pages/lists/lines.js';
import type { RoundList } from '../../pages/lists/read-rounds.js';
import { en } from '../../../words/index.js';
import type { Words } from '../../../words/index.js';

/**
 * A colour for each letter of a pattern whose beads are not known, in the order of the letters:
 * from a grid of 64 sRGB colours, each the one farthest by CIEDE2000 from all before it.
 */
export const letterColours: readonly string[] = [
  '#e8e8e8 #101058 #585810 #e81010 #e810e8 #10a0a0 #10e810 #e8a010',
  '#581010 #1058e8 #a0a0e8 #105858 #e8a0a0 #101010 #e8e810 #10a0e8',
  '#10a058 #a01058 #a0a058 #a05810 #a0e8e8 #585858 #a0a0a0 #a05858',
].flatMap((row) => row.split(' '));

/** A list of rounds and what it does not tell of itself. */
export interface RoundsWish {
  /** The list as it was read. */
  list: RoundList;
  /** How to name the list in an error. */
  where: string;
  /** Used where the list has no title of its own. */
  title: string;
  /** Beads to find those of the list among. */
  beads: readonly Bead[];
  /** Whether letters without a name take the beads in order. */
  inOrder: boolean;
  /** What is given here goes before what the list says. */
  shape: Partial<Omit<ShapeWish, 'rounds'>> & Pick<ShapeWish, 'beadDiameterMm'>;
  /** Face angle of the start mark, degrees clockwise from 12 o'clock; chosen when undefined. */
  startDegrees?: number;
}

/**
 * Makes a pattern of a list of rounds. Wedges and increase are what most of the list speaks for,
 * where they are not given; then every round must agree with them.
 *
 * @throws RondureError `rounds-broken` with all that is wrong; `shape-impossible`,
 *   `polygon-needs-end-increase`
 */
export function patternFromRounds(
  wish: RoundsWish,
  words: Words = en,
): { pattern: Pattern; warnings: Warning[] } {
  const { list, where } = wish;
  const wedges = wish.shape.wedges ?? wedgesOfList(list) ?? list.rounds[0].marks.length;
  const increase = wish.shape.increase ?? increaseOfList(list) ?? 'last';
  const rounds = list.rounds.length;
  const shape = withStitchOf(list, {
    ...list.head.shape,
    ...wish.shape,
    wedges,
    increase,
    rounds,
  });
  const named = new Map<string, string>();
  for (const { letter, label } of list.head.beads) {
    if (!named.has(letter)) named.set(letter, label);
  }
  const known = named.size > 0 ? new Set(named.keys()) : undefined;
  const problems = checkRoundList(list, shape, known);
  if (problems.length > 0) {
    throw new RondureError('rounds-broken', { where, problems });
  }
  const marks = list.rounds.map((round) => round.marks);
  const used = new Set([...named.keys(), ...marks.join('')]);
  const warnings: Warning[] = [];
  const beads = Array.from(letters)
    .filter((letter) => used.has(letter))
    .map((letter) => beadOf(letter, named.get(letter), wish, words, warnings));
  const { startDegrees } = panelGeometry(
    shape,
    wish.startDegrees === undefined ? {} : { startDegrees: wish.startDegrees },
  );
  const pattern: Pattern = {
    format: 'rondure-pattern',
    version: 1,
    title: list.head.title ?? wish.title,
    shape,
    beads,
    panels: [{ name: list.head.panel ?? 'front', startDegrees, rounds: marks }],
  };
  return { pattern, warnings };
}

/** The stitch is as the list tells it, unless that is only the usual one, rounded. */
function withStitchOf({ head }: RoundList, wish: ShapeWish): Shape {
  const usual = completeShape(wish);
  if (!head.stitch || wish.stitchWidthMm !== undefined || wish.roundHeightMm !== undefined) {
    return usual;
  }
  const { widthMm, heightMm } = head.stitch;
  const near = (one: number, other: number) => Math.abs(one - other) < 0.0051;
  if (near(usual.stitchWidthMm, widthMm) && near(usual.roundHeightMm, heightMm)) return usual;
  return completeShape({ ...wish, stitchWidthMm: widthMm, roundHeightMm: heightMm });
}

function beadOf(
  letter: string,
  label: string | undefined,
  { beads, inOrder }: Pick<RoundsWish, 'beads' | 'inOrder'>,
  words: Words,
  warnings: Warning[],
): PatternBead {
  const place = letters.indexOf(letter);
  const found = label === undefined ? inOrder && beads[place] : beadLabelled(beads, label);
  if (found) {
    const { lab: _lab, filled: _filled, ...kept } = found;
    return { letter, ...kept };
  }
  const name = (label === undefined ? words.edits.colourOf(letter) : withoutLook(label)).slice(
    0,
    200,
  );
  if (label !== undefined || inOrder) warnings.push(warning('bead-made-up', { letter, name }));
  const [, outside, inside] = /^(.*\S) \((.*)\)$/.exec(name) ?? [];
  return {
    letter,
    id: inside || (label === undefined ? letter : name),
    name: outside ?? name,
    hex: letterColours[place],
  };
}

/** What our lists say a bead looks like, behind the last comma: opaque dark blue. */
const lookBehind = new RegExp(`, (?:[^,]+ )?(?:${colourFamilies.join('|')})$`, 'i');
const withoutLook = (label: string): string => label.replace(lookBehind, '');

/**
 * A label is `name (id)`, or a name or an id alone, and behind a comma perhaps what the bead looks
 * like; capitals do not matter.
 */
function beadLabelled(beads: readonly Bead[], label: string): Bead | undefined {
  return beadNamed(beads, label) ?? beadNamed(beads, withoutLook(label));
}

function beadNamed(beads: readonly Bead[], label: string): Bead | undefined {
  const wanted = label.toLowerCase();
  const said = (text: string) => oneLine(text).toLowerCase();
  return (
    beads.find(({ id, name }) => `${said(name)} (${said(id)})` === wanted) ??
    beads.find(({ id }) => said(id) === wanted || wanted.endsWith(` (${said(id)})`)) ??
    beads.find(({ name }) => said(name) === wanted)
  );
}

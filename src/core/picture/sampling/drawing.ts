import type { Picture } from '../picture.js';
import type { Coverage } from './coverage.js';
import { makeShades, nearestGroup } from './shades.js';
import type { Group } from './shades.js';

/** Share of a stitch that a clearly darker colour must cover to win it (measured on drawings). */
export const usualDarkCover = 0.4;
/** Luma by which a colour is clearly darker, of 255 (about 20 of L*). */
const clearlyDarker = 50;
/** A colour that covers less is taken for the blend of its neighbours and counted with the nearest. */
const ownColourFromShare = 0.12;

/** Luma of Rec. 709 of a coded colour, 0..255. */
const lumaOf = ({ r, g, b }: Group): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** What fills the part of a footprint that no picture covers. */
export interface Ground {
  /** r, g, b, 0 to 255. */
  readonly rgb: readonly [number, number, number];
  /** Area of that part, pixels. */
  readonly area: number;
}

/** The pixels of a drawing. */
export interface Drawn extends Pick<Picture, 'data'> {
  /** See runs.ts. */
  readonly runs?: Uint16Array | undefined;
}

/** What won a footprint, and the clearly darker colour that covers too little to win. */
export interface StitchLight {
  /** Luma, 0..255, and cover, 0 to 1, of the winner. */
  readonly luma: number;
  readonly cover: number;
  /** Share of all clearly darker colours, however small each. */
  readonly darkShare?: number;
  readonly darker?: {
    readonly luma: number;
    readonly cover: number;
    readonly linear: Float64Array;
  };
}

/**
 * Makes the chooser for drawings: given what a footprint covers, it gathers the colours into
 * groups and gives the mean of one group, never a blend of several: the clearly darker one where it
 * covers enough, otherwise the largest that is not itself darker and covers too little. Outlines
 * and eyes survive, blended edges vanish.
 *
 * @param darkCover share from which a clearly darker group wins
 * @returns a function that writes linear r, g, b into `colour`; undefined when nothing is covered
 */
export function makeDrawingChooser(
  darkCover = usualDarkCover,
): (
  coverage: Coverage,
  drawn: Drawn,
  ground: Ground | undefined,
  colour: Float64Array,
) => StitchLight | undefined {
  const shades = makeShades();

  return (coverage, { data, runs }, ground, colour) => {
    shades.gather(coverage, data, runs);
    if (ground && ground.area > 0) shades.add(...ground.rgb, ground.area);
    const visible = shades.visible();
    const groups = shades.groups();
    if (groups.length === 0) return undefined;
    if (groups.length === 1) {
      shades.meanOf(0, colour);
      return { luma: lumaOf(groups[0]), cover: 1, darkShare: 0 };
    }
    const { winner, loser, ...choice } = decide(groups, visible);
    shades.meanOf(groups.indexOf(winner), colour);
    if (!loser) return choice;
    const linear = new Float64Array(3);
    shades.meanOf(groups.indexOf(loser.group), linear);
    return { ...choice, darker: { luma: lumaOf(loser.group), cover: loser.cover, linear } };
  };

  function decide(
    groups: readonly Group[],
    visible: number,
  ): {
    winner: Group;
    loser: { group: Group; cover: number } | undefined;
    luma: number;
    cover: number;
    darkShare: number;
  } {
    const heaviest = groups.reduce((a, b) => (b.weight > a.weight ? b : a));
    const own = groups.filter(
      (group) => group === heaviest || group.weight >= ownColourFromShare * visible,
    );
    const area = own.map(({ weight }) => weight);
    for (const group of groups) {
      if (!own.includes(group)) area[nearestGroup(group.r, group.g, group.b, own)] += group.weight;
    }
    const cover = area.map((one) => one / visible);
    const coverOf = (group: Group): number => cover[own.indexOf(group)];
    let winner = own[area.indexOf(Math.max(...area))];
    // Where a dark colour must cover more than half, even the largest may cover too little.
    if (darkCover > 0.5) winner = lightEnough(winner, own, coverOf);
    const limit = lumaOf(winner) - clearlyDarker;
    own.forEach((group, k) => {
      if (area[k] < darkCover * visible || lumaOf(group) > limit) return;
      if (lumaOf(group) < lumaOf(winner)) winner = group;
    });
    const luma = lumaOf(winner);
    let loser: Group | undefined;
    for (const group of own) {
      if (lumaOf(group) > luma - clearlyDarker) continue;
      if (!loser || coverOf(group) > coverOf(loser)) loser = group;
    }
    let dark = 0;
    for (const group of groups) if (lumaOf(group) <= luma - clearlyDarker) dark += group.weight;
    return {
      winner,
      darkShare: dark / visible,
      loser: loser && { group: loser, cover: coverOf(loser) },
      luma,
      cover: coverOf(winner),
    };
  }

  /** The largest colour that covers enough, or that no other is clearly lighter than. */
  function lightEnough(
    largest: Group,
    own: readonly Group[],
    coverOf: (group: Group) => number,
  ): Group {
    let winner = largest;
    while (coverOf(winner) < darkCover) {
      const lighter = own.filter((group) => lumaOf(group) >= lumaOf(winner) + clearlyDarker);
      if (lighter.length === 0) break;
      winner = lighter.reduce((a, b) => (coverOf(b) > coverOf(a) ? b : a));
    }
    return winner;
  }
}

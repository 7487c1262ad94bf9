import { srgbToLinear } from '../../colour/srgb.js';
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
const luma709 = (r: number, g: number, b: number): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;
const lumaOf = ({ r, g, b }: Group): number => luma709(r, g, b);

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
  /** The groups that count as colours of their own, and what they cover with those that joined them. */
  const own: Group[] = [];
  const area: number[] = [];

  return (coverage, { data, runs }, ground, colour) => {
    const open = ground !== undefined && ground.area > 0;
    if (!open && isOnePixel(coverage, data)) {
      const at = 4 * coverage.pixel[0];
      for (let c = 0; c < 3; c++) colour[c] = srgbToLinear[data[at + c]];
      return { luma: luma709(data[at], data[at + 1], data[at + 2]), cover: 1, darkShare: 0 };
    }
    shades.gather(coverage, data, runs);
    if (open) shades.add(...ground.rgb, ground.area);
    const groups = shades.groups();
    if (groups.length === 0) return undefined;
    if (groups.length === 1) {
      shades.meanOf(0, colour);
      return { luma: lumaOf(groups[0]), cover: 1, darkShare: 0 };
    }
    return decide(groups, shades.visible(), colour);
  };

  function decide(groups: readonly Group[], visible: number, colour: Float64Array): StitchLight {
    gatherOwn(groups, visible);
    let winner = 0;
    for (let k = 1; k < own.length; k++) if (area[k] > area[winner]) winner = k;
    // Where a dark colour must cover more than half, even the largest may cover too little.
    if (darkCover > 0.5) winner = lightEnough(winner, visible);
    const limit = lumaOf(own[winner]) - clearlyDarker;
    for (let k = 0; k < own.length; k++) {
      if (area[k] < darkCover * visible || lumaOf(own[k]) > limit) continue;
      if (lumaOf(own[k]) < lumaOf(own[winner])) winner = k;
    }
    const luma = lumaOf(own[winner]);
    let loser = -1;
    for (let k = 0; k < own.length; k++) {
      if (lumaOf(own[k]) > luma - clearlyDarker) continue;
      if (loser < 0 || area[k] / visible > area[loser] / visible) loser = k;
    }
    let dark = 0;
    for (const group of groups) if (lumaOf(group) <= luma - clearlyDarker) dark += group.weight;
    shades.meanOf(groups.indexOf(own[winner]), colour);
    const choice = { luma, cover: area[winner] / visible, darkShare: dark / visible };
    if (loser < 0) return choice;
    const linear = new Float64Array(3);
    shades.meanOf(groups.indexOf(own[loser]), linear);
    return {
      ...choice,
      darker: { luma: lumaOf(own[loser]), cover: area[loser] / visible, linear },
    };
  }

  function gatherOwn(groups: readonly Group[], visible: number): void {
    let heaviest = groups[0];
    for (const group of groups) if (group.weight > heaviest.weight) heaviest = group;
    own.length = area.length = 0;
    for (const group of groups) {
      if (group !== heaviest && !(group.weight >= ownColourFromShare * visible)) continue;
      own.push(group);
      area.push(group.weight);
    }
    if (own.length === groups.length) return;
    for (const group of groups) {
      if (!own.includes(group)) area[nearestGroup(group.r, group.g, group.b, own)] += group.weight;
    }
  }

  /** The largest colour that covers enough, or that no other is clearly lighter than. */
  function lightEnough(largest: number, visible: number): number {
    let winner = largest;
    while (area[winner] / visible < darkCover) {
      let lighter = -1;
      for (let k = 0; k < own.length; k++) {
        if (lumaOf(own[k]) < lumaOf(own[winner]) + clearlyDarker) continue;
        if (lighter < 0 || area[k] / visible > area[lighter] / visible) lighter = k;
      }
      if (lighter < 0) break;
      winner = lighter;
    }
    return winner;
  }
}

/** Whether one opaque pixel is covered, or stands for all that are. */
function isOnePixel({ count, length, pixel }: Coverage, data: Picture['data']): boolean {
  return count === 1 && length[0] === 1 && data[4 * pixel[0] + 3] === 255;
}

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
/** There are no more groups than shades (see shades.ts). */
const mostGroups = 16 * 16 * 16;

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

/**
 * What won a footprint, and the clearly darker colour that covers too little to win, whose light holds
 * until the next footprint.
 */
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
  /** By group: its luma, whether it counts as a colour of its own, and what it covers with those that joined it. */
  const luma = new Float64Array(mostGroups);
  const isOwn = new Uint8Array(mostGroups);
  const area = new Float64Array(mostGroups);
  /** Those that count, in their order. */
  const own: Group[] = [];
  const darkLinear = new Float64Array(3);

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
    const count = groups.length;
    let winner = -1;
    for (let k = 0; k < count; k++) {
      if (isOwn[k] && (winner < 0 || area[k] > area[winner])) winner = k;
    }
    // Where a dark colour must cover more than half, even the largest may cover too little.
    if (darkCover > 0.5) winner = lightEnough(winner, count, visible);
    const limit = luma[winner] - clearlyDarker;
    for (let k = 0; k < count; k++) {
      if (!isOwn[k] || area[k] < darkCover * visible || luma[k] > limit) continue;
      if (luma[k] < luma[winner]) winner = k;
    }
    const dark = luma[winner] - clearlyDarker;
    let loser = -1;
    let darkWeight = 0;
    for (let k = 0; k < count; k++) {
      if (luma[k] > dark) continue;
      darkWeight += groups[k].weight;
      if (!isOwn[k]) continue;
      if (loser < 0 || area[k] / visible > area[loser] / visible) loser = k;
    }
    shades.meanOf(winner, colour);
    const choice = {
      luma: luma[winner],
      cover: area[winner] / visible,
      darkShare: darkWeight / visible,
    };
    if (loser < 0) return choice;
    shades.meanOf(loser, darkLinear);
    const darker = { luma: luma[loser], cover: area[loser] / visible, linear: darkLinear };
    return { ...choice, darker };
  }

  function gatherOwn(groups: readonly Group[], visible: number): void {
    const count = groups.length;
    let heaviest = 0;
    for (let k = 0; k < count; k++) {
      luma[k] = lumaOf(groups[k]);
      if (groups[k].weight > groups[heaviest].weight) heaviest = k;
    }
    let alone = 0;
    for (let k = 0; k < count; k++) {
      const { weight } = groups[k];
      isOwn[k] = k === heaviest || weight >= ownColourFromShare * visible ? 1 : 0;
      area[k] = weight;
      if (isOwn[k]) own[alone++] = groups[k];
    }
    if (alone === count) return;
    own.length = alone;
    for (let k = 0; k < count; k++) {
      if (isOwn[k]) continue;
      const { r, g, b, weight } = groups[k];
      area[groups.indexOf(own[nearestGroup(r, g, b, own)])] += weight;
    }
  }

  /** The largest colour that covers enough, or that no other is clearly lighter than. */
  function lightEnough(largest: number, count: number, visible: number): number {
    let winner = largest;
    while (area[winner] / visible < darkCover) {
      let lighter = -1;
      for (let k = 0; k < count; k++) {
        if (!isOwn[k] || luma[k] < luma[winner] + clearlyDarker) continue;
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

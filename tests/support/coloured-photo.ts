import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { readPalette } from '../../src/core/beads/palette/read-palette.js';
import { panelFootprints } from '../../src/core/panel/footprints.js';
import { panelGeometry } from '../../src/core/panel/geometry.js';
import { lettersInWorkingOrder } from '../../src/core/pattern/stitches.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { en } from '../../src/words/index.js';
import { colouredPage, noise } from './coloured-page.js';
import { fonts } from './panel-sheet.js';
import { photograph } from './photograph.js';

const drawers = readFileSync(new URL('../../palettes/drawers.csv', import.meta.url), 'utf8');
/** The beads that a blank is coloured with. */
export const { beads } = readPalette(drawers, 'drawers.csv');

/** Cells that go wrong on paper: two half white, two half in another colour. */
const sloppyShares = [0.3, 0.45, 0.6, 0.9];

export interface ColouredPhoto {
  /** As PNG, which every decoder opens to the same pixels. */
  readonly photo: Buffer;
  /** Place in the palette of each stitch, or -1 where its cell stays white. */
  readonly wanted: readonly number[];
  /** Stitches whose cells went wrong. */
  readonly sloppy: readonly number[];
}

/** A blank as it is coloured by program, and photographed by a pinhole model. */
export async function colouredPhoto(blank: Pattern): Promise<ColouredPhoto> {
  const { rounds, wedges } = blank.shape;
  const geometry = panelGeometry(blank.shape, blank.panels[0]);
  const footprints = panelFootprints(geometry);
  const sheet = { pattern: blank, panel: 0, geometry, footprints, words: en, fonts };
  // Night watch, kingfisher breast, meadow, foxglove, lamp yellow.
  const used = ['op-27', 'op-09', 'op-39', 'op-16', 'op-06'].map((id) =>
    beads.findIndex((bead) => bead.id === id),
  );
  const wanted: number[] = [];
  for (let r = 1; r <= rounds; r++) {
    for (let i = 0; i < wedges * r; i++) {
      const petal = used[Math.floor((3 * i) / r + r / 3) % used.length];
      wanted.push(noise(i, r, 7) < 0.12 ? -1 : petal);
    }
  }
  const painted = wanted.flatMap((bead, s) => (bead >= 0 && s > 25 ? [s] : []));
  const sloppy = sloppyShares.map((share) => painted[Math.floor(share * painted.length)]);
  const other = (s: number) => beads[used[(used.indexOf(wanted[s]) + 1) % used.length]].hex;
  const halves = new Map(sloppy.map((s, k) => [s, k % 2 === 0 ? undefined : other(s)]));
  const hexOf = (s: number) => (wanted[s] >= 0 ? beads[wanted[s]].hex : undefined);
  const light = await colouredPage(sheet, { hexOf, grain: 0.3, ragged: 0.15, halves, seed: 4 });
  const jpeg = await photograph(light, {
    ...{ width: 1100, height: 1500, pitch: 20, yaw: -9, roll: 4, distance: 1.5, focal: 1.2 },
    ...{ table: [0.12, 0.07, 0.04], lamp: [1, 0.93, 0.8], fallX: 0.15, fallY: 0.2, corners: 0.1 },
    ...{ blur: 0.5, grain: 2, quality: 90 },
  });
  return { photo: await sharp(jpeg).png().toBuffer(), wanted, sloppy };
}

/** The id of the bead of every stitch in working order, or its mark. */
export function idsOf({ beads: own, panels }: Pattern): string[] {
  const named = new Map(own.map(({ letter, id }) => [letter, id]));
  return Array.from(lettersInWorkingOrder(panels[0]), (mark) => named.get(mark) ?? mark);
}

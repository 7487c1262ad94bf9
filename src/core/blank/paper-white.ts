import type { BlankPage } from '../pages/chart/blank-page.js';
import { paperSurface } from '../picture/paper-surface.js';
import type { PaperPiece } from '../picture/paper-surface.js';

/** Linear red, green, blue at a point of the page; undefined outside the photograph. */
export type PageLight = (xMm: number, yMm: number) => readonly [number, number, number] | undefined;

/** Linear light of white paper at a point of the page. */
export type PageWhite = (xMm: number, yMm: number) => [number, number, number];

const across = 15;
const down = 21;
const perBlock = 11;

/**
 * How bright white paper is at every point of the page, from the brightest parts of small blocks.
 *
 * @returns linear light of white paper at a point, page millimetres
 */
export function paperWhite(page: BlankPage, light: PageLight): PageWhite {
  const surface = paperSurface(piecesOf(page, light));
  return (xMm, yMm) => surface((2 * xMm) / page.widthMm - 1, (2 * yMm) / page.heightMm - 1);
}

function piecesOf(page: BlankPage, light: PageLight): PaperPiece[] {
  const pieces: PaperPiece[] = [];
  const [wide, high] = [page.widthMm / across, page.heightMm / down];
  for (let row = 0; row < down; row++) {
    for (let column = 0; column < across; column++) {
      const seen: (readonly [number, number, number])[] = [];
      for (let p = 0; p < perBlock * perBlock; p++) {
        // The outermost tenth of a block at the paper's edge may be table already.
        const x = wide * (column + ((p % perBlock) + 1) / (perBlock + 1));
        const y = high * (row + (Math.floor(p / perBlock) + 1) / (perBlock + 1));
        const nearEdge = Math.min(x, y, page.widthMm - x, page.heightMm - y) < 2.5;
        const one = nearEdge ? undefined : light(x, y);
        if (one) seen.push(one);
      }
      if (seen.length < 30) continue;
      seen.sort((p, q) => p[1] + p[0] + p[2] - q[0] - q[1] - q[2]);
      const bright = seen.slice(Math.floor(0.8 * seen.length), Math.ceil(0.96 * seen.length));
      const mean = [0, 1, 2].map(
        (c) => bright.reduce((sum, one) => sum + one[c], 0) / bright.length,
      );
      pieces.push({
        x: (2 * (column + 0.5)) / across - 1,
        y: (2 * (row + 0.5)) / down - 1,
        light: mean as [number, number, number],
      });
    }
  }
  return pieces;
}

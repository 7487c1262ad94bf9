import type { BlankPage } from '../pages/chart/blank-page.js';
import type { PageLight, PageWhite } from './paper-white.js';

/** Places looked at along each side of the page. */
const along = 24;
/** How far the light of bare margin may lie from that of white paper: 0.18 is 18 %. */
const most = 0.18;
/** … at no more than this share of the places. */
const mostPlaces = 0.12;

/**
 * Whether light falls so unevenly on the page, as in the shadow of a hand, that it could not be
 * evened out: the margins, where nothing is coloured, do not come out white.
 */
export function litUnevenly(page: BlankPage, light: PageLight, white: PageWhite): boolean {
  const { widthMm, heightMm, view, marks } = page;
  const top = view.centreY + marks.box.top;
  const bottom = view.centreY + marks.box.bottom;
  let [off, all] = [0, 0];
  for (let p = 0; p < along * along; p++) {
    const x = widthMm * (0.03 + (0.94 * ((p % along) + 0.5)) / along);
    const y = heightMm * (0.03 + (0.94 * (Math.floor(p / along) + 0.5)) / along);
    const beside = x < view.centreX + marks.box.left || x > view.centreX + marks.box.right;
    if (y > top && y < bottom && !beside) continue;
    const paper = white(x, y);
    // Print is darker still, and covers little: the brightest of a few places is paper.
    const seen = [0, 1, 2, 3, 4].map((k) => light(x + 1.3 * k, y + 0.9 * k)?.[1] ?? 0);
    const brightest = Math.max(...seen) / paper[1];
    all++;
    if (Math.abs(brightest - 1) > most) off++;
  }
  return off > mostPlaces * all;
}

import type { Bead } from '../../beads/bead.js';
import type { Words } from '../../../words/index.js';
import type { Fonts } from '../surface/font.js';
import { marginMm, papers } from '../surface/paper.js';
import { SvgSurface } from '../surface/svg-surface.js';
import { drawText, mmPerPoint, shortened, wrapped } from '../surface/text.js';
import type { TextStyle } from '../surface/text.js';

/** What a sample card is drawn from. */
export interface SampleCard {
  /** Heading of the card. */
  readonly title: string;
  /** Beads that it shows, in their order. */
  readonly beads: readonly Bead[];
  /** Words of its language. */
  readonly words: Words;
  /** Fonts that its texts are set in. */
  readonly fonts: Fonts;
}

/** Id of the element that tells a card of ours from other drawings. */
export const sampleCardMark = 'rondure-sample-card';

const [{ widthMm, heightMm }] = papers;
const columns = 3;
const rows = 7;
const perPage = columns * rows;
const gapMm = 5;
const headingMm = 18;
const footMm = 12;
const cellWidthMm = (widthMm - 2 * marginMm - (columns - 1) * gapMm) / columns;
const cellHeightMm = (heightMm - 2 * marginMm - headingMm - footMm) / rows;
const patchHeightMm = cellHeightMm - 14.5;
/** Where a few real beads are laid beside the printed colour. */
const ringMm = 4.5;
const line = '#9a9a9a';
const grey = '#444444';

/**
 * A card of samples: A4 pages as SVG, 21 beads a page, each a large patch of its colour with name, id, size
 * and finish, and a white ring to lay the real beads in.
 *
 * @throws RondureError `glyph-missing`
 */
export function sampleCardSvgs(card: SampleCard): string[] {
  const pages = Math.max(1, Math.ceil(card.beads.length / perPage));
  return Array.from({ length: pages }, (_, page) => drawPage(card, page, pages));
}

function drawPage(card: SampleCard, page: number, pages: number): string {
  const { title, beads, words, fonts } = card;
  const said = words.beads.card;
  const surface = new SvgSurface({
    widthMm,
    heightMm,
    title: said.title({ title }),
    description: said.description({ count: beads.length, page: page + 1, pages }),
  });
  surface.beginGroup(sampleCardMark);
  const inner = widthMm - 2 * marginMm;
  const big: TextStyle = { face: fonts.bold, sizeMm: 16 * mmPerPoint };
  const small: TextStyle = { face: fonts.regular, sizeMm: 10 * mmPerPoint };
  drawText(surface, shortened(said.title({ title }), big, inner), big, marginMm, marginMm + 5);
  const about = said.about({ count: beads.length, page: page + 1, pages });
  drawText(surface, shortened(about, small, inner), small, marginMm, marginMm + 11);
  beads.slice(page * perPage, (page + 1) * perPage).forEach((bead, n) => {
    const left = marginMm + (n % columns) * (cellWidthMm + gapMm);
    const top = marginMm + headingMm + Math.floor(n / columns) * cellHeightMm;
    drawSample(surface, card, bead, left, top);
  });
  wrapped(said.note, small, inner).forEach((text, n) => {
    drawText(surface, text, small, marginMm, heightMm - marginMm - footMm + 6 + 4.6 * n);
  });
  surface.endGroup();
  return surface.toString();
}

function drawSample(surface: SvgSurface, card: SampleCard, bead: Bead, left: number, top: number) {
  const { fonts, words } = card;
  const right = left + cellWidthMm;
  const bottom = top + patchHeightMm;
  const outline = { stroke: line, widthMm: 0.2, closed: true };
  const patch = [left, top, right, top, right, bottom, left, bottom];
  surface.fillPath([patch], { fill: bead.hex, outline });
  const middle = (top + bottom) / 2;
  surface.circle(right - ringMm - 3, middle, ringMm, { fill: '#ffffff', outline });
  const bold: TextStyle = { face: fonts.bold, sizeMm: 13 * mmPerPoint };
  const plain: TextStyle = { face: fonts.regular, sizeMm: 10.5 * mmPerPoint, ink: grey };
  drawText(surface, shortened(bead.name, bold, cellWidthMm), bold, left, bottom + 5.2);
  const under = words.beads.card.under({ id: bead.id, size: bead.size, finish: bead.finish });
  drawText(surface, shortened(under, plain, cellWidthMm), plain, left, bottom + 10);
}

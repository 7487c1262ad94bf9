import { acrossRange } from '../core/panel/across.js';
import { shoppingList } from '../core/pages/lists/shopping.js';
import { threadItems, toolItems } from '../core/pages/lists/shopping-items.js';
import { projectLevel } from '../core/pages/lists/level.js';
import { SvgSurface } from '../core/pages/surface/svg-surface.js';
import { beadCounts } from '../core/pattern/stitches.js';
import { mixed } from '../core/colour/mixed.js';
import { onSide } from '../words/pages/pairs.js';
import { drawFinished } from './parts/cover-picture.js';
import type { BookletFacts } from './facts.js';
import { tintOf } from './tint.js';

/** The side of a listing's pictures, millimetres of their drawings. */
const sideMm = 200;

/** A square picture for a shop's page, as an SVG; no word stands on it. */
export interface ListingPicture {
  readonly name: 'cover' | 'purse' | 'palette';
  readonly svg: string;
}

/** Pictures for a shop's page: both panels on a tinted ground, the piece alone, the beads. */
export function listingPictures(facts: BookletFacts): ListingPicture[] {
  const { pattern } = facts;
  const sheet = (draw: (surface: SvgSurface) => void): string => {
    const surface = new SvgSurface({
      widthMm: sideMm,
      heightMm: sideMm,
      title: pattern.title,
      description: pattern.title,
    });
    draw(surface);
    return surface.toString();
  };
  const { pale } = tintOf(pattern);
  const ground = (surface: SvgSurface) =>
    surface.fillPath([[0, 0, sideMm, 0, sideMm, sideMm, 0, sideMm]], { fill: pale });
  const whole = { left: 8, top: 8, right: sideMm - 8, bottom: sideMm - 8 };
  return [
    {
      name: 'cover',
      svg: sheet((surface) => {
        ground(surface);
        if (pattern.panels.length === 1) drawFinished(surface, facts, 0, whole);
        else {
          drawFinished(surface, facts, 0, { ...whole, right: 138, bottom: 160 });
          drawFinished(surface, facts, 1, { ...whole, left: 116, top: 106 });
        }
      }),
    },
    { name: 'purse', svg: sheet((surface) => drawFinished(surface, facts, 0, whole)) },
    {
      name: 'palette',
      svg: sheet((surface) => {
        ground(surface);
        drawPalette(surface, facts);
      }),
    },
  ];
}

/** A round bead of every colour that is worked, in rows. */
function drawPalette(surface: SvgSurface, { pattern }: BookletFacts): void {
  const counts = beadCounts(pattern);
  const beads = pattern.beads.filter(({ letter }) => (counts.get(letter) ?? 0) > 0);
  const columns = Math.max(1, Math.ceil(Math.sqrt(beads.length)));
  const rows = Math.ceil(beads.length / columns);
  const step = (sideMm - 24) / Math.max(columns, rows);
  beads.forEach(({ hex }, n) => {
    const row = Math.floor(n / columns);
    const inRow = Math.min(columns, beads.length - row * columns);
    const x = sideMm / 2 + ((n % columns) - (inRow - 1) / 2) * step;
    const y = sideMm / 2 + (row - (rows - 1) / 2) * step;
    const radius = 0.42 * step;
    surface.circle(x, y, radius, { fill: mixed(hex, 0, 0.35) });
    surface.circle(x - 0.03 * radius, y - 0.04 * radius, 0.93 * radius, { fill: hex });
    surface.circle(x - 0.32 * radius, y - 0.36 * radius, 0.2 * radius, {
      fill: mixed(hex, 255, 0.65),
    });
  });
}

/** What a shop's page says of a pattern, in one language: facts that the file holds, nothing more. */
export function listingText(
  facts: BookletFacts,
  file: { readonly pages: number; readonly paper: string; readonly languages: string },
): string {
  const { pattern, words, author, time, licence } = facts;
  const say = words.booklet;
  const { listing, rights } = say.work;
  const list = shoppingList(pattern);
  const counts = beadCounts(pattern);
  const beads = pattern.beads
    .filter(({ letter }) => (counts.get(letter) ?? 0) > 0)
    .map(({ letter, name, id, size }) => {
      const have = list.beads.find((bead) => bead.letter === letter)!;
      const named = [name, ...(id === name ? [] : [id]), ...(size === undefined ? [] : [size])];
      return `- ${named.join(', ')}: ${words.lists.beads(have.withReserve)}`;
    });
  const shape = say.amounts({
    panels: pattern.panels.length,
    rounds: pattern.shape.rounds,
    beads: [...counts.values()].reduce((sum, n) => sum + n, 0),
    colours: beads.length,
  });
  const { parts } = say;
  const inside = [
    parts.materials,
    parts.before,
    parts.chart,
    say.work.working.part,
    say.work.part,
    parts.making,
    parts.lining,
  ];
  const paragraphs = [
    [pattern.title, say.kind, ...(author === undefined ? [] : [say.by(author)])],
    [
      listing.size,
      `${say.size({ across: acrossRange(pattern) })} (${pattern.swatch?.roundHeightMm ? say.sizeFrom.swatch : say.sizeFrom.model})`,
      shape,
    ],
    [listing.level, say.level[projectLevel(pattern)], ...(time ? [say.work.time({ time })] : [])],
    [listing.beads, ...beads],
    [
      listing.tools,
      ...[...threadItems(list, words), ...toolItems(list, words)].map(({ text }) => `- ${text}`),
    ],
    [listing.file, listing.fileText(file), ...inside.map((part) => `- ${part}`), listing.digital],
    ...(licence === undefined ? [] : [[rights.title, licence]]),
  ];
  return `${paragraphs.map((lines) => lines.map((line) => onSide(line, 0)).join('\n')).join('\n\n')}\n`;
}

import { ringLine } from '../../panel/edge.js';
import { drawCellMarks } from '../panel/grey-fills.js';
import { black, drawBareDots, white } from '../panel/cells.js';
import type { Box } from '../panel/panel-view.js';
import type { CellKind, PanelSheet } from '../panel/sheet.js';
import type { SheetPage } from './sheet-surround.js';
import type { Surface } from '../surface/surface.js';
import { drawText, mmPerPoint, textWidth, wrapped } from '../surface/text.js';

/** Wedges that follow one another in the direction of work, from 0; `to` is the one after. */
export interface WedgeSpan {
  readonly from: number;
  readonly to: number;
}

const marginMm = 10;
const topMm = 9;
const mapMm = 24;
/** What stands above the beads takes the same room whatever it says, more in large print. */
const headMm = ({ textPoints }: SheetPage): number => Math.max(mapMm, 2.4 * textPoints);
/** Sizes of a title, where the note would become small otherwise, and of the note. */
const titleShares = [1, 0.85, 0.75];
const noteShares = [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3];
/** Between the entries of the key. */
const keyGapMm = 2.5;

/** The part of a page for the beads. */
export function sectorWindow(page: SheetPage): Box {
  return {
    left: marginMm,
    top: topMm + headMm(page) + 2,
    right: page.widthMm - marginMm,
    bottom: page.bottomMm - 1,
  };
}

/** Title, note and key of a sheet, and a map of the panel with its wedges filled. */
export function drawSectorHead(
  surface: Surface,
  sheet: PanelSheet,
  page: SheetPage,
  {
    title,
    kinds,
    span,
    note,
  }: {
    title: string;
    kinds: readonly CellKind[];
    span: WedgeSpan;
    note: string;
  },
): void {
  const { fonts } = sheet;
  const wide = page.widthMm - 2 * marginMm - mapMm - 6;
  const keyMm = 1.5 * page.textPoints * mmPerPoint;
  const keyRows = kinds.length > 12 ? 2 : 1;
  const laid = titleShares.map((share) => {
    const big = { face: fonts.bold, sizeMm: 1.35 * share * page.textPoints * mmPerPoint };
    const titles = wrapped(title, big, wide).slice(0, 2);
    const room = headMm(page) - keyRows * keyMm - 1.25 * titles.length * big.sizeMm - 2;
    return { big, titles, ...noteIn(room) };
  });
  const { big, titles, style, lines } = laid.find(({ share }) => share >= 0.9) ?? laid.at(-1)!;

  // A longer note is set smaller: it never takes room from the beads.
  function noteIn(room: number) {
    const tried = noteShares.map((share) => {
      const style = { face: fonts.regular, sizeMm: share * page.textPoints * mmPerPoint };
      return { share, style, lines: wrapped(note, style, wide) };
    });
    return tried.find((one) => one.lines.length * 1.28 * one.style.sizeMm <= room) ?? tried.at(-1)!;
  }

  let y = topMm;
  for (const line of titles) {
    drawText(surface, line, big, marginMm, y + 0.8 * big.sizeMm);
    y += 1.25 * big.sizeMm;
  }
  y += 1;
  for (const line of lines) {
    drawText(surface, line, style, marginMm, y + 0.8 * style.sizeMm);
    y += 1.28 * style.sizeMm;
  }
  drawKey(surface, sheet, kinds, {
    left: marginMm,
    top: topMm + headMm(page) - keyRows * keyMm,
    wide,
    rowMm: keyMm,
    rows: keyRows,
  });
  drawMap(surface, sheet, span, page.widthMm - marginMm - mapMm / 2, topMm + mapMm / 2);
}

/** A patch with its letter and, where there is room for all of them, the bead's name for each colour. */
function drawKey(
  surface: Surface,
  { fonts, words }: PanelSheet,
  kinds: readonly CellKind[],
  {
    left,
    top,
    wide,
    rowMm,
    rows,
  }: { left: number; top: number; wide: number; rowMm: number; rows: number },
): void {
  const perRow = Math.ceil(kinds.length / rows);
  const patch = rowMm - 0.8;
  const style = { face: fonts.bold, sizeMm: 0.62 * rowMm };
  const name = { face: fonts.regular, sizeMm: 0.5 * rowMm };
  // There is no room for a sentence here.
  const said = kinds.map(
    ({ bead, mark }) => bead?.name ?? (mark === '.' ? words.lists.bare : words.chart.undecided),
  );
  const beside = patch + 1 + keyGapMm;
  const rooms = Array.from({ length: rows }, (_, row) => {
    const widths = said.slice(row * perRow, (row + 1) * perRow).map((one) => textWidth(one, name));
    const room = wide - widths.length * beside + keyGapMm;
    return widths.reduce((sum, one) => sum + one, 0) <= room ? widths : undefined;
  });
  const named = rooms.every((widths) => widths !== undefined);
  surface.beginGroup('key', words.chart.groups.key);
  kinds.forEach((kind, n) => {
    const [row, place] = [Math.floor(n / perRow), n % perRow];
    const before = (named ? rooms[row]! : said.map(() => 0))
      .slice(0, place)
      .reduce((sum, one) => sum + one + beside, 0);
    const x = left + before;
    const y = top + row * rowMm;
    const ring = [x, y, x + patch, y, x + patch, y + patch, x, y + patch];
    const outline = { stroke: '#555555', widthMm: 0.15, closed: true };
    surface.fillPath([ring], { fill: kind.fill, outline });
    const middle = { x: x + patch / 2, y: y + patch / 2, tilt: 0 };
    if (kind.cellMark !== undefined)
      drawCellMarks(surface, { mark: kind.cellMark, ink: kind.ink }, [middle], patch);
    const base = middle.y + (style.sizeMm * fonts.bold.capHeight) / 2;
    if (kind.bead)
      drawText(surface, kind.mark, { ...style, ink: kind.ink }, middle.x, base, 'middle');
    else if (kind.mark === '.') drawBareDots(surface, [[middle.x, middle.y]], 0.7);
    if (named) drawText(surface, said[n], name, x + patch + 1, base);
  });
  surface.endGroup();
}

/** The panel's outline, upright, with the wedges of a sheet filled. */
function drawMap(
  surface: Surface,
  { geometry }: PanelSheet,
  { from, to }: WedgeSpan,
  x: number,
  y: number,
): void {
  const { shape } = geometry;
  const rim = ringLine(geometry, shape.rounds);
  let reach = 0;
  for (let p = 0; p < rim.length; p += 2) reach = Math.max(reach, Math.hypot(rim[p], rim[p + 1]));
  const scale = mapMm / 2 / reach;
  const points = rim.length / 2;
  const at = (p: number): [number, number] => [x + scale * rim[2 * p], y + scale * rim[2 * p + 1]];
  const [first, last] = [from, to].map((wedge) =>
    Math.round((wedge * (points - 1)) / shape.wedges),
  );
  const ring = [x, y];
  for (let p = first; p <= last; p++) ring.push(...at(p));
  surface.beginGroup('map');
  const whole = Float64Array.from(rim, (value, p) => (p % 2 === 0 ? x : y) + scale * value);
  surface.fillPath([whole], {
    fill: white,
    outline: { stroke: black, widthMm: 0.25, closed: true },
  });
  surface.fillPath([ring], {
    fill: '#b9d3da',
    outline: { stroke: black, widthMm: 0.35, closed: true },
  });
  surface.endGroup();
}

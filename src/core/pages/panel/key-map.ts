import { finishedEdge } from '../../panel/edge.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import { black, white } from './cells.js';
import type { Box } from './panel-view.js';
import type { Surface } from '../surface/surface.js';
import type { Tile, Tiling } from './tiles.js';

/** Dark enough to be seen on white at 3:1 (W3C, WCAG 2.1, 1.4.11). */
const grey = '#767676';

/**
 * A small map: the outline of a drawing, the sheets that show it, and one of them filled.
 *
 * @param outlines closed rings in the drawing's millimetres
 * @param at where the map stands on the page
 */
export function drawKeyMap(
  surface: Surface,
  { tiles }: Tiling,
  here: Tile,
  outlines: readonly ArrayLike<number>[],
  at: Box,
): void {
  const boxes = tiles.map(({ box }) => box);
  const left = Math.min(...boxes.map((box) => box.left));
  const top = Math.min(...boxes.map((box) => box.top));
  const right = Math.max(...boxes.map((box) => box.right));
  const bottom = Math.max(...boxes.map((box) => box.bottom));
  const scale = Math.min(
    (at.right - at.left) / (right - left),
    (at.bottom - at.top) / (bottom - top),
  );
  const x = (value: number) => at.right - scale * (right - value);
  const y = (value: number) => at.top + scale * (value - top);
  const ring = (box: Box) => [
    x(box.left),
    y(box.top),
    x(box.right),
    y(box.top),
    x(box.right),
    y(box.bottom),
    x(box.left),
    y(box.bottom),
  ];
  surface.beginGroup('key-map');
  surface.fillPath([ring(here.box)], { fill: '#b9d3da' });
  const lines = outlines.map((line) =>
    Float64Array.from(line, (value, p) => (p % 2 === 0 ? x(value) : y(value))),
  );
  surface.strokePath(lines, { stroke: black, widthMm: 0.3, closed: true });
  const others = tiles.filter((tile) => tile !== here).map(({ box }) => ring(box));
  surface.strokePath(others, { stroke: grey, widthMm: 0.15, closed: true });
  surface.strokePath([ring(here.box)], { stroke: white, widthMm: 0.9, closed: true });
  surface.strokePath([ring(here.box)], { stroke: black, widthMm: 0.5, closed: true });
  surface.endGroup();
}

/** The panel's outline as the map shows it. */
export function mapOutline(geometry: PanelGeometry, scale: number): Float64Array {
  return Float64Array.from(finishedEdge(geometry), (value) => scale * value);
}

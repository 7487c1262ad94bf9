import { directionOf, naturalOutline } from '../../panel/shape.js';
import { markedTurn } from '../../swatch/model.js';
import type { Polyline, Surface } from '../surface/surface.js';
import type { SwatchGuide } from './guide-facts.js';
import { drawText, mmPerPoint, textWidth, wrapped } from '../surface/text.js';
import type { TextStyle } from '../surface/text.js';

const black = '#000000';
const grey = '#8a8a8a';
/** Widths of the rings outside the scale that hold numbers and leans, millimetres. */
const numbersMm = 7;
const leansMm = 14;
const scaleMm = 5;
const shownLeans = [0, 0.25, 0.5];

/**
 * A protractor about a centre: degrees from 12 o'clock both ways, the swatch's rounds and wedges to
 * centre it by, and outside what lean the marked stitch's place tells.
 */
export function drawTurnGauge(
  surface: Surface,
  guide: SwatchGuide,
  place: { x: number; y: number; radius: number },
): void {
  const { shape, fonts, words } = guide;
  const { x, y } = place;
  const said = words.swatch.guide;
  const scale = place.radius - numbersMm - leansMm;
  const at = (degrees: number, r: number): [number, number] => {
    const angle = (degrees * Math.PI) / 180;
    return [x + r * Math.sin(angle), y - r * Math.cos(angle)];
  };
  const ray = (degrees: number, from: number, to: number): Polyline =>
    Float64Array.of(...at(degrees, from), ...at(degrees, to));
  surface.beginGroup('turn-gauge', said.gaugeTitle);
  let last = 0;
  let reached = 0;
  // Rounds of the swatch, as they would end with a usual stitch.
  for (let r = 1; r <= shape.rounds; r++) {
    const radius = shape.roundHeightMm * (r + 0.5);
    if (radius > scale - scaleMm - 4) break;
    const widthMm = r % 5 === 0 || r === shape.rounds ? 0.3 : 0.1;
    surface.strokePath([circleLine(x, y, radius)], { stroke: grey, widthMm, closed: true });
    last = radius;
    reached = r;
  }
  const style = { face: fonts.regular, sizeMm: 10.5 * mmPerPoint, ink: '#444444' };
  const between = ((Math.floor(shape.wedges / 2) + 0.5) * 360) / shape.wedges;
  const wedges = Array.from({ length: shape.wedges }, (_, k) =>
    ray((k * 360) / shape.wedges, 3, scale - scaleMm),
  );
  surface.strokePath(wedges, { stroke: grey, widthMm: 0.2 });
  const cross = [0, 90].map((turn) => ray(turn, -3, 3));
  surface.strokePath([...cross, ray(0, 3, scale)], { stroke: black, widthMm: 0.35 });
  const outside = last + 8 < scale - scaleMm;
  drawLabel([said.round(reached)], style, ...at(between, outside ? last + 4 : last - 4));
  drawDegrees();
  drawLeans();
  drawSides();
  surface.endGroup();

  function drawDegrees(): void {
    const fine: Polyline[] = [];
    const heavy: Polyline[] = [];
    const style = { face: fonts.bold, sizeMm: 10 * mmPerPoint };
    for (let d = 0; d < 360; d++) {
      const long = d % 10 === 0 ? scaleMm : d % 5 === 0 ? 3.4 : 2;
      (d % 10 === 0 ? heavy : fine).push(ray(d, scale - long, scale));
      if (d % 10 !== 0) continue;
      // Three digits side by side need a little more room than above each other.
      const out = numbersMm / 2 + 0.9 * Math.abs(Math.sin((d * Math.PI) / 180));
      const [tx, ty] = at(d, scale + out);
      drawText(surface, String(d > 180 ? 360 - d : d), style, tx, ty + 1.3, 'middle');
    }
    surface.strokePath(fine, { stroke: black, widthMm: 0.1 });
    surface.strokePath(heavy, { stroke: black, widthMm: 0.3 });
    const ring = [circleLine(x, y, scale)];
    surface.strokePath(ring, { stroke: black, widthMm: 0.2, closed: true });
  }

  /** Where the marked stitch of the last round comes to lie for some leans. */
  function drawLeans(): void {
    const direction = directionOf(shape);
    const { fromRound, toRound, markedWedge } = guide;
    const style = { face: fonts.regular, sizeMm: 10.5 * mmPerPoint };
    const marks = shownLeans.map((lean) => {
      const outline = naturalOutline(shape.increase, lean);
      const turn = markedTurn({ ...shape, outline, lean }, markedWedge, fromRound, toRound);
      const degrees = direction * turn;
      const side = Math.sin((degrees * Math.PI) / 180);
      const anchor = Math.abs(side) < 0.4 ? 'middle' : side > 0 ? 'start' : 'end';
      const [tx, ty] = at(degrees, scale + numbersMm + (anchor === 'middle' ? 5 : 4));
      // Beside the scale there may be no room but for the number; below the gauge stands what it is.
      const room = anchor === 'middle' ? Infinity : place.radius - Math.abs(tx - x);
      const named = said.lean(lean);
      const text = textWidth(named, style) <= room ? named : words.lists.decimal(String(lean));
      drawText(surface, text, style, tx, ty + 1.2, anchor);
      return ray(degrees, scale + numbersMm - 0.6, scale + numbersMm + 2);
    });
    surface.strokePath(marks, { stroke: black, widthMm: 0.5 });
  }

  /** Lines about a place, white behind them: wedge lines may run there. */
  function drawLabel(lines: readonly string[], style: TextStyle, tx: number, ty: number): void {
    const lineMm = 1.25 * style.sizeMm;
    const half = Math.max(...lines.map((line) => textWidth(line, style))) / 2 + 1;
    const top = ty - (lines.length * lineMm) / 2;
    const bottom = top + lines.length * lineMm;
    const [left, right] = [tx - half, tx + half];
    const ground = Float64Array.of(left, top, right, top, right, bottom, left, bottom);
    surface.fillPath([ground], { fill: '#ffffff' });
    lines.forEach((line, n) =>
      drawText(surface, line, style, tx, top + (n + 0.8) * lineMm, 'middle'),
    );
  }

  /** With the work on one side, against it on the other, with arrows. */
  function drawSides(): void {
    const direction = directionOf(shape);
    const style = { face: fonts.bold, sizeMm: 11 * mmPerPoint };
    const radius = scale - scaleMm - 5;
    for (const side of [1, -1]) {
      const text = side === direction ? said.with : said.against;
      const middle = side * 45;
      const [tx, ty] = at(side * 36, 0.58 * scale);
      drawLabel(wrapped(text, style, 0.42 * scale), style, tx, ty);
      const from = middle - side * 22;
      const arc = Float64Array.from(
        Array.from({ length: 23 }, (_, k) => at(from + side * 2 * k, radius)).flat(),
      );
      const end = from + side * 44;
      const head = [
        at(end - side * 3, radius - 2),
        at(end, radius),
        at(end - side * 3, radius + 2),
      ];
      surface.strokePath([arc, Float64Array.from(head.flat())], { stroke: black, widthMm: 0.4 });
    }
  }
}

function circleLine(x: number, y: number, radius: number): Float64Array {
  const points = Array.from({ length: 180 }, (_, p) => {
    const angle = (p * Math.PI) / 90;
    return [x + radius * Math.sin(angle), y - radius * Math.cos(angle)];
  });
  return Float64Array.from(points.flat());
}

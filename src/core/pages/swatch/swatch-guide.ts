import { rimWedge } from '../../swatch/model.js';
import { stitchCount } from '../../panel/shape.js';
import { tailCmOf } from '../../thread/need.js';
import { drawRuler, drawTestSquare, testSquaresMm } from '../surface/print-check.js';
import { safeAreaOf } from '../surface/print-sheet.js';
import type { Area } from '../surface/print-sheet.js';
import type { Surface } from '../surface/surface.js';
import { drawTurnGauge } from './turn-gauge.js';
import { drawText, mmPerPoint, textWidth, wrapped } from '../surface/text.js';
import type { TextStyle } from '../surface/text.js';
import type { SwatchGuide } from './guide-facts.js';

/** Sheets of the guide. */
export const guideSheets = 3;

/** What the guide leaves hanging at the start. */
const usualTailCm = tailCmOf(undefined);

const lineMm = 6.4;
const indentMm = 9;

/** Draws one sheet: 0 tells how to make and measure a swatch, 1 is the turn gauge, 2 tells the stitch. */
export function drawSwatchGuide(surface: Surface, sheet: number, guide: SwatchGuide): void {
  const area = safeAreaOf(surface);
  if (sheet === 0) drawSteps(surface, area, guide);
  else if (sheet === 1) drawGaugeSheet(surface, area, guide);
  else drawStitch(surface, area, guide);
}

function styles({ fonts }: SwatchGuide) {
  const at = (points: number, face = fonts.regular): TextStyle => ({
    face,
    sizeMm: points * mmPerPoint,
  });
  return {
    title: at(22, fonts.bold),
    bold: at(13.5, fonts.bold),
    plain: at(13.5),
    small: at(11.5),
  };
}

function drawSteps(surface: Surface, area: Area, guide: SwatchGuide): void {
  const { words, shape } = guide;
  const said = words.swatch.guide;
  const style = styles(guide);
  const width = area.right - area.left;
  let y = area.top + 8;
  const paragraph = (text: string, one: TextStyle, left: number, step = lineMm) => {
    for (const line of wrapped(text, one, area.right - left)) {
      drawText(surface, line, one, left, y);
      y += step;
    }
  };
  surface.beginGroup('steps');
  drawText(surface, said.title, style.title, area.left, y);
  y += 9;
  paragraph(said.intro, style.plain, area.left);
  y += 2;
  const facts = { ...shape, ...guide, rimWedge: rimWedge(shape.wedges), beads: stitchCount(shape) };
  said.steps(facts).forEach(({ head, text }, n) => {
    drawText(surface, `${n + 1}.`, style.bold, area.left, y);
    const left = area.left + indentMm;
    drawText(surface, head, style.bold, left, y);
    const after = textWidth(`${head}  `, style.bold);
    const [first, ...rest] = afterHead(text, style.plain, width - indentMm, after);
    drawText(surface, first, style.plain, left + after, y);
    y += lineMm;
    for (const line of rest) {
      drawText(surface, line, style.plain, left, y);
      y += lineMm;
    }
    y += 1.6;
  });
  y += 1;
  drawText(surface, said.write, style.bold, area.left, y);
  y += 9;
  const half = width / 2;
  said.blanks(facts).forEach((blank, n) => {
    const left = area.left + (n % 2) * half;
    drawText(surface, blank, style.plain, left, y);
    const from = left + textWidth(`${blank} `, style.plain);
    const line = Float64Array.of(from, y + 1, left + half - 6, y + 1);
    surface.strokePath([line], { stroke: '#000000', widthMm: 0.2 });
    if (n % 2 === 1) y += 9;
  });
  paragraph(said.then(facts), style.small, area.left, 5.2);
  y += 1.5;
  paragraph(said.care, style.small, area.left, 5.2);
  drawRuler(surface, area, guide);
  surface.endGroup();
}

/** How to begin, and each way to work a stitch, for the face on which the beads lie. */
function drawStitch(surface: Surface, area: Area, guide: SwatchGuide): void {
  const { words, shape } = guide;
  const said = words.swatch.guide;
  const style = styles(guide);
  let y = area.top + 8;
  const paragraph = (text: string, one: TextStyle, left = area.left) => {
    for (const line of wrapped(text, one, area.right - left)) {
      drawText(surface, line, one, left, y);
      y += 6.1;
    }
  };
  surface.beginGroup('stitch');
  drawText(surface, said.stitchTitle, style.title, area.left, y);
  y += 9;
  paragraph(said.stitchIntro, style.plain);
  y += 2;
  paragraph(words.rounds.begin({ wedges: shape.wedges, tailCm: usualTailCm }), style.plain);
  const { beadsFace, construction, wedges } = shape;
  const facts = {
    beadsFace,
    construction,
    wedges,
    fixing: 'sewn',
    bare: false,
    tailCm: usualTailCm,
    front: '',
    back: '',
  } as const;
  paragraph(words.hands['bead-side'].steps({ ...facts, way: 'both-loops' }).join(' '), style.plain);
  for (const way of ['both-loops', 'bead-side-loop', 'slip'] as const) {
    y += 3.5;
    paragraph(said.ways[way], style.bold);
    const { steps } = words.hands[way === 'slip' ? 'slip-stitch' : 'stitch'];
    for (const step of steps({ ...facts, way })) paragraph(step, style.plain, area.left + indentMm);
    paragraph(said.chooseWay(way), style.plain, area.left + indentMm);
  }
  surface.endGroup();
}

/** Lines of a text whose first line has less room. */
function afterHead(text: string, style: TextStyle, widthMm: number, taken: number): string[] {
  const words = text.split(' ');
  let first = '';
  while (words.length > 0) {
    const longer = first === '' ? words[0] : `${first} ${words[0]}`;
    if (textWidth(longer, style) > widthMm - taken) break;
    first = longer;
    words.shift();
  }
  return [first, ...wrapped(words.join(' '), style, widthMm)];
}

function drawGaugeSheet(surface: Surface, area: Area, guide: SwatchGuide): void {
  const said = guide.words.swatch.guide;
  const style = styles(guide);
  const radius = (area.right - area.left) / 2;
  drawText(surface, said.gaugeTitle, style.title, area.left, area.top + 7);
  const centreY = area.top + 12 + radius;
  drawTurnGauge(surface, guide, { x: surface.widthMm / 2, y: centreY, radius });
  const squares = area.bottom - testSquaresMm[1];
  drawTestSquare(surface, 0, area.left, squares, guide);
  drawTestSquare(surface, 1, area.left + testSquaresMm[0] + 5, squares, guide);
  const left = area.left + testSquaresMm[0] + testSquaresMm[1] + 10;
  let y = squares + 4;
  for (const line of wrapped(said.scale, style.small, area.right - left)) {
    drawText(surface, line, style.small, left, y);
    y += 5.2;
  }
}

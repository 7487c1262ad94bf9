import { signal } from '@preact/signals';
import { repeatDegrees } from '../../panel/draw-panel.js';
import type { HandScene, Pull, Spot } from '../../panel/hand.js';
import { maskOf } from '../../picture-in/minded.js';
import type { ChartPanel } from '../../store/chart.js';
import { placeSaid } from '../../store/place-said.js';
import { piece, pieces, shownPanel, view } from '../../store/store.js';
import { figure, words } from '../../words.js';

/** What a finger does on the panel: undefined moves the picture. */
export const brushing = signal<'mind' | 'unmind' | undefined>(undefined);
/** Radius of the brush, millimetres on the panel. */
export const brushMm = signal(5);

/** Whether the keyboard has sized it last, which is said then instead of its place. */
export const sizeTold = signal(false);

/** Brushes over places, one after the other, as one step. */
export function brushAlong([first, ...others]: readonly Spot[]): void {
  const pull = beginBrush(first);
  for (const spot of others) pull?.move(spot);
  pull?.end();
}

/** Where the brush of the keyboard is and what lies there, or how large it is, spoken. */
export function saysOfBrush(s: number): string | undefined {
  if (!brushing.value) return undefined;
  const say = words.value.picture;
  if (sizeTold.value) return `${say.mindSize}: ${figure(2 * brushMm.value)} ${say.mm}`;
  const panel = shownPanel.value;
  if (!panel || s < 0) return '';
  const place = placeSaid(s);
  const { centres } = panel.geometry;
  return isBrushed(panel, centres[2 * s], centres[2 * s + 1]) ? say.mindThere({ place }) : place;
}

/** Whether a place on the panel has been brushed over. */
function isBrushed(panel: ChartPanel, xMm: number, yMm: number): boolean {
  const mask = maskOf(piece.value)?.picture;
  const { picture } = piece.value.picture ?? {};
  if (!mask || !picture || !panel.place) return false;
  const [x, y] = onPicture(panel, { xMm, yMm });
  const column = Math.floor((x * mask.width) / picture.width);
  const row = Math.floor((y * mask.height) / picture.height);
  const inside = column >= 0 && row >= 0 && column < mask.width && row < mask.height;
  return inside && mask.data[4 * (row * mask.width + column)] > 0;
}

/** The brush of the keyboard on the panel, as large as it is. */
export function drawBrush(context: CanvasRenderingContext2D, { panel, pxPerMm }: HandScene): void {
  const s = view.peek().litStitch;
  const { count, centres } = panel.geometry;
  if (s < 0 || s >= count) return;
  const ring = new Path2D();
  ring.arc(centres[2 * s], centres[2 * s + 1], brushMm.peek(), 0, 7);
  context.strokeStyle = '#161616';
  context.lineWidth = 5 / pxPerMm;
  context.stroke(ring);
  context.strokeStyle = '#ffffff';
  context.lineWidth = 2 / pxPerMm;
  context.stroke(ring);
}

/** Brushes over the picture, or wipes off, one step a pull. */
export function beginBrush(at: Spot): Pull | undefined {
  const panel = shownPanel.peek();
  if (!panel?.place || !piece.peek().picture) return undefined;
  const gesture = pieces.begin(words.peek().picture.steps.mind);
  const before = piece.peek().minded ?? [];
  const radius = brushMm.peek() / panel.place.mmPerPixel;
  const wipes = brushing.peek() === 'unmind';
  const points: number[] = [];
  const lay = (spot: Spot) => {
    points.push(...onPicture(panel, spot));
    const pull = { points: [...points], radius, ...(wipes && { wipes }) };
    gesture.change((now) => ({ ...now, minded: [...before, pull] }));
  };
  lay(at);
  return { move: lay, end: () => gesture.end(), drop: () => gesture.drop() };
}

/** From the panel to the picture: pixels from its top left corner, to a tenth. */
function onPicture(panel: ChartPanel, { xMm, yMm }: Pick<Spot, 'xMm' | 'yMm'>): [number, number] {
  const { picture } = piece.peek().picture!;
  const place = panel.place!;
  let [x, y] = [xMm, yMm];
  if (place.repeat) [x, y] = turnedBy(x, y, -nearestWedge(panel, x, y));
  [x, y] = turnedBy(x - place.centreXmm, y - place.centreYmm, -place.rotateDegrees);
  if (place.mirror) x = -x;
  const tenth = (value: number) => Math.round(10 * value) / 10;
  return [
    tenth(x / place.mmPerPixel + picture.width / 2),
    tenth(y / place.mmPerPixel + picture.height / 2),
  ];
}

function turnedBy(x: number, y: number, degrees: number): [number, number] {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [cos * x - sin * y, sin * x + cos * y];
}

/** Where the wedge points that a place lies in, clockwise from 12 o'clock. */
function nearestWedge(panel: ChartPanel, x: number, y: number): number {
  const at = (Math.atan2(x, -y) * 180) / Math.PI;
  const away = (degrees: number) => Math.abs(((((at - degrees) % 360) + 540) % 360) - 180);
  const { wedges } = panel.geometry.shape;
  const all = Array.from({ length: wedges }, (_, k) => repeatDegrees(panel, k));
  return all.reduce((best, one) => (away(one) < away(best) ? one : best));
}

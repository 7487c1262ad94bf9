import { signal } from '@preact/signals';
import { repeatDegrees } from '../../panel/draw-panel.js';
import type { Pull, Spot } from '../../panel/hand.js';
import type { ChartPanel } from '../../store/chart.js';
import { piece, pieces, shownPanel } from '../../store/store.js';
import { words } from '../../words.js';

/** What a finger does on the panel: undefined moves the picture. */
export const brushing = signal<'mind' | 'unmind' | undefined>(undefined);
/** Radius of the brush, millimetres on the panel. */
export const brushMm = signal(5);

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
function onPicture(panel: ChartPanel, { xMm, yMm }: Spot): [number, number] {
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

import { reachMm } from '../../panel/scene.js';
import type { HandScene, PanelHand, Spot } from '../../panel/hand.js';
import type { ChartPanel } from '../../store/chart.js';
import { look, piece, pieces, shownPanel } from '../../store/store.js';
import { words } from '../../words.js';
import { beginBrush, brushing, brushMm, drawBrush, saysOfBrush } from './mind.js';
import { placed, placeOf, shifted, sized, turned, wheeled } from './place.js';

/** Radius of the knob and the distance of its middle from the rim, as shares of the panel's reach. */
const knob = { radius: 0.055, out: 0.075 };

/** The finger on the panel while the picture is laid: it moves the picture, and the knob turns it. */
export const pictureHand: PanelHand = {
  begin(at) {
    if (!piece.peek().picture) return undefined;
    const panel = shownPanel.peek();
    const say = words.peek().picture.steps;
    if (brushing.peek()) {
      // The brush of the keyboard is put aside.
      look({ litStitch: -1 });
      return beginBrush(at);
    }
    if (panel && isOnKnob(panel, at)) return turning(say.turn, at);
    let last = at;
    let moved = false;
    const gesture = pieces.begin(say.move);
    return {
      move(to) {
        // A tap that trembles is no move.
        if (!moved && Math.hypot(to.xMm - at.xMm, to.yMm - at.yMm) < 0.4) return;
        moved = true;
        const from = last;
        last = to;
        gesture.change((now) => shifted(now, to.xMm - from.xMm, to.yMm - from.yMm));
      },
      end: () => gesture.end(),
      drop: () => gesture.drop(),
    };
  },
  pinch({ factor, degrees, about }) {
    if (!piece.peek().picture) return;
    wheeled(words.peek().picture.steps.size, (now) =>
      sized(now, factor, degrees, about.xMm, about.yMm),
    );
  },
  cursor(at) {
    const panel = shownPanel.peek();
    if (!piece.peek().picture || !panel) return 'default';
    if (brushing.peek()) return 'crosshair';
    return isOnKnob(panel, at) ? 'grab' : 'move';
  },
  /** A tap of the brush lights up no stitch. */
  get quiet() {
    return brushing.peek() !== undefined;
  },
  watch: () => `${brushing.value} ${brushMm.value} ${placeOf(piece.value).rotateDegrees ?? 0}`,
  soon: true,
  says: saysOfBrush,
  draw(context, scene) {
    if (!piece.peek().picture) return;
    if (brushing.peek()) drawBrush(context, scene);
    else drawKnob(context, scene);
  },
};

function turning(name: string, at: Spot) {
  const gesture = pieces.begin(name);
  let last = angleOf(at);
  return {
    move(to: Spot) {
      const now = angleOf(to);
      const by = turned(now - last);
      last = now;
      gesture.change((piece) => {
        const { rotateDegrees = 0 } = placeOf(piece);
        return placed(piece, { rotateDegrees: turned(rotateDegrees + by) });
      });
    },
    end: () => gesture.end(),
    drop: () => gesture.drop(),
  };
}

/** Degrees clockwise from 12 o'clock. */
const angleOf = ({ xMm, yMm }: { xMm: number; yMm: number }) =>
  (Math.atan2(xMm, -yMm) * 180) / Math.PI;

/** The knob stands outside the rim, where the top of the picture points. */
function knobOf({ geometry }: ChartPanel) {
  const reach = reachMm(geometry.shape);
  const angle = ((placeOf(piece.peek()).rotateDegrees ?? 0) * Math.PI) / 180;
  const out = reach * (1 + knob.out);
  return {
    xMm: out * Math.sin(angle),
    yMm: -out * Math.cos(angle),
    radius: reach * knob.radius,
    angle,
    reach,
  };
}

function isOnKnob(panel: ChartPanel, at: Spot): boolean {
  const { xMm, yMm, radius } = knobOf(panel);
  return Math.hypot(at.xMm - xMm, at.yMm - yMm) < radius * 1.6;
}

function drawKnob(
  context: CanvasRenderingContext2D,
  { panel, pxPerMm, ink, paper }: HandScene,
): void {
  const { xMm, yMm, radius, angle } = knobOf(panel);
  const px = 1 / pxPerMm;
  context.save();
  context.translate(xMm, yMm);
  context.rotate(angle);
  context.fillStyle = paper;
  context.strokeStyle = ink;
  context.lineWidth = 2 * px;
  context.beginPath();
  context.arc(0, 0, radius, 0, 7);
  context.fill();
  context.stroke();
  // A bent arrow with two points.
  const r = radius * 0.5;
  context.beginPath();
  context.arc(0, r * 0.55, r, -Math.PI * 0.86, -Math.PI * 0.14);
  context.stroke();
  for (const side of [-1, 1]) {
    const x = side * r * Math.cos(Math.PI * 0.14);
    const y = r * 0.55 - r * Math.sin(Math.PI * 0.14);
    context.beginPath();
    context.moveTo(x + side * r * 0.3, y - r * 0.45);
    context.lineTo(x, y + r * 0.12);
    context.lineTo(x - side * r * 0.62, y - r * 0.18);
    context.stroke();
  }
  context.restore();
}

import { signal } from '@preact/signals';
import type { KeptLight } from '../../core/pages/worked/kept-light.js';
import { recolourBeads } from '../../core/pages/worked/recolour-beads.js';
import type { RecolouredBeads } from '../../core/pages/worked/recolour-beads.js';
import type { LightAnswer, LightAsk } from '../engine/light-worker.js';
import type { Chart, ChartPanel } from '../store/chart.js';

/** Told when a new light has come, or there is more to draw in the next frame. */
export const lightsMade = signal(0);

let worker: Worker | undefined;
let asked = '';
let kept: { key: string; light: KeptLight } | undefined;
let made:
  { key: string; beads: RecolouredBeads; canvas: HTMLCanvasElement; whole: boolean } | undefined;

/** Pixels of a new panel that are painted in one go, so that a finger is heard in between. */
const goPx = 6e4;

/** Asks for another drawing, in a task of its own. */
export const drawMore = (): void => void setTimeout(() => lightsMade.value++);

/**
 * The worked picture of a panel on a canvas, its beads coloured as they are now. Undefined while the
 * light of this shape and size is still being worked out, which a thread of its own does, and while its
 * beads are painted for the first time, which takes several frames.
 */
export function workedBeads(
  panel: ChartPanel,
  beads: Chart['beads'],
  widthPx: number,
): HTMLCanvasElement | undefined {
  const { shape, startDegrees } = panel.geometry;
  const withBare = panel.beadOf.some((one) => one < 0);
  const panelKey = JSON.stringify([shape, startDegrees, widthPx]);
  const keys = [`${panelKey} bare`, `${panelKey} full`];
  const wanted = withBare ? keys[0] : keys[1];
  // Light that knows of bare stitches serves a panel without any; the first bare stitch of a full
  // one shows the ground until its own light is there.
  if (kept?.key !== wanted && kept?.key !== keys[0]) {
    ask({ key: wanted, shape, startDegrees, widthPx, withBare });
  }
  if (!kept || !keys.includes(kept.key)) return undefined;
  const { key } = kept;
  if (made?.key !== key) {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = widthPx;
    made = { key, beads: recolourBeads(panel.geometry, kept.light), canvas, whole: false };
  }
  const whole = () => new ImageData(made!.beads.data as Uint8ClampedArray<ArrayBuffer>, widthPx);
  if (!made.whole) {
    const most = Math.ceil((panel.geometry.count * goPx) / widthPx ** 2);
    if (made.beads.paint(panel.beadOf, beads, most) === most) {
      drawMore();
      return undefined;
    }
    made.whole = true;
    made.canvas.getContext('2d')!.putImageData(whole(), 0, 0);
    return made.canvas;
  }
  if (made.beads.paint(panel.beadOf, beads) > 0) {
    const { left, top, width, height } = made.beads.painted();
    made.canvas.getContext('2d')!.putImageData(whole(), 0, 0, left, top, width, height);
  }
  return made.canvas;
}

function ask(wanted: LightAsk): void {
  if (asked === wanted.key) return;
  asked = wanted.key;
  if (!worker) {
    worker = new Worker(new URL('../engine/light-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<LightAnswer>) => {
      if (data.key !== asked) return;
      kept = data;
      lightsMade.value++;
    };
  }
  worker.postMessage(wanted);
}

import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { theme } from '../../look/theme.js';
import { lightsMade } from '../../panel/lights.js';
import { OtherEyes } from '../../panel/other-eyes.js';
import { ActionButton } from '../../parts/action-button.js';
import { purseLook, pxPerMm, trueSize } from '../../store/purse.js';
import { seenChart } from '../../store/seen.js';
import { piece } from '../../store/store.js';
import { fineFigure, words } from '../../words.js';
import { drawInside, drawSide } from './draw-purse.js';
import { hung } from './hung.js';
import type { Hung } from './hung.js';
import { coinFor, coinMm, drawCoin, drawRuler } from './scale-things.js';

/** Room between things, millimetres. */
const gapMm = 9;
const rulerMm = 11;

/** The purse in the middle of the table. */
export function PurseView() {
  const canvas = useRef<HTMLCanvasElement>(null);
  const room = useRef<HTMLDivElement>(null);
  useEffect(() => showPurse(canvas.current!, room.current!), []);
  const say = words.value.purse;
  return (
    <section class="panel purse" aria-label={say.step}>
      <div class="ground" ref={room} tabIndex={0}>
        <canvas ref={canvas} role="img" aria-label={say.label} />
      </div>
      <OtherEyes />
      <div class="tools">
        <div class="group">
          <ActionButton id="purse-both" look="quiet" />
          <ActionButton id="purse-front" look="quiet" />
          <ActionButton id="purse-back" look="quiet" />
          <ActionButton id="purse-inside" look="quiet" />
          <ActionButton id="true-size" look="quiet" />
        </div>
      </div>
    </section>
  );
}

/** The sides that are shown, left to right. */
function shownSides(sides: readonly Hung[]): readonly Hung[] {
  const [front, back = front] = sides;
  if (!front) return [];
  const look = purseLook.peek();
  if (look === 'both') return sides;
  return [look === 'back' ? back : front];
}

function showPurse(canvas: HTMLCanvasElement, room: HTMLElement): () => void {
  const context = canvas.getContext('2d')!;
  let asked = 0;

  function draw(): void {
    asked = 0;
    const { sides } = hung.peek();
    const shown = shownSides(sides);
    const made = seenChart.peek();
    if (!made || shown.length === 0) return;
    const { frame } = piece.peek().wish;
    const wide = shown.reduce((sum, { box }) => sum + box.right - box.left + gapMm, 0);
    const high = Math.max(...shown.map(({ box }) => box.bottom - box.top));
    const allWide = wide + coinMm(coinFor()) + 2 * gapMm;
    const allHigh = high + rulerMm + 2 * gapMm;
    const fit = Math.min(room.clientWidth / allWide, room.clientHeight / allHigh);
    const k = trueSize.peek() ? pxPerMm.peek() : fit;
    const width = Math.max(room.clientWidth, Math.ceil(allWide * k));
    const height = Math.max(room.clientHeight, Math.ceil(allHigh * k));
    const dots = Math.min(2, devicePixelRatio || 1);
    canvas.width = Math.round(width * dots);
    canvas.height = Math.round(height * dots);
    canvas.style.width = `${width}px`;
    canvas.style.height = `${height}px`;
    const ink = getComputedStyle(canvas).getPropertyValue('--ink').trim();
    let left = (width / k - allWide) / 2 + gapMm;
    const floor = (height / k - allHigh) / 2 + gapMm + high;
    const at = (x: number, y: number) =>
      context.setTransform(k * dots, 0, 0, k * dots, x * k * dots, y * k * dots);
    const from = left;
    const inside = purseLook.peek() === 'inside';
    for (const side of shown) {
      const { box, hanging } = side;
      at(left - box.left, floor - box.bottom);
      const [front, back = front] = sides;
      if (inside && hanging && frame) {
        drawInside(context, front, back, made.beads, frame, k, '#8e5b5b');
      } else drawSide(context, side, made.beads, frame, k);
      left += box.right - box.left + gapMm;
    }
    at(left, floor - coinMm(coinFor()));
    const coin = coinFor();
    drawCoin(context, coin, `${fineFigure(coinMm(coin))} ${words.peek().purse.mm}`, ink, k);
    at(from, floor + gapMm * 0.6);
    drawRuler(context, Math.max(60, Math.min(wide - gapMm, 150)), k);
  }

  const ask = () => {
    asked ||= requestAnimationFrame(draw);
  };
  const resized = new ResizeObserver(ask);
  resized.observe(room);
  const stop = effect(() => {
    void [
      hung.value,
      seenChart.value,
      purseLook.value,
      trueSize.value,
      pxPerMm.value,
      theme.value,
      lightsMade.value,
      piece.value,
      words.value,
    ];
    ask();
  });
  return () => {
    stop();
    resized.disconnect();
    cancelAnimationFrame(asked);
  };
}

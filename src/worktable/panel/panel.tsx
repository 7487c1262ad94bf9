import { computed, effect, untracked } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { acrossMm } from '../../core/panel/edge.js';
import { roundOfStitch, stitchesBefore } from '../../core/panel/shape.js';
import { theme } from '../look/theme.js';
import { ActionButton } from '../parts/action-button.js';
import { stepNamed } from '../steps/list.js';
import { brushing } from '../steps/picture/mind.js';
import {
  chart,
  choosing,
  look,
  mirrored,
  piece,
  pieces,
  shownPanel,
  view,
} from '../store/store.js';
import { calmChart, calmPanel } from '../store/calm.js';
import type { Chart } from '../store/chart.js';
import { seenChart } from '../store/seen.js';
import { figure, words } from '../words.js';
import { changedStitches, drawChanged, groundOf } from './draw-changed.js';
import { drawPanel, readySlide } from './draw-panel.js';
import type { PanelDrawing } from './draw-panel.js';
import { lightsMade } from './lights.js';
import { watchPointers } from './pointers.js';
import { ByRound } from './by-round.js';
import { OtherEyes } from './other-eyes.js';
import { sceneOf } from './scene.js';

/** The panel in the middle of the table. */
export function Panel() {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => showPanel(canvas.current!), []);
  const say = words.value.table;
  const shape = shownShape.value;
  const byKeys = stepNamed(view.value.step).hand !== undefined;
  const label = shape
    ? say.panelLabel({
        rounds: figure(shape.rounds),
        wedges: figure(shape.wedges),
        mm: figure(Math.round(acrossMm(shape))),
      })
    : say.panel;
  return (
    <section class="panel" aria-label={say.panel}>
      <div
        class="ground"
        // Arrow keys act on it there; a screen reader hands them over to an application only.
        {...(byKeys && { tabIndex: 0, role: 'application', 'aria-label': label })}
      >
        <canvas ref={canvas} role="img" aria-label={label} />
        <Lit />
        {shape && (
          <p class="size">
            {say.panelSize({
              rounds: figure(shape.rounds),
              cm: figure(acrossMm(shape) / 10),
            })}
            {mirrored.value && <span class="busy">{say.mirrored}</span>}
            {atWork.value && <span class="busy">{say.working}</span>}
          </p>
        )}
      </div>
      <OtherEyes />
      <div class="tools">
        <div class="zooms">
          <ActionButton id="nearer" look="quiet" />
          <ActionButton id="farther" look="quiet" />
          <ActionButton id="whole" look="quiet" />
        </div>
        <div class="looks">
          <ActionButton id="look-beads" look="quiet" />
          <ActionButton id="look-cells" look="quiet" />
          <ActionButton id="wedges" look="quiet" />
          <ActionButton id="working-face" look="quiet" />
          <ActionButton id="overlay" look="quiet" />
          {view.value.overlay > 0 && hasPicture.value && <Overlay />}
          <ActionButton id="eyes" look="quiet" />
          {panelCount.value > 1 && (
            <>
              <ActionButton id="purse-front" look="quiet" />
              <ActionButton id="purse-back" look="quiet" />
            </>
          )}
          <ActionButton id="turn" look="quiet" />
          <ActionButton id="as-text" look="quiet" />
        </div>
      </div>
      <ByRound />
    </section>
  );
}

// What the table shows of chart and piece: most of either changes while a finger pulls, and none of this.
const shownShape = computed(() => chart.value?.shape);
const panelCount = computed(() => chart.value?.panels.length ?? 0);
const atWork = computed(() => choosing.value && !chart.value?.settled);
const hasPicture = computed(() => piece.value.picture !== undefined);

function Lit() {
  return (
    <p class="lit" aria-live="polite">
      {litSentence()}
    </p>
  );
}

function Overlay() {
  return (
    <input
      class="overlay"
      type="range"
      min="0.05"
      max="1"
      step="0.05"
      aria-label={words.value.actions.overlay}
      value={view.value.overlay}
      onInput={(event) => look({ overlay: event.currentTarget.valueAsNumber })}
    />
  );
}

/** What is said of the stitch that is lit up. */
function litSentence(): string {
  const { litStitch, step } = view.value;
  const { says } = stepNamed(step).hand ?? {};
  if (litStitch < 0 && !says) return '';
  const panel = calmPanel.value;
  const made = calmChart.value;
  if (!panel || !made || litStitch >= panel.geometry.count) return '';
  const own = says?.(litStitch);
  if (own !== undefined) return own;
  if (litStitch < 0) return '';
  const round = roundOfStitch(made.shape, litStitch);
  const place = {
    round: figure(round),
    stitch: figure(litStitch - stitchesBefore(made.shape, round) + 1),
  };
  const bead = made.beads[panel.beadOf[litStitch]];
  const say = words.value.table;
  return bead
    ? say.stitch({ ...place, letter: bead.letter, name: bead.name })
    : say.bareStitch(place);
}

/** Colours of a theme; asked of the style once, since an answer costs a layout. */
function tonesOf(canvas: HTMLCanvasElement, of: 'light' | 'dark') {
  const style = getComputedStyle(canvas);
  const tone = (name: string) => style.getPropertyValue(name).trim();
  return { theme: of, ground: tone('--ground'), ink: tone('--ink'), paper: tone('--paper') };
}

/** Draws the panel on a canvas whenever something changes; at most once a frame. */
function showPanel(canvas: HTMLCanvasElement): () => void {
  const context = canvas.getContext('2d')!;
  let asked = 0;
  let last: { same: string; drawing: PanelDrawing } | undefined;
  let tones: ReturnType<typeof tonesOf> | undefined;
  /** Below the beads, as long as nothing but beads changes. */
  let ground: HTMLCanvasElement | undefined;
  const size = { widthPx: canvas.clientWidth, heightPx: canvas.clientHeight };
  const scene = () => {
    const made = chart.peek();
    const { widthPx, heightPx } = size;
    return made && sceneOf(made.shape, view.peek(), widthPx, heightPx, mirrored.peek());
  };
  const hand = () => stepNamed(view.peek().step).hand;

  function draw(): void {
    asked = 0;
    const made = chart.peek();
    const panel = shownPanel.peek();
    const now = scene();
    if (!made || !panel || !now || now.widthPx === 0) return;
    const dotsPerPx = Math.min(2, devicePixelRatio || 1);
    const width = Math.round(now.widthPx * dotsPerPx);
    const height = Math.round(now.heightPx * dotsPerPx);
    if (canvas.width !== width || canvas.height !== height) {
      canvas.width = width;
      canvas.height = height;
    }
    if (tones?.theme !== theme.peek()) tones = tonesOf(canvas, theme.peek());
    const drawing: PanelDrawing = {
      chart: seenChart.peek()!,
      panel,
      piece: piece.peek(),
      view: view.peek(),
      scene: now,
      hand: hand(),
      handState: hand()?.watch?.(),
      around: hand()?.pinch !== undefined,
      followed: pieces.held.peek() && made.settled === undefined,
      minding: view.peek().step === 'picture' && brushing.peek() !== undefined,
      tones,
      dotsPerPx,
    };
    const same = JSON.stringify([
      view.peek(),
      drawing.tones,
      width,
      height,
      lightsMade.peek(),
      drawing.followed,
    ]);
    const before = drawing.minding || last?.drawing.minding ? undefined : last;
    const changed =
      before && before.same === same ? changedStitches(before.drawing, drawing) : undefined;
    last = { same, drawing };
    if (!changed) ground = undefined;
    if (changed) {
      drawChanged(context, drawing, changed, () => (ground ??= groundOf(context, drawing)));
    } else {
      drawPanel(context, drawing);
    }
  }

  const ask = () => {
    asked ||= requestAnimationFrame(draw);
  };
  let drawn: Chart | undefined;
  /** What has been chosen for a finger that pulls is drawn as it comes, before its frame is due. */
  const drawFollowed = () => {
    const now = chart.peek();
    if (now === drawn || now?.settled || !pieces.held.peek()) return;
    drawn = now;
    cancelAnimationFrame(asked);
    draw();
  };
  watchPointers(canvas, {
    spot(xPx, yPx) {
      const { xMm, yMm } = scene()?.toFace(xPx, yPx) ?? { xMm: 0, yMm: 0 };
      return { xMm, yMm, stitch: shownPanel.peek()?.footprints.owner(xMm, yMm) ?? -1 };
    },
    hand,
    pxPerMm: () => scene()?.pxPerMm ?? 1,
    mirrored: () => mirrored.peek(),
  });
  const resized = new ResizeObserver(() => {
    Object.assign(size, { widthPx: canvas.clientWidth, heightPx: canvas.clientHeight });
    ask();
  });
  resized.observe(canvas);
  const stop = effect(() => {
    // Whatever the picture hangs on: any of it asks for the next frame.
    void [
      seenChart.value,
      piece.value,
      view.value,
      theme.value,
      lightsMade.value,
      shownPanel.value,
      mirrored.value,
      stepNamed(view.value.step).hand?.watch?.(),
      brushing.value,
    ];
    ask();
    untracked(drawFollowed);
  });
  const stopReady = effect(() => {
    // A finger is down: what the first move would wait for is made before it.
    if (pieces.held.value) setTimeout(() => last && readySlide(context, last.drawing));
  });
  return () => {
    stop();
    stopReady();
    resized.disconnect();
    cancelAnimationFrame(asked);
  };
}

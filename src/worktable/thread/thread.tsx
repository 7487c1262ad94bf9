import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { theme } from '../look/theme.js';
import { beadSprite } from '../mat/bead-sprite.js';
import { ActionButton } from '../parts/action-button.js';
import { calmChart, calmPanel, calmSeen } from '../store/calm.js';
import { look, view } from '../store/store.js';
import { figure, words } from '../words.js';
import { strung } from './strung.js';

/** From one bead to the next, and the height of the row, CSS pixels. */
const pitchPx = 24;
const rowPx = 96;
const beadPx = 28;
const beadYpx = 50;
/** Room before the first bead. */
const startPx = 20;

/** The thread: the stringing list as a row of beads. */
export function Thread() {
  const say = words.value.table;
  const scroller = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => showThread(scroller.current!, canvas.current!), []);
  const beads = strung.value?.stitches.length ?? 0;
  return (
    <section class="thread" aria-label={say.thread}>
      <div class="head">
        <h2>{say.thread}</h2>
        <ActionButton id="thread-way" look="quiet" />
      </div>
      <div
        ref={scroller}
        class="scroller"
        tabIndex={0}
        role="slider"
        aria-label={say.threadLabel({ n: figure(beads) })}
        aria-valuemin={0}
        aria-valuemax={Math.max(0, beads)}
        aria-valuenow={(strung.value?.placeOf[view.value.litStitch] ?? -1) + 1}
        aria-valuetext={spoken()}
        onKeyDown={goAlong}
      >
        <div
          class="long"
          style={{ width: `${2 * startPx + beads * pitchPx}px`, height: `${rowPx}px` }}
        >
          <canvas ref={canvas} aria-hidden="true" />
        </div>
      </div>
    </section>
  );
}

function spoken(): string {
  const place = strung.value?.placeOf[view.value.litStitch] ?? -1;
  if (place < 0) return '';
  const bead = calmChart.value!.beads[calmPanel.value!.beadOf[view.value.litStitch]];
  return `${figure(place + 1)}: ${bead?.letter ?? ''} ${bead?.name ?? ''}`;
}

/** Arrow keys light up the next bead or the one before; home and end the ends. */
function goAlong(event: KeyboardEvent): void {
  const thread = strung.peek();
  if (!thread || event.ctrlKey || event.metaKey) return;
  const last = thread.stitches.length - 1;
  const now = thread.placeOf[view.peek().litStitch] ?? -1;
  const to = {
    ArrowRight: now + 1,
    ArrowLeft: now - 1,
    PageDown: now + 10,
    PageUp: now - 10,
    Home: 0,
    End: last,
  }[event.key];
  if (to === undefined) return;
  event.preventDefault();
  look({ litStitch: thread.stitches[Math.min(last, Math.max(0, to))] ?? -1 });
}

function showThread(scroller: HTMLElement, canvas: HTMLCanvasElement): () => void {
  const context = canvas.getContext('2d')!;
  let asked = 0;
  let lit = -1;

  function draw(): void {
    asked = 0;
    const dots = Math.min(2, devicePixelRatio || 1);
    const width = scroller.clientWidth;
    if (canvas.width !== Math.round(width * dots)) canvas.width = Math.round(width * dots);
    if (canvas.height !== rowPx * dots) canvas.height = rowPx * dots;
    context.setTransform(dots, 0, 0, dots, 0, 0);
    context.clearRect(0, 0, width, rowPx);
    const thread = strung.peek();
    const panel = calmPanel.peek();
    const beads = calmSeen.peek()?.beads;
    if (!thread || !panel || !beads) return;
    const left = scroller.scrollLeft;
    const style = getComputedStyle(canvas);
    const ink = style.getPropertyValue('--ink').trim();
    const strand = style.getPropertyValue('--strand').trim();
    const paper = style.getPropertyValue('--paper').trim();
    context.fillStyle = strand;
    context.fillRect(0, beadYpx - 1.5, width, 3);
    const first = Math.max(0, Math.floor((left - startPx) / pitchPx) - 12);
    const last = Math.min(thread.stitches.length, Math.ceil((left + width) / pitchPx) + 1);
    const say = words.peek().table;
    context.textBaseline = 'middle';
    for (let n = first; n < last; n++) {
      const s = thread.stitches[n];
      const x = startPx + n * pitchPx - left;
      const bead = beads[panel.beadOf[s]];
      const sprite = bead && beadSprite(bead, 2 * beadPx);
      if (sprite)
        context.drawImage(sprite, x + (pitchPx - beadPx) / 2, beadYpx - beadPx / 2, beadPx, beadPx);
      if (s === view.peek().litStitch) {
        context.strokeStyle = ink;
        context.lineWidth = 3;
        context.beginPath();
        context.arc(x + pitchPx / 2, beadYpx, beadPx / 2 + 3, 0, 7);
        context.stroke();
      }
      const round = thread.rounds.get(n);
      if (round !== undefined) {
        context.strokeStyle = ink;
        context.lineWidth = 1.5;
        context.beginPath();
        context.moveTo(x, beadYpx + 12);
        context.lineTo(x, beadYpx + 26);
        context.stroke();
        context.fillStyle = ink;
        context.font = '16px system-ui, sans-serif';
        context.textAlign = 'left';
        context.fillText(say.roundMark(figure(round)), x + 5, beadYpx + 32);
      }
      const length = thread.lengths.get(n);
      if (length)
        flag(
          x,
          say.length({
            n: figure(length.number),
            beads: figure(length.beads),
            m: figure(length.metres),
          }),
        );
    }

    /** A paper flag tied to the thread where a length begins. */
    function flag(x: number, text: string): void {
      context.font = '16px system-ui, sans-serif';
      context.textAlign = 'left';
      const wide = context.measureText(text).width + 18;
      context.strokeStyle = ink;
      context.lineWidth = 1.5;
      context.beginPath();
      context.moveTo(x, beadYpx + 8);
      context.lineTo(x, 10);
      context.stroke();
      context.fillStyle = paper;
      context.fillRect(x, 6, wide, 24);
      context.strokeRect(x, 6, wide, 24);
      context.fillStyle = ink;
      context.fillText(text, x + 9, 19);
    }
  }

  const ask = () => {
    asked ||= requestAnimationFrame(draw);
  };
  /** A frame later than the panel, which new beads change too: both at once are a long task. */
  const askAfterPanel = () => {
    asked ||= requestAnimationFrame(() => (asked = requestAnimationFrame(draw)));
  };
  const placeAt = (event: MouseEvent) => {
    const x = event.clientX - scroller.getBoundingClientRect().left + scroller.scrollLeft;
    return strung.peek()?.stitches[Math.floor((x - startPx) / pitchPx)] ?? -1;
  };
  canvas.addEventListener('click', (event) => look({ litStitch: placeAt(event) }));
  scroller.addEventListener('scroll', ask, { passive: true });
  const resized = new ResizeObserver(ask);
  resized.observe(scroller);
  const stop = effect(() => {
    const thread = strung.value;
    void [calmSeen.value, theme.value, words.value];
    const { litStitch } = view.value;
    if (litStitch !== lit) {
      lit = litStitch;
      const place = thread?.placeOf[litStitch] ?? -1;
      const x = startPx + place * pitchPx;
      const shown =
        x > scroller.scrollLeft + 40 && x < scroller.scrollLeft + scroller.clientWidth - 40;
      if (place >= 0 && !shown) scroller.scrollLeft = x - scroller.clientWidth / 2;
    }
    askAfterPanel();
  });
  return () => {
    stop();
    resized.disconnect();
    cancelAnimationFrame(asked);
  };
}

import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { WorkStep } from '../../../core/work/round-at-hand.js';
import { theme } from '../../look/theme.js';
import { words } from '../../words.js';
import { drawWork, workView } from './draw-work.js';
import { marks, progress, tapped, work } from './work-store.js';

/** Whether the whole work is shown, however small. */
export const wholeWork = signal(false);

/** The work in hand; a tap picks a stitch out. */
export function WorkCanvas({ step, round }: { step: WorkStep | undefined; round: number }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const now = work.value!;
  const { worked, notes } = progress.value!;
  // A panel that is done is looked at as a whole.
  const whole = wholeWork.value || !step;
  const lit = tapped.value;
  useEffect(() => {
    const on = canvas.current!;
    const draw = () => {
      if (on.clientWidth === 0) return;
      const dots = Math.min(2, devicePixelRatio || 1);
      on.width = Math.round(on.clientWidth * dots);
      on.height = Math.round(on.clientHeight * dots);
      const style = getComputedStyle(on);
      const tone = (name: string) => style.getPropertyValue(name).trim();
      drawWork(on.getContext('2d')!, {
        ...{ pattern: now.pattern, marks: marks.peek(), worked, round, whole, lit, dots },
        from: step?.from ?? worked,
        to: step?.to ?? worked,
        noted: new Set(notes.map(({ stitch }) => stitch)),
        tones: { ink: tone('--ink'), ground: tone('--ground'), warn: tone('--madder') },
      });
    };
    draw();
    const resized = new ResizeObserver(draw);
    resized.observe(on);
    return () => resized.disconnect();
  }, [now.pattern, worked, notes, step?.to, round, whole, lit, theme.value]);
  return (
    <canvas
      ref={canvas}
      role="img"
      aria-label={words.value.work.inHand}
      onClick={(event) => {
        const { left, top } = event.currentTarget.getBoundingClientRect();
        const { clientWidth, clientHeight } = event.currentTarget;
        const view = workView(
          { pattern: now.pattern, worked, round, whole },
          clientWidth,
          clientHeight,
        );
        const s = view.stitchAt(event.clientX - left, event.clientY - top);
        tapped.value = s === tapped.peek() ? -1 : s;
      }}
    />
  );
}

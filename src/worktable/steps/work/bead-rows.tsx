import { useEffect, useRef } from 'preact/hooks';
import type { PatternBead } from '../../../core/beads/bead.js';
import { beadSprite } from '../../mat/bead-sprite.js';
import { theme } from '../../look/theme.js';

/** One bead of a row; pale once its hands' work is done. */
export interface RowBead {
  readonly bead: Pick<PatternBead, 'hex' | 'finish' | 'letter'> | undefined;
  readonly pale?: boolean | undefined;
  readonly ringed?: boolean | undefined;
}

/** Beads on a thread, ten a row, with a little room after five. */
export function BeadRows(props: {
  beads: readonly RowBead[];
  /** Largest bead, CSS pixels. */
  most: number;
  lettered?: boolean;
  /** Room across, CSS pixels; the width of what it lies in where it is smaller. */
  wide?: number;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { beads, most, lettered = false, wide = 720 } = props;
  useEffect(() => {
    const on = canvas.current!;
    const draw = () => drawRows(on, beads, { most, lettered, wide });
    draw();
    const resized = new ResizeObserver(draw);
    resized.observe(on.parentElement!);
    return () => resized.disconnect();
  }, [beads, most, lettered, wide, theme.value]);
  return <canvas class="bead-rows" ref={canvas} aria-hidden="true" />;
}

const inRow = 10;

function drawRows(
  canvas: HTMLCanvasElement,
  beads: readonly RowBead[],
  { most, lettered, wide }: { most: number; lettered: boolean; wide: number },
): void {
  const around = getComputedStyle(canvas.parentElement!);
  const inside = canvas.parentElement!.clientWidth - 2 * parseFloat(around.paddingLeft);
  const room = Math.min(wide, inside);
  // Not a number where the screen is gone already.
  if (!(room > 0) || beads.length === 0) return;
  const widest = Math.min(inRow, beads.length);
  const gap = 0.35;
  const size = Math.floor(Math.min(most, room / (widest + (widest > 5 ? gap : 0))));
  if (size < 1) return;
  const rows = Math.ceil(beads.length / inRow);
  const noteHeight = lettered ? Math.max(22, size * 0.55) : 0;
  const rowHeight = size + noteHeight + 4;
  const width = Math.ceil(size * (widest + (widest > 5 ? gap : 0)));
  const height = Math.ceil(rows * rowHeight);
  const dots = Math.min(3, devicePixelRatio || 1);
  canvas.width = width * dots;
  canvas.height = height * dots;
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  const pen = canvas.getContext('2d')!;
  pen.scale(dots, dots);
  const style = getComputedStyle(canvas);
  const tone = (name: string) => style.getPropertyValue(name).trim();
  for (let row = 0; row < rows; row++) {
    const own = beads.slice(row * inRow, (row + 1) * inRow);
    const y = row * rowHeight;
    pen.globalAlpha = 1;
    pen.fillStyle = tone('--strand');
    pen.fillRect(0, y + size / 2 - 1.5, width, 3);
    own.forEach(({ bead, pale, ringed }, n) => {
      const x = size * (n + (n >= 5 ? gap : 0));
      pen.globalAlpha = pale ? 0.28 : 1;
      if (bead) pen.drawImage(beadSprite(bead, Math.round(size * dots)), x, y, size, size);
      pen.globalAlpha = 1;
      if (ringed) {
        pen.strokeStyle = tone('--ink');
        pen.lineWidth = 3;
        pen.beginPath();
        pen.arc(x + size / 2, y + size / 2, size / 2 - 1, 0, 7);
        pen.stroke();
      }
      if (!lettered) return;
      pen.fillStyle = tone('--ink');
      pen.font = `700 ${Math.max(18, size * 0.46)}px ${style.fontFamily}`;
      pen.textAlign = 'center';
      pen.textBaseline = 'middle';
      pen.fillText(bead?.letter ?? '·', x + size / 2, y + size + noteHeight / 2 + 1);
    });
  }
}

import { useEffect, useRef } from 'preact/hooks';
import type { BeadLook } from '../../core/pages/worked/recolour-beads.js';
import { BeadGround } from './bead-sprite.js';
import { oneByOne } from './one-by-one.js';

const widthPx = 132;
const heightPx = 96;

/** A small heap of one bead on the mat: more beads make a larger heap. */
export function Heap({ hex, finish, count }: BeadLook & { count: number }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const many = Math.round(Math.min(46, 6 + 2.6 * Math.sqrt(count)));
  useEffect(() => {
    const draw = () => {
      // Its turn may come after it has left the table.
      const context = canvas.current?.getContext('2d');
      if (!context) return;
      context.clearRect(0, 0, 2 * widthPx, 2 * heightPx);
      context.drawImage(heapOf({ hex, finish }, many), 0, 0);
    };
    // The heap from before stays until the new one is there.
    if (!heaps.has(keyOf({ hex, finish }, many))) return oneByOne(draw);
    draw();
    return undefined;
  }, [hex, finish, many]);
  return (
    <canvas
      ref={canvas}
      class="heap"
      width={2 * widthPx}
      height={2 * heightPx}
      aria-hidden="true"
    />
  );
}

const heaps = new Map<string, HTMLCanvasElement>();

const keyOf = ({ hex, finish }: BeadLook, many: number) => `${hex} ${finish ?? ''} ${many}`;

function heapOf(look: BeadLook, many: number): HTMLCanvasElement {
  const key = keyOf(look, many);
  let heap = heaps.get(key);
  if (!heap) {
    if (heaps.size > 200) heaps.clear();
    heap = drawHeap(look, many);
    heaps.set(key, heap);
  }
  return heap;
}

/** Beads lie as they fell, the same way each time: a low cone, its lower beads first. */
function drawHeap(look: BeadLook, many: number): HTMLCanvasElement {
  const ground = new BeadGround(2 * widthPx, 2 * heightPx);
  const next = fallen(many * 7919 + 17);
  const half = 18;
  const spread = Math.min(1, 0.3 + 0.115 * Math.sqrt(many));
  const spots = Array.from({ length: many }, (_, n) => {
    // A sunflower's order keeps them from lying on one another too much (from memory).
    const out = Math.sqrt((n + 0.5) / many);
    const angle = n * 2.399963 + next() * 0.6;
    const way = next() * Math.PI;
    return {
      x: widthPx + Math.cos(angle) * out * spread * (widthPx - 2 * half),
      y:
        heightPx * 1.12 +
        Math.sin(angle) * out * spread * (heightPx * 0.72 - half) -
        (1 - out) * 30 * spread,
      halfAlong: half * (0.76 + 0.16 * next()),
      halfAcross: half,
      alongX: Math.cos(way),
      alongY: Math.sin(way),
      dimple: 0.6,
      high: 1 - out,
    };
  });
  spots.sort((a, b) => a.high - b.high || a.y - b.y);
  for (const spot of spots) {
    ground.shadow(spot);
    ground.bead(look, spot);
  }
  return ground.canvas();
}

/** Numbers from 0 to 1 that repeat (a linear congruence of Numerical Recipes). */
function fallen(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

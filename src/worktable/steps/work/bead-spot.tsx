import { useEffect, useRef } from 'preact/hooks';
import type { BeadLook } from '../../../core/pages/worked/recolour-beads.js';
import { beadSprite } from '../../mat/bead-sprite.js';

/** One bead with its light, beside its word. */
export function BeadSpot({ bead, sizePx }: { bead: BeadLook; sizePx: number }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const on = canvas.current!;
    const dots = Math.min(3, devicePixelRatio || 1);
    on.width = on.height = Math.round(sizePx * dots);
    on.style.width = on.style.height = `${sizePx}px`;
    on.getContext('2d')!.drawImage(beadSprite(bead, on.width), 0, 0);
  }, [bead.hex, bead.finish, sizePx]);
  return <canvas class="bead-spot" ref={canvas} aria-hidden="true" />;
}

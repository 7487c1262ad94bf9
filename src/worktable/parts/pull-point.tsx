import type { ComponentChildren, RefObject } from 'preact';

/** A point on a picture that is pulled with a finger or moved with the arrow keys; its place in shares of the picture. */
export function PullPoint(props: {
  name: string;
  at: readonly [number, number];
  /** The picture that it lies on. */
  over: RefObject<HTMLElement | null>;
  /** What kind of point it looks like. */
  look?: string;
  children?: ComponentChildren;
  pull: (x: number, y: number) => void;
}) {
  const { name, at, over, look = '', children, pull } = props;
  return (
    <button
      type="button"
      class={`corner ${look}`}
      aria-label={name}
      style={{ left: `${100 * at[0]}%`, top: `${100 * at[1]}%` }}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={(event) => {
        if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
        const box = over.current!.getBoundingClientRect();
        pull((event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height);
      }}
      onKeyDown={(event) => {
        const by = event.shiftKey ? 0.02 : 0.003;
        const steps: Record<string, [number, number]> = {
          ...{ ArrowLeft: [-by, 0], ArrowRight: [by, 0] },
          ...{ ArrowUp: [0, -by], ArrowDown: [0, by] },
        };
        const step = steps[event.key];
        if (!step) return;
        event.preventDefault();
        event.stopPropagation();
        pull(at[0] + step[0], at[1] + step[1]);
      }}
    >
      {children}
    </button>
  );
}

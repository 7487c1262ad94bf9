import { useId } from 'preact/hooks';
import type { Gesture } from '../store/history.js';
import type { Piece } from '../store/piece.js';
import { pieces } from '../store/store.js';

/** A number with a slider and a box to type it in. A pull of the slider is one step. */
export function NumberField(props: {
  name: string;
  unit: string;
  value: number;
  least: number;
  most: number;
  step: number;
  /** What the undo of it says. */
  done: string;
  put: (now: Piece, value: number) => Piece;
}) {
  const { name, unit, value, least, most, step, done, put } = props;
  const id = useId();
  const shown = Math.round(value / step) * step;
  const clamped = (wanted: number) => Math.min(most, Math.max(least, wanted));
  return (
    <div class="number">
      <label for={id}>{name}</label>
      <Slider {...{ name, value, least, most, step, done, put }} />
      <span class="typed">
        <input
          id={id}
          type="number"
          inputMode="decimal"
          min={least}
          max={most}
          step={step}
          value={Number(shown.toFixed(4))}
          onChange={(event) => {
            const wanted = event.currentTarget.valueAsNumber;
            if (Number.isFinite(wanted)) pieces.change(done, (now) => put(now, clamped(wanted)));
          }}
        />
        <span class="unit">{unit}</span>
      </span>
    </div>
  );
}

let pull: Gesture<Piece> | undefined;

function Slider(props: {
  name: string;
  value: number;
  least: number;
  most: number;
  step: number;
  done: string;
  put: (now: Piece, value: number) => Piece;
}) {
  const { name, value, least, most, step, done, put } = props;
  return (
    <input
      type="range"
      aria-label={name}
      min={least}
      max={most}
      step={step}
      value={value}
      onInput={(event) => {
        const wanted = event.currentTarget.valueAsNumber;
        pull ??= pieces.begin(done);
        pull.change((now) => put(now, wanted));
      }}
      onChange={() => {
        pull?.end();
        pull = undefined;
      }}
      // The finger came to scroll: whatever it touched on its way stays as it was.
      onPointerCancel={() => {
        pull?.drop();
        pull = undefined;
      }}
    />
  );
}

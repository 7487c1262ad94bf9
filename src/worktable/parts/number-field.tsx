import { useEffect, useId, useLayoutEffect, useRef } from 'preact/hooks';
import type { Gesture } from '../store/history.js';
import type { Piece } from '../store/piece.js';
import { pieces } from '../store/store.js';

interface NumberFieldProps {
  name: string;
  unit: string;
  value: number;
  least: number;
  most: number;
  step: number;
  /** What the undo of it says. */
  done: string;
  put: (now: Piece, value: number) => Piece;
}

/** A number with a slider and a box to type it in. A pull of the slider is one step, and so is a number that is typed. */
export function NumberField(props: NumberFieldProps) {
  const { name, unit, value, least, most, step, done, put } = props;
  const id = useId();
  return (
    <div class="number">
      <label for={id}>{name}</label>
      <Slider {...{ name, value, least, most, step, done, put }} />
      <span class="typed">
        <Typed id={id} {...props} />
        <span class="unit">{unit}</span>
      </span>
    </div>
  );
}

/** How long somebody rests who has typed a number. */
const restMs = 900;

/** The box: the table follows what is typed as far as it is a number that can be, and nothing is written over it meanwhile. */
function Typed(props: NumberFieldProps & { id: string }) {
  const { id, value, least, most, step, done, put } = props;
  const box = useRef<HTMLInputElement>(null);
  const typing = useRef<Gesture<Piece> | undefined>(undefined);
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const written = useRef(false);
  const shown = String(Number((Math.round(value / step) * step).toFixed(4)));
  const write = () => {
    if (box.current!.value !== shown) box.current!.value = shown;
  };
  useLayoutEffect(() => {
    if (!written.current) write();
  });
  const rest = () => {
    clearTimeout(resting.current);
    typing.current?.end();
    typing.current = undefined;
  };
  useEffect(() => rest, []);
  return (
    <input
      ref={box}
      id={id}
      type="number"
      inputMode="decimal"
      min={least}
      max={most}
      step={step}
      onInput={(event) => {
        written.current = true;
        const wanted = event.currentTarget.valueAsNumber;
        if (!(wanted >= least && wanted <= most)) return;
        typing.current ??= pieces.begin(done);
        typing.current.change((now) => put(now, wanted));
        clearTimeout(resting.current);
        resting.current = setTimeout(rest, restMs);
      }}
      onChange={(event) => {
        const wanted = event.currentTarget.valueAsNumber;
        const within = Math.min(most, Math.max(least, wanted));
        rest();
        written.current = false;
        if (within !== wanted && Number.isFinite(wanted)) {
          pieces.change(done, (now) => put(now, within));
        }
        write();
      }}
      onBlur={() => {
        rest();
        written.current = false;
        write();
      }}
    />
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

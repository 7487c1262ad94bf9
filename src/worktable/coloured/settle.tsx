import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { undecided } from '../../core/beads/bead.js';
import type { Bead } from '../../core/beads/bead.js';
import type { CellPatch } from '../../core/blank/cell-patch.js';
import { BeadSpot } from '../steps/work/bead-spot.js';
import { figure, words } from '../words.js';
import { answers, at, back, doubtful, sheet, settle } from './sheet.js';

/** One doubtful cell: the photo about it, and what it may be. */
export function Settle() {
  const say = words.value.coloured;
  const { beads, reader } = sheet.value!;
  const cell = doubtful.value[at.value];
  const { stitch, round, wedge, place, reason, read, likely } = cell;
  const choices = [...likely, undecided];
  const others = reader.read.found.filter((bead) => !likely.includes(bead));
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const choice = choices[Number(event.key) - 1];
      if (event.key === 'ArrowLeft') back();
      else if (choice !== undefined) settle(choice);
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [cell]);
  const answered = answers.value.get(stitch);
  const button = (bead: number, key?: number) => (
    <Choice
      key={bead}
      bead={bead === undecided ? undefined : beads[bead]}
      digit={key}
      read={bead === read}
      pressed={answered === undefined ? undefined : answered === bead}
      choose={() => settle(bead)}
    />
  );
  return (
    <div class="settle" data-stitch={stitch}>
      <Patch stitch={stitch} next={doubtful.value[at.value + 1]?.stitch} />
      <div class="ask">
        {reader.read.unlikely && <p class="said trouble">{say.many}</p>}
        <div aria-live="polite">
          <p class="place">
            {say.place({ round: figure(round), wedge: figure(wedge), place: figure(place) })}
          </p>
          <p>{say.reasons[reason]}</p>
        </div>
        <h3>{say.ask}</h3>
        <div class="choices">{choices.map((bead, n) => button(bead, n + 1))}</div>
        {others.length > 0 && (
          <details class="others">
            <summary>{say.other}</summary>
            <div class="choices">{others.map((bead) => button(bead))}</div>
          </details>
        )}
        <p class="small keys">{say.keysHow(figure(choices.length))}</p>
      </div>
    </div>
  );
}

function Choice(props: {
  bead: Bead | undefined;
  digit: number | undefined;
  read: boolean;
  pressed: boolean | undefined;
  choose: () => void;
}) {
  const say = words.value.coloured;
  const { bead, digit, read, pressed, choose } = props;
  return (
    <button
      type="button"
      class="button"
      data-choice={bead?.id ?? 'white'}
      aria-pressed={pressed}
      aria-keyshortcuts={digit?.toString()}
      onClick={choose}
    >
      {bead ? <BeadSpot bead={bead} sizePx={44} /> : <span class="spot none" />}
      <span class="name">
        {bead?.name ?? say.white}
        {read && <small>{say.asRead}</small>}
      </span>
      {digit !== undefined && <kbd>{digit}</kbd>}
    </button>
  );
}

/** The photo about a cell, the cell outlined; the next one is cut out meanwhile. */
function Patch({ stitch, next }: { stitch: number; next: number | undefined }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [shown, show] = useState<{ stitch: number; patch: CellPatch }>();
  useEffect(() => {
    let gone = false;
    const { reader } = sheet.peek()!;
    void reader.patch(stitch).then((patch) => gone || show({ stitch, patch }));
    if (next !== undefined) void reader.patch(next);
    return () => void (gone = true);
  }, [stitch]);
  // Before the frame that says whose it is.
  useLayoutEffect(() => {
    if (shown && canvas.current) drawPatch(canvas.current, shown.patch);
  }, [shown]);
  return (
    <canvas
      class="patch"
      ref={canvas}
      width={480}
      height={480}
      role="img"
      aria-label={words.value.coloured.patch}
      data-shown={shown?.stitch}
    />
  );
}

function drawPatch(canvas: HTMLCanvasElement, { picture, outline }: CellPatch): void {
  const { width, height, data } = picture;
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d')!;
  const pixels = new Uint8ClampedArray(data.buffer as ArrayBuffer, data.byteOffset, data.length);
  pen.putImageData(new ImageData(pixels, width), 0, 0);
  const line = new Path2D();
  for (let p = 0; p < outline.length; p += 2) line.lineTo(outline[p], outline[p + 1]);
  line.closePath();
  pen.lineJoin = 'round';
  // Light and dark: seen on every crayon.
  for (const [colour, wide] of [
    ['#ffffff', 9],
    ['#1b1b1b', 4],
  ] as const) {
    pen.strokeStyle = colour;
    pen.lineWidth = wide;
    pen.stroke(line);
  }
}

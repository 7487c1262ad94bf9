import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useFocusOver } from '../../actions/focus.js';
import { pictureCanvas } from '../../panel/picture-bitmap.js';
import { Icon } from '../../parts/icon.js';
import { PullPoint } from '../../parts/pull-point.js';
import { openPicture } from '../../picture-in/open-file.js';
import { isSaid } from '../../said.js';
import { piece, tellTrouble } from '../../store/store.js';
import { figure, words } from '../../words.js';
import type { SwatchPhoto, Place } from './pointed.js';

export const swatchPhoto = signal<SwatchPhoto | undefined>(undefined);

/** Opens a photo of a swatch with so many rounds; the lines lie in its middle at first. */
export async function openSwatchPhoto(file: File, rounds: number): Promise<void> {
  try {
    const [{ picture }, { firstLines }] = await Promise.all([
      openPicture(file),
      import('./swatch-lines.js'),
    ]);
    const beads = firstLines(piece.peek(), rounds, picture);
    swatchPhoto.value = { name: file.name, picture, rounds, centre: [0.5, 0.5], beads };
  } catch (error) {
    tellTrouble(isSaid(error) ? error : words.peek().errors.pictureNotRead(file.name));
  }
}

const put = (part: Partial<SwatchPhoto>) =>
  (swatchPhoto.value = { ...swatchPhoto.peek()!, ...part });

const inside = (x: number, y: number): Place => [
  Math.min(1, Math.max(0, x)),
  Math.min(1, Math.max(0, y)),
];

/** The photo with its lines; `take` works the stitch out from them. */
export function SwatchLines({ take }: { take: () => void }) {
  const photo = swatchPhoto.value;
  return photo ? <Lines photo={photo} take={take} /> : null;
}

function Lines({ photo, take }: { photo: SwatchPhoto; take: () => void }) {
  const say = words.value.panel.photo;
  const canvas = useRef<HTMLCanvasElement>(null);
  const box = useRef<HTMLElement>(null);
  useFocusOver(box, '[data-form="photo"]');
  useEffect(() => drawLines(canvas.current!, photo), [photo]);
  const { picture, centre, beads, ruler } = photo;
  const widthPx = 720;
  const heightPx = Math.round((widthPx * picture.height) / picture.width);
  return (
    <aside
      class="one-sheet lines"
      ref={box}
      tabIndex={-1}
      aria-label={words.value.actions['photo-swatch']}
      onKeyDown={(event) => {
        if (event.key === 'Escape') swatchPhoto.value = undefined;
        event.stopPropagation();
      }}
    >
      <p>{say.how}</p>
      <div class="jar-photo">
        <canvas ref={canvas} width={widthPx} height={heightPx} role="img" aria-label={photo.name} />
        {beads.map((bead, n) => (
          <PullPoint
            key={`${bead.round} ${bead.wedge}`}
            name={say.first({ wedge: figure(bead.wedge), round: figure(bead.round) })}
            at={bead.at}
            over={canvas}
            look={bead.pulled ? 'bead' : 'bead loose'}
            pull={(x, y) => pullBead(n, inside(x, y))}
          >
            {bead.round === photo.rounds ? bead.wedge : ''}
          </PullPoint>
        ))}
        <PullPoint
          name={say.centre}
          at={centre}
          over={canvas}
          look="middle"
          pull={(x, y) => pullCentre(inside(x, y))}
        />
        {ruler?.ends.map((end, n) => (
          <PullPoint
            key={`ruler ${n}`}
            name={say.rulerEnd}
            at={end}
            over={canvas}
            look="ruler"
            pull={(x, y) => {
              const ends = ruler.ends.map((one, m) => (m === n ? inside(x, y) : one));
              put({ ruler: { ...ruler, ends: ends as [Place, Place] } });
            }}
          />
        ))}
      </div>
      <label class="tick">
        <input
          type="checkbox"
          checked={ruler !== undefined}
          onChange={(event) => {
            const ends = [
              [0.2, 0.95],
              [0.8, 0.95],
            ] as const;
            put({ ruler: event.currentTarget.checked ? { ends, mm: 50 } : undefined });
          }}
        />
        <span>{say.ruler}</span>
      </label>
      {ruler && (
        <label class="in-jar">
          <span>{say.rulerMm}</span>
          <input
            type="number"
            min="1"
            max="500"
            value={ruler.mm}
            onChange={(event) => {
              const typed = event.currentTarget.valueAsNumber;
              if (typed > 0) put({ ruler: { ...ruler, mm: typed } });
            }}
          />
        </label>
      )}
      <div class="row">
        <button type="button" class="button main" data-form="take-photo" onClick={take}>
          <Icon name="straighten" />
          <span>{say.take}</span>
        </button>
        <button type="button" class="button" onClick={() => (swatchPhoto.value = undefined)}>
          <Icon name="close" />
          <span>{words.value.table.close}</span>
        </button>
      </div>
    </aside>
  );
}

/** The middle takes along what was not pulled to its own place yet. */
function pullCentre(to: Place): void {
  const { centre, beads } = swatchPhoto.peek()!;
  const by = [to[0] - centre[0], to[1] - centre[1]];
  const moved = beads.map((one) =>
    one.pulled ? one : { ...one, at: inside(one.at[0] + by[0], one.at[1] + by[1]) },
  );
  put({ centre: to, beads: moved });
}

/** The first point turns and sizes all others that were not pulled yet; each later one goes alone. */
function pullBead(n: number, to: Place): void {
  const { picture, centre, beads } = swatchPhoto.peek()!;
  const tall = picture.height / picture.width;
  const from = (at: Place) => [at[0] - centre[0], (at[1] - centre[1]) * tall] as const;
  const [x1, y1] = from(beads[n].at);
  const [x2, y2] = from(to);
  const size2 = x1 * x1 + y1 * y1;
  const lone = size2 === 0 || beads.some((one, m) => m !== n && one.pulled);
  // A turn and a size at once: the ratio of both as complex numbers.
  const [re, im] = lone ? [1, 0] : [(x1 * x2 + y1 * y2) / size2, (x1 * y2 - y1 * x2) / size2];
  const moved = beads.map((one, m) => {
    if (m === n) return { ...one, at: to, pulled: true };
    if (one.pulled) return one;
    const [x, y] = from(one.at);
    const at = inside(centre[0] + re * x - im * y, centre[1] + (im * x + re * y) / tall);
    return { ...one, at };
  });
  put({ beads: moved });
}

function drawLines(canvas: HTMLCanvasElement, photo: SwatchPhoto): void {
  const pen = canvas.getContext('2d')!;
  const { width, height } = canvas;
  pen.drawImage(pictureCanvas(photo.picture), 0, 0, width, height);
  const lines = new Path2D();
  const px = ([x, y]: Place) => [x * width, y * height] as const;
  const wedges = Math.max(...photo.beads.map(({ wedge }) => wedge));
  for (let k = 1; k <= wedges; k++) {
    const own = photo.beads.filter(({ wedge }) => wedge === k).sort((a, b) => a.round - b.round);
    lines.moveTo(...px(photo.centre));
    for (const { at } of own) lines.lineTo(...px(at));
  }
  const [from, to] = photo.ruler?.ends ?? [];
  if (from && to) {
    lines.moveTo(...px(from));
    lines.lineTo(...px(to));
  }
  pen.lineJoin = 'round';
  pen.strokeStyle = '#ffffff';
  pen.lineWidth = 5;
  pen.stroke(lines);
  pen.strokeStyle = '#98402a';
  pen.lineWidth = 2.5;
  pen.stroke(lines);
}

import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { readPalette } from '../../../core/beads/palette/read-palette.js';
import type { Picture } from '../../../core/picture/picture.js';
import { Icon } from '../../parts/icon.js';
import { PullPoint } from '../../parts/pull-point.js';
import { openPicture } from '../../picture-in/open-file.js';
import { pictureCanvas } from '../../panel/picture-bitmap.js';
import { tell, tellTrouble } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { keepPalette, layPalette } from './palettes.js';

/** A photo of heaps, and the grid over it: its corners as shares of width and height. */
interface JarPhoto {
  readonly name: string;
  readonly picture: Picture;
  readonly rows: number;
  readonly columns: number;
  readonly start: readonly [number, number];
  readonly end: readonly [number, number];
}

export const jarPhoto = signal<JarPhoto | undefined>(undefined);

/** Opens a photo of heaps of beads; the grid lies over all of it at first. */
export async function openJarPhoto(file: File): Promise<void> {
  try {
    const { picture } = await openPicture(file);
    const grid = { rows: 3, columns: 4, start: [0.02, 0.02], end: [0.98, 0.98] } as const;
    jarPhoto.value = { name: file.name, picture, ...grid };
  } catch (error) {
    tellTrouble(error);
  }
}

async function take({ name, picture, rows, columns, start, end }: JarPhoto): Promise<void> {
  try {
    const [{ jarsCsv, readJars }, { en }] = await Promise.all([
      import('../../../core/beads/palette/photo/read-jars.js'),
      import('../../../words/index.js'),
    ]);
    const { jars } = readJars(cropped(picture, start, end), { rows, columns }, name);
    const { beads, diameterMm } = readPalette(jarsCsv(jars, en), name);
    const palette = { name: name.replace(/\.[^.]+$/, '.csv'), beads, diameterMm };
    layPalette(palette);
    void keepPalette(palette);
    jarPhoto.value = undefined;
    tell(words.peek().beads.read({ name, n: figure(beads.length) }));
  } catch (error) {
    tellTrouble(error);
  }
}

function cropped(
  { width, height, data }: Picture,
  start: JarPhoto['start'],
  end: JarPhoto['end'],
): Picture {
  const left = Math.round(start[0] * width);
  const top = Math.round(start[1] * height);
  const wide = Math.max(1, Math.round(end[0] * width) - left);
  const high = Math.max(1, Math.round(end[1] * height) - top);
  const out = new Uint8ClampedArray(4 * wide * high);
  for (let y = 0; y < high; y++) {
    const from = 4 * ((top + y) * width + left);
    out.set(data.subarray(from, from + 4 * wide), 4 * y * wide);
  }
  return { width: wide, height: high, data: out };
}

/** The photo with the grid that is pulled over it. */
export function Jars() {
  const say = words.value.beads;
  const photo = jarPhoto.value;
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (photo && canvas.current) drawGrid(canvas.current, photo);
  }, [photo]);
  if (!photo) return null;
  const { picture } = photo;
  const widthPx = 680;
  const heightPx = Math.round((widthPx * picture.height) / picture.width);
  const put = (part: Partial<JarPhoto>) => (jarPhoto.value = { ...photo, ...part });
  return (
    <div class="jars">
      <p>{say.jarsPull}</p>
      <div class="jar-photo">
        <canvas ref={canvas} width={widthPx} height={heightPx} role="img" aria-label={say.jars} />
        {(['start', 'end'] as const).map((corner) => (
          <PullPoint
            key={corner}
            name={say.corner[corner]}
            at={photo[corner]}
            over={canvas}
            pull={(x, y) => put({ [corner]: within(photo, corner, x, y) })}
          />
        ))}
      </div>
      <div class="row">
        {(['rows', 'columns'] as const).map((side) => (
          <label key={side} class="in-jar">
            <span>{say[side]}</span>
            <input
              type="number"
              min="1"
              max="60"
              value={photo[side]}
              onChange={(event) => {
                const typed = event.currentTarget.valueAsNumber;
                if (typed >= 1 && typed <= 60) put({ [side]: Math.round(typed) });
              }}
            />
          </label>
        ))}
        <button type="button" class="button main" onClick={() => void take(photo)}>
          <Icon name="beads" />
          <span>{say.jarsTake}</span>
        </button>
      </div>
    </div>
  );
}

/** A corner stays in the photo and on its own side of the other. */
function within(
  { start, end }: JarPhoto,
  corner: 'start' | 'end',
  x: number,
  y: number,
): [number, number] {
  const least = corner === 'start' ? [0, 0] : [start[0] + 0.05, start[1] + 0.05];
  const most = corner === 'start' ? [end[0] - 0.05, end[1] - 0.05] : [1, 1];
  return [Math.min(most[0], Math.max(least[0], x)), Math.min(most[1], Math.max(least[1], y))];
}

function drawGrid(canvas: HTMLCanvasElement, photo: JarPhoto): void {
  const pen = canvas.getContext('2d')!;
  const { width, height } = canvas;
  pen.drawImage(pictureCanvas(photo.picture), 0, 0, width, height);
  const [left, top] = [photo.start[0] * width, photo.start[1] * height];
  const [right, bottom] = [photo.end[0] * width, photo.end[1] * height];
  pen.fillStyle = 'rgb(40 40 40 / 0.45)';
  pen.fillRect(0, 0, width, top);
  pen.fillRect(0, bottom, width, height - bottom);
  pen.fillRect(0, top, left, bottom - top);
  pen.fillRect(right, top, width - right, bottom - top);
  const lines = new Path2D();
  for (let c = 0; c <= photo.columns; c++) {
    const x = left + ((right - left) * c) / photo.columns;
    lines.moveTo(x, top);
    lines.lineTo(x, bottom);
  }
  for (let r = 0; r <= photo.rows; r++) {
    const y = top + ((bottom - top) * r) / photo.rows;
    lines.moveTo(left, y);
    lines.lineTo(right, y);
  }
  pen.strokeStyle = '#ffffff';
  pen.lineWidth = 4;
  pen.stroke(lines);
  pen.strokeStyle = '#98402a';
  pen.lineWidth = 2;
  pen.stroke(lines);
}

import type { Command } from 'commander';
import type { Bead } from '../../core/beads/bead.js';
import { namedColour } from '../../core/beads/palette/colour-cell.js';
import { parseHex, formatHex } from '../../core/colour/hex.js';
import { RondureError } from '../../core/errors.js';
import type { Mask } from '../../core/picture/importance/mask.js';
import type { BackWish, PanelWish } from '../../core/make.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import type { Picture } from '../../core/picture/picture.js';
import type { ShapeWish } from '../../core/panel/shape.js';
import { beadNamed, indexNamed, nearBead } from './bead-named.js';
import type { ChartOptions } from './chart-options.js';
import { shapeWish } from './shape-options.js';

/** Turns options, picture and palette into what the core makes a pattern from. */
export function panelWish(
  command: Command,
  inputs: {
    picture: Picture;
    pictureName: string;
    title: string;
    beads: readonly Bead[];
    diameterMm: number;
    frame?: Frame | undefined;
    mask?: Mask;
    subject?: 'plain' | Mask | undefined;
    back?: BackWish | undefined;
  },
): PanelWish {
  const options = command.opts<ChartOptions>();
  const { beads } = inputs;
  const given = (key: string) => command.getOptionValueSource(key) !== 'default';
  const shape = shapeWish(options, inputs.diameterMm);
  const indices = (option: string, names: readonly string[] = []) =>
    names.map((name) => beadNamed(beads, option, name));
  const keep = indices('--keep', options.keep);
  const leaveOut = indices('--leave-out', options.leaveOut);
  const background = backgroundOf(beads, options.background);
  const { back } = inputs;
  const plain = typeof back === 'object' && 'plain' in back ? [back.plain] : [];
  const kept = [...keep, ...(typeof background === 'number' ? [background] : []), ...plain];
  for (const index of kept) {
    if (leaveOut.includes(index)) {
      throw new RondureError('bead-kept-and-left-out', { id: beads[index].id });
    }
  }
  const [shiftXmm, shiftYmm] = options.shift;
  return {
    picture: inputs.picture,
    pictureName: inputs.pictureName,
    title: options.title ?? inputs.title,
    beads,
    colours: options.colors ?? options.colours,
    shape: inputs.frame && !given('rounds') ? withoutRounds(shape) : shape,
    ...(inputs.frame && { frame: inputs.frame }),
    ...(options.across !== undefined && { acrossMm: options.across }),
    ...(options.start !== undefined && { startDegrees: options.start }),
    place: {
      place: options.place ?? (options.repeat ? 'inside' : 'subject'),
      zoom: options.zoom,
      shiftXmm,
      shiftYmm,
      rotateDegrees: options.rotate,
      mirror: options.mirror ?? false,
      repeat: options.repeat ?? false,
    },
    ...backPlaceOf(options),
    art: options.art,
    ...(options.paper && { paper: true }),
    darkCover: options.ink / 100,
    detail: options.detail,
    edges: options.edges,
    lift: options.lift,
    ...(inputs.mask && { mask: inputs.mask }),
    ...(inputs.subject && { subject: inputs.subject }),
    ...(back !== undefined && { back }),
    background,
    keep,
    leaveOut,
    proof: options.proof,
    ...(options.useStock && { useStock: true }),
    ...(options.dither === undefined ? { tidy: options.tidy } : { dither: options.dither }),
  };
}

/** How the back's picture lies: as the front's, but for what is said of it. */
function backPlaceOf(options: ChartOptions): Pick<PanelWish, 'backPlace'> {
  const { backPlace, backZoom, backShift, backRotate, backMirror } = options;
  const own = [backPlace, backZoom, backShift, backRotate, backMirror];
  if (own.every((one) => one === undefined)) return {};
  const [shiftXmm, shiftYmm] = backShift ?? options.shift;
  const repeat = options.repeat ?? false;
  return {
    backPlace: {
      place: backPlace ?? options.place ?? (repeat ? 'inside' : 'subject'),
      zoom: backZoom ?? options.zoom,
      shiftXmm,
      shiftYmm,
      rotateDegrees: backRotate ?? options.rotate,
      mirror: backMirror === undefined ? (options.mirror ?? false) : backMirror === 'yes',
      repeat,
    },
  };
}

/** A frame says how many rounds there are, where the maker does not. */
function withoutRounds({ rounds: _default, ...shape }: ShapeWish): Omit<ShapeWish, 'rounds'> {
  return shape;
}

/** Six hexadecimal digits are a colour, `bare` and `auto` are themselves; else a bead of the palette comes first, also one called `fff`. */
function backgroundOf(beads: readonly Bead[], text: string): string | number {
  if (['bare', 'auto'].includes(text.toLowerCase())) return text.toLowerCase();
  const index = indexNamed(beads, text);
  if (index >= 0 && !/^#?[0-9a-f]{6}$/i.test(text)) return index;
  const rgb = parseHex(text);
  if (rgb) return formatHex(...rgb);
  if (index >= 0) return index;
  const named = namedColour(text);
  if (named) return formatHex(...named);
  throw new RondureError('option-value', {
    option: '--background',
    got: text,
    expected: { kind: 'background' },
    ...nearBead(beads, text),
  });
}

/** A file's name without folder and ending, as a title. */
export function titleFrom(pictureName: string): string {
  const base = pictureName.replace(/\.[^.]{1,5}$/, '').replace(/[\u0000-\u001f\u007f]/g, ' '); // eslint-disable-line no-control-regex
  return base.trim().slice(0, 200);
}

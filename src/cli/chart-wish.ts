import type { Command } from 'commander';
import type { Bead } from '../core/bead.js';
import { parseHex, formatHex } from '../core/colour/hex.js';
import { RondureError } from '../core/errors.js';
import type { Mask } from '../core/importance/mask.js';
import type { BackWish, PanelWish } from '../core/make.js';
import type { Frame } from '../core/pattern/schema.js';
import type { Picture } from '../core/picture.js';
import type { ShapeWish } from '../core/shape.js';
import { en } from '../words/index.js';
import type { Words } from '../words/index.js';
import { backFile } from './back-option.js';
import type { ChartOptions } from './chart-options.js';
import { refuseFrameContradictions } from './frame-options.js';
import { refuseInputTwice, refuseOutputContradictions } from './output-options.js';
import { refuseShapeContradictions, shapeWish } from './shape-options.js';
import { similarTo } from './similar.js';

/** Refuses options that say two things about one question, before any work is done. */
export function refuseContradictions(command: Command, picture: string, words: Words): void {
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
  const options = command.opts<ChartOptions>();
  const { spelling, paper, ditherStock, tidy, ink } = en.expected.contradictions;
  const { art, dither, useStock } = options;
  const photo = art === 'photo';
  refuseBoth(given('colours') && given('colors'), '--colours', '--colors', spelling);
  refuseBoth(options.paper && photo, '--paper', '--art photo', paper);
  refuseBoth(dither !== undefined && useStock, '--dither', '--use-stock', ditherStock);
  refuseBoth(given('tidy') && given('dither'), '--tidy', '--dither', tidy);
  refuseBoth(given('ink') && options.paper, '--ink', '--paper', ink);
  refuseBoth(given('ink') && photo, '--ink', '--art photo', ink);
  refuseInputTwice('PICTURE', picture, options.beads);
  refuseInputTwice('PICTURE', picture, options.mask, '--mask');
  refuseInputTwice('--mask', options.mask ?? '', options.beads);
  const back = backFile(options.back);
  refuseInputTwice('PICTURE', picture, back, '--back');
  refuseInputTwice('--mask', options.mask ?? '', back, '--back');
  refuseInputTwice('--back', back ?? '', options.beads);
  refuseFrameContradictions(options, picture, words);
  refuseShapeContradictions(command);
  refuseOutputContradictions(options, words);
}

function refuseBoth(are: boolean | undefined, first: string, second: string, why: string): void {
  if (are) throw new RondureError('options-contradict', { first, second, why });
}

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
    back?: BackWish | undefined;
  },
): PanelWish {
  const options = command.opts<ChartOptions>();
  const { beads } = inputs;
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
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
      place: options.place ?? (options.repeat ? 'inside' : 'fill'),
      zoom: options.zoom,
      shiftXmm,
      shiftYmm,
      rotateDegrees: options.rotate,
      mirror: options.mirror ?? false,
      repeat: options.repeat ?? false,
    },
    art: options.art,
    ...(options.paper && { paper: true }),
    darkCover: options.ink / 100,
    detail: options.detail,
    ...(inputs.mask && { mask: inputs.mask }),
    ...(back !== undefined && { back }),
    background,
    keep,
    leaveOut,
    proof: options.proof,
    ...(options.useStock && { useStock: true }),
    ...(options.dither === undefined ? { tidy: options.tidy } : { dither: options.dither }),
  };
}

/** A frame says how many rounds there are, where the maker does not. */
function withoutRounds({ rounds: _default, ...shape }: ShapeWish): Omit<ShapeWish, 'rounds'> {
  return shape;
}

/**
 * Palette index of a bead by its id or name, whatever the case.
 * @throws RondureError `bead-unknown`
 */
export function beadNamed(beads: readonly Bead[], option: string, name: string): number {
  const index = indexNamed(beads, name);
  if (index >= 0) return index;
  throw new RondureError('bead-unknown', { option, got: name, ...nearBead(beads, name) });
}

/** Palette index of a bead by its id, else by its name; -1 where there is none. */
function indexNamed(beads: readonly Bead[], name: string): number {
  const wanted = name.toLowerCase();
  const byId = beads.findIndex((bead) => bead.id.toLowerCase() === wanted);
  return byId >= 0 ? byId : beads.findIndex((bead) => bead.name.toLowerCase() === wanted);
}

/** The id or the name that was probably meant, as a fact of an error; ids come first. */
function nearBead(beads: readonly Bead[], got: string): { near?: string } {
  const near = similarTo(got, [...beads.map(({ id }) => id), ...beads.map(({ name }) => name)]);
  return near === undefined ? {} : { near };
}

/** Six hexadecimal digits are a colour; else a bead of the palette comes first, also one called `fff`. */
function backgroundOf(beads: readonly Bead[], text: string): string | number {
  if (text.toLowerCase() === 'bare') return 'bare';
  const index = indexNamed(beads, text);
  if (index >= 0 && !/^#?[0-9a-f]{6}$/i.test(text)) return index;
  const rgb = parseHex(text);
  if (rgb) return formatHex(...rgb);
  if (index >= 0) return index;
  throw new RondureError('option-value', {
    option: '--background',
    got: text,
    expected: en.expected.background,
    ...nearBead(beads, text),
  });
}

/** A file's name without folder and ending, as a title. */
export function titleFrom(pictureName: string): string {
  const base = pictureName.replace(/\.[^.]{1,5}$/, '').replace(/[\u0000-\u001f\u007f]/g, ' '); // eslint-disable-line no-control-regex
  return base.trim().slice(0, 200);
}

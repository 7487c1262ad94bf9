import type { Command } from 'commander';
import type { Bead } from '../core/bead.js';
import { parseHex, formatHex } from '../core/colour/hex.js';
import { RondureError } from '../core/errors.js';
import type { Mask } from '../core/importance/mask.js';
import type { PanelWish } from '../core/make.js';
import type { Picture } from '../core/picture.js';
import { en } from '../words/index.js';
import type { Words } from '../words/index.js';
import type { ChartOptions } from './chart-options.js';
import { refuseInputTwice, refuseOutputContradictions } from './output-options.js';
import { refuseShapeContradictions, shapeWish } from './shape-options.js';
import { similarTo } from './similar.js';

/** Refuses options that say two things about one question, before any work is done. */
export function refuseContradictions(command: Command, picture: string, words: Words): void {
  const given = (key: string) => command.getOptionValueSource(key) === 'cli';
  const options = command.opts<ChartOptions>();
  if (given('colours') && given('colors')) {
    throw new RondureError('options-contradict', {
      first: '--colours',
      second: '--colors',
      why: en.expected.contradictions.spelling,
    });
  }
  if (options.paper && options.art === 'photo') {
    throw new RondureError('options-contradict', {
      first: '--paper',
      second: '--art photo',
      why: en.expected.contradictions.paper,
    });
  }
  if (options.dither !== undefined && options.useStock) {
    throw new RondureError('options-contradict', {
      first: '--dither',
      second: '--use-stock',
      why: en.expected.contradictions.ditherStock,
    });
  }
  if (given('tidy') && given('dither')) {
    throw new RondureError('options-contradict', {
      first: '--tidy',
      second: '--dither',
      why: en.expected.contradictions.tidy,
    });
  }
  if (given('ink') && (options.paper || options.art === 'photo')) {
    throw new RondureError('options-contradict', {
      first: '--ink',
      second: options.paper ? '--paper' : '--art photo',
      why: en.expected.contradictions.ink,
    });
  }
  refuseInputTwice('PICTURE', picture, options.beads);
  refuseInputTwice('PICTURE', picture, options.mask, '--mask');
  refuseInputTwice('--mask', options.mask ?? '', options.beads);
  refuseShapeContradictions(command);
  refuseOutputContradictions(options, words);
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
    mask?: Mask;
  },
): PanelWish {
  const options = command.opts<ChartOptions>();
  const { beads } = inputs;
  const indices = (option: string, names: readonly string[] = []) =>
    names.map((name) => beadNamed(beads, option, name));
  const keep = indices('--keep', options.keep);
  const leaveOut = indices('--leave-out', options.leaveOut);
  const background = backgroundOf(beads, options.background);
  const kept = typeof background === 'number' ? [...keep, background] : keep;
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
    shape: shapeWish(options, inputs.diameterMm),
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
    background,
    keep,
    leaveOut,
    proof: options.proof,
    ...(options.useStock && { useStock: true }),
    ...(options.dither === undefined ? { tidy: options.tidy } : { dither: options.dither }),
  };
}

export function beadNamed(beads: readonly Bead[], option: string, name: string): number {
  const wanted = name.toLowerCase();
  const byId = beads.findIndex((bead) => bead.id.toLowerCase() === wanted);
  const index = byId >= 0 ? byId : beads.findIndex((bead) => bead.name.toLowerCase() === wanted);
  if (index >= 0) return index;
  throw new RondureError('bead-unknown', { option, got: name, ...nearBead(beads, name) });
}

/** The id or the name that was probably meant, as a fact of an error; ids come first. */
function nearBead(beads: readonly Bead[], got: string): { near?: string } {
  const near = similarTo(got, [...beads.map(({ id }) => id), ...beads.map(({ name }) => name)]);
  return near === undefined ? {} : { near };
}

/** A bead of the palette comes first, so that a bead whose id looks like a colour is itself. */
function backgroundOf(beads: readonly Bead[], text: string): string | number {
  if (text.toLowerCase() === 'bare') return 'bare';
  const wanted = text.toLowerCase();
  const index = beads.findIndex(
    (bead) => bead.id.toLowerCase() === wanted || bead.name.toLowerCase() === wanted,
  );
  if (index >= 0 && !/^#?[0-9a-f]{6}$/.test(wanted)) return index;
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

import { whenSaid } from '../fault.js';
import { signal } from '@preact/signals';
import { RondureError } from '../../core/errors.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { decodePicture } from '../picture-in/decode.js';
import { patternIn } from '../picture-in/pattern-in.js';
import { isSaid } from '../said.js';
import { piece } from '../store/store.js';
import { words } from '../words.js';
import { blankOf } from './blank-of.js';
import { keptSheet, saidAgain } from './kept-sheet.js';
import type { HalfRead } from './kept-sheet.js';
import { printedBlanks, sameBlank } from './printed.js';
import { readPhoto } from './reader.js';
import { begin } from './sheet.js';

/** The blanks that a photo may be of. */
export const blanks = signal<readonly Pattern[]>([]);
/** Which of them it is. */
export const chosenBlank = signal(0);
/** Colours that were coloured with, at most. */
export const mostColours = signal(8);
/** What was being settled when the page was left. */
export const halfRead = signal<HalfRead | undefined>(undefined);
export const reading = signal<AbortController | undefined>(undefined);
/** One sentence: what went wrong, or what is wanted. */
export const sentence = signal<{ text: string; kind: 'note' | 'trouble' } | undefined>(undefined);

let found: Promise<void> | undefined;

/** Looks up which blanks there are; the one of the piece on the table is chosen where it was printed. */
export function findBlanks(): void {
  found = lookUp();
}

async function lookUp(): Promise<void> {
  halfRead.value = await keptSheet();
  const own = blankOf(piece.peek());
  const printed = await printedBlanks();
  const there = printed.findIndex((one) => one.title === own.title && sameBlank(one, own));
  blanks.value = there === -1 ? [...printed, own] : printed;
  chosenBlank.value = Math.max(0, there);
}

/** A blank that was opened from a file: it is the one. */
function takeBlank(blank: Pattern): void {
  const others = blanks.peek().filter((one) => one.title !== blank.title || !sameBlank(one, blank));
  blanks.value = [blank, ...others];
  chosenBlank.value = 0;
}

/** Opens a file: a blank of ours is chosen, anything else is read as the photo of a coloured one. */
export async function takeFile(file: File): Promise<void> {
  sentence.value = undefined;
  try {
    await found;
    const bytes = new Uint8Array(await file.arrayBuffer());
    // A blank that was coloured on the screen still says which one it is.
    const carried = patternIn(bytes, file.name);
    if (carried) takeBlank(carried);
    const say = words.peek().coloured;
    if (carried && /\.json$/i.test(file.name)) {
      sentence.value = { text: say.blankTaken, kind: 'note' };
      return;
    }
    await read(file, carried !== undefined);
  } catch (error) {
    trouble(error, file.name);
  }
}

/** Goes on with what was being settled. */
export async function goOn(half: HalfRead): Promise<void> {
  sentence.value = undefined;
  mostColours.value = half.colours;
  takeBlank(half.blank);
  try {
    await read(half.photo, false, half);
  } catch (error) {
    trouble(error, half.photo.name);
  }
}

async function read(photo: File, isBlank: boolean, half?: HalfRead): Promise<void> {
  reading.peek()?.abort();
  const own = new AbortController();
  reading.value = own;
  try {
    const { beads } = piece.peek().palette;
    const bytes = new Uint8Array(await photo.arrayBuffer());
    const picture = await decodePicture(bytes, photo.name);
    own.signal.throwIfAborted();
    const colours = mostColours.peek();
    const chosen = blanks.peek()[chosenBlank.peek()];
    // What was said before was said of one chart.
    const others = half ? [] : blanks.peek().filter((one) => one !== chosen);
    const may = [chosen, ...others];
    const ask = { picture, name: photo.name, blanks: may, beads, colours };
    const reader = await readPhoto(ask, own.signal);
    const blank = may[reader.read.blank];
    begin({ photo, blank, colours, beads, reader }, half && saidAgain(half.said, beads));
    halfRead.value = undefined;
  } catch (error) {
    if (own.signal.aborted) return;
    const empty = error instanceof RondureError && error.code === 'blank-not-coloured';
    if (!isBlank || !empty) throw error;
    sentence.value = { text: words.peek().coloured.blankTaken, kind: 'note' };
  } finally {
    if (reading.peek() === own) reading.value = undefined;
  }
}

function trouble(error: unknown, name: string): void {
  const { coloured: say, errors } = words.peek();
  const code = error instanceof RondureError ? error.code : undefined;
  const own = { 'corner-marks-not-found': say.noCorners, 'blank-not-coloured': say.notColoured };
  if (!isSaid(error)) console.error(error);
  const said = (text: string) => void (sentence.value = { text, kind: 'trouble' });
  const text =
    own[code as keyof typeof own] ?? (isSaid(error) ? undefined : errors.pictureNotRead(name));
  if (text !== undefined) said(text);
  else whenSaid(error, said);
}

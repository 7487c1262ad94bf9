import '../jitless.js';
import { parsePattern } from '../../core/pattern/read/parse.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { patternText } from '../../core/pattern/serialise.js';
import { undecided } from '../../core/beads/bead.js';
import type { Bead } from '../../core/beads/bead.js';
import { database } from '../keep/database.js';
import { halfReadPhoto } from '../keep/state.js';
import type { Sheet } from './reader.js';

// What was said of half a page outlives a reload: the photo, its blank, and the answers so far.

const note = 'coloured chart';
/** Instead of a bead's id: the cell is white. */
const whiteMark = '';

/** A page that was being settled. */
export interface HalfRead {
  readonly photo: File;
  readonly blank: Pattern;
  readonly colours: number;
  /** Id of a bead by stitch, or nothing for white. */
  readonly said: Readonly<Record<string, string>>;
  /** How many cells were doubtful. */
  readonly of: number;
}

let storedPhoto: File | undefined;

/** One after the other: what is forgotten is not written again by what came before it. */
let writing: Promise<void> = Promise.resolve();

function write(work: () => Promise<void>): Promise<void> {
  // A browser that keeps nothing says so itself.
  writing = writing.then(work).catch(() => {});
  return writing;
}

/** Keeps it as it stands. */
export function keepSheet(
  { photo, blank, colours, beads, reader }: Sheet,
  answers: ReadonlyMap<number, number>,
): Promise<void> {
  return write(async () => {
    const db = await database();
    if (storedPhoto !== photo) {
      await db.put('pictures', { name: photo.name, file: photo }, halfReadPhoto);
      storedPhoto = photo;
    }
    const said = Object.fromEntries(
      [...answers].map(([stitch, bead]) => [
        stitch,
        bead === undecided ? whiteMark : beads[bead].id,
      ]),
    );
    const of = reader.read.doubtful.length;
    const kept = { blank: patternText(blank), colours, said, of };
    await db.put('notes', JSON.stringify(kept), note);
  });
}

/** What is kept; undefined where that is nothing. */
export async function keptSheet(): Promise<HalfRead | undefined> {
  try {
    await writing;
    const db = await database();
    const [text, photo] = await Promise.all([
      db.get('notes', note),
      db.get('pictures', halfReadPhoto),
    ]);
    if (text === undefined || !photo) return undefined;
    const { blank, ...rest } = JSON.parse(text) as Omit<HalfRead, 'blank' | 'photo'> & {
      blank: string;
    };
    const file = new File([photo.file], photo.name, { type: photo.file.type });
    storedPhoto = file;
    return { ...rest, blank: parsePattern(blank, note), photo: file };
  } catch {
    return undefined;
  }
}

/** The answers again, for the beads that there are now. */
export function saidAgain(
  said: HalfRead['said'],
  beads: readonly Bead[],
): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  for (const [stitch, id] of Object.entries(said)) {
    const bead = id === whiteMark ? undecided : beads.findIndex((one) => one.id === id);
    if (bead >= 0 || id === whiteMark) found.set(Number(stitch), bead);
  }
  return found;
}

/** It was laid on the table. */
export function forgetSheet(): Promise<void> {
  return write(async () => {
    storedPhoto = undefined;
    const db = await database();
    await db.delete('notes', note);
    await db.delete('pictures', halfReadPhoto);
  });
}

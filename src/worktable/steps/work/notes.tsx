import { placeOf } from '../../../core/thread/find/find-place.js';
import type { StitchNote } from '../../../core/work/progress.js';
import { Icon } from '../../parts/icon.js';
import { figure, words } from '../../words.js';
import { markProgress, progress, tapped, withoutSlip, work } from './work-store.js';

/** Pins, changes or takes away what stands at a stitch. */
export function pinNote(stitch: number, text: string): void {
  const { notes } = progress.peek()!;
  const was = notes.find((note) => note.stitch === stitch);
  const rest = notes.filter((note) => note.stitch !== stitch);
  const next: StitchNote = { ...(was ?? { stitch }), text: text.trim().slice(0, 1000) };
  const empty = next.text === '' && !next.sewOn && !next.extra;
  const all = empty ? rest : [...rest, next];
  markProgress({ notes: all.sort((one, other) => one.stitch - other.stitch) });
}

/** The bead was sewn on: the note has done its work. */
export function sewnOn(stitch: number): void {
  const notes = progress
    .peek()!
    .notes.flatMap((note) => (note.stitch === stitch ? withoutSlip(note) : [note]));
  markProgress({ notes });
}

/** A note at the stitch that was tapped, and all those that there are. */
export function NoteHere() {
  const say = words.value.mending;
  const { notes, worked } = progress.value!;
  const at = tapped.value >= 0 ? tapped.value : worked;
  const { round, stitch } = placeOf(work.value!.pattern, at);
  const here = notes.find((note) => note.stitch === at);
  return (
    <>
      <label class="under-name" key={at}>
        <span>{say.noteAt({ round: figure(round), stitch: figure(stitch) })}</span>
        <textarea
          rows={3}
          maxLength={1000}
          data-note={at}
          onChange={(event) => pinNote(at, event.currentTarget.value)}
        >
          {here?.text ?? ''}
        </textarea>
      </label>
      <p class="small">{say.noteHow}</p>
      <NoteList />
    </>
  );
}

/** Everything that is pinned to the panel at hand. */
export function NoteList() {
  const say = words.value.mending;
  const { notes } = progress.value!;
  const { pattern } = work.value!;
  // A bead too many is told when its stitch comes, and is no note to read.
  const told = notes.filter(({ text, sewOn }) => sewOn ?? text);
  const named = new Map(pattern.beads.map((bead) => [bead.letter, bead.name]));
  if (told.length === 0) return null;
  return (
    <ul class="note-list">
      {told.map(({ stitch, text, sewOn }) => {
        const { round, stitch: i } = placeOf(pattern, stitch);
        const at = { round: figure(round), stitch: figure(i) };
        return (
          <li key={stitch} data-noted={stitch} data-sew-on={sewOn}>
            <span>
              {sewOn
                ? say.sewOnLine({ ...at, letter: sewOn, name: named.get(sewOn) ?? '' })
                : say.noteLine({ ...at, text })}
              {sewOn && text !== '' && ` ${text}`}
            </span>
            <button
              type="button"
              class="button quiet"
              onClick={() => (sewOn ? sewnOn(stitch) : pinNote(stitch, ''))}
            >
              <Icon name="close" />
              <span>{sewOn ? say.sewn : say.takeAway}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}

import { whenSaid } from '../fault.js';
import { useEffect, useState } from 'preact/hooks';
import type { Pattern } from '../../core/pattern/pattern.js';
import { Icon } from '../parts/icon.js';
import { makeClass } from '../pages/make-pages.js';
import { patternOfPiece } from '../pages/pattern-of-piece.js';
import { fileName, saveFile } from '../pages/save-file.js';
import { chart, piece } from '../store/store.js';
import { language, words } from '../words.js';
import { database } from './database.js';
import { fetchPiece } from './fetch-piece.js';
import { onShelf } from './shelf.js';
import { pieceId } from './state.js';

/** Where the names are kept in this browser. */
const note = 'class';
/** Instead of an id: the piece on the table. */
const here = '';

/** Patterns of the shelf as one PDF, for everybody in a class or once. */
export function ForClass() {
  const say = words.value;
  const [chosen, choose] = useState<readonly string[]>([here]);
  const [names, setNames] = useState('');
  const [told, tell] = useState<{ text: string; kind: 'note' | 'trouble' }>();
  const [busy, setBusy] = useState(false);
  useEffect(() => {
    void keptNames().then(setNames);
  }, []);
  const others = onShelf.value.filter(({ id, removedAt }) => !removedAt && id !== pieceId.value);
  const all = [{ id: here, title: piece.value.title }, ...others];
  const make = async () => {
    setBusy(true);
    tell({ text: say.pages.making, kind: 'note' });
    try {
      const list = namesIn(names);
      const ids = all.map(({ id }) => id).filter((id) => chosen.includes(id));
      const name = await saveClass(ids, list);
      tell({ text: say.table.saved(name), kind: 'note' });
    } catch (error) {
      whenSaid(error, (text) => tell({ text, kind: 'trouble' }));
    } finally {
      setBusy(false);
    }
  };
  return (
    <div class="class-sheets">
      <p>{say.shelf.classHow}</p>
      {all.map(({ id, title }) => (
        <label key={id} class="tick">
          <input
            type="checkbox"
            checked={chosen.includes(id)}
            onChange={(event) =>
              choose(
                event.currentTarget.checked ? [...chosen, id] : chosen.filter((one) => one !== id),
              )
            }
          />
          <span>{title}</span>
        </label>
      ))}
      <label class="under-name">
        <span>{say.shelf.classNames}</span>
        <textarea
          rows={5}
          value={names}
          onChange={(event) => {
            setNames(event.currentTarget.value);
            void keepNames(event.currentTarget.value);
          }}
        />
      </label>
      <button
        type="button"
        class="button"
        data-form="class"
        disabled={busy || chosen.length === 0}
        onClick={() => void make()}
      >
        <Icon name="book" />
        <span>{say.shelf.classSave}</span>
      </button>
      <p class={told?.kind} role={told?.kind === 'trouble' ? 'alert' : 'status'}>
        {told?.text}
      </p>
    </div>
  );
}

/** One a line, each shortened to what a head has room for. */
const namesIn = (text: string): string[] =>
  text
    .split('\n')
    .map((one) => one.trim().slice(0, 60))
    .filter((one) => one !== '')
    .slice(0, 200);

async function saveClass(ids: readonly string[], names: readonly string[]): Promise<string> {
  const patterns: Pattern[] = [];
  for (const id of ids) {
    const own = id === here ? chart.peek()?.settled?.pattern : undefined;
    const kept = own || id === here ? undefined : await fetchPiece(id);
    const pattern = own ?? (await patternOfPiece(kept?.piece ?? piece.peek()));
    if (pattern) patterns.push(pattern);
  }
  const pdf = await makeClass(patterns, names, piece.peek().pages ?? {}, language.peek());
  const name = fileName(patterns[0].title, '-class.pdf');
  saveFile(pdf, name);
  return name;
}

async function keptNames(): Promise<string> {
  try {
    return (await (await database()).get('notes', note)) ?? '';
  } catch {
    return '';
  }
}

async function keepNames(text: string): Promise<void> {
  try {
    await (await database()).put('notes', text, note);
  } catch {
    // a browser that keeps nothing: they hold until the shelf is closed
  }
}

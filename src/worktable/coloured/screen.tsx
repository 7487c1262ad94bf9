import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { Trouble } from '../keep/shelf-view.js';
import { Icon } from '../parts/icon.js';
import { hanging, taker } from '../picture-in/ways-in.js';
import { figure, words } from '../words.js';
import './coloured.css';
import { LayIt } from './lay-it.js';
import { PhotoIn } from './photo-in.js';
import { at, back, doubtful, end, leave, sheet, takeRest } from './sheet.js';
import { Settle } from './settle.js';
import { findBlanks, reading, takeFile } from './take-photo.js';

/** The way from a photo of a coloured chart to a panel. */
export function ColouredScreen() {
  const say = words.value;
  const box = useRef<HTMLElement>(null);
  const open = sheet.value !== undefined;
  const all = doubtful.value.length;
  const asks = open && at.value < all;
  // Before it is seen: what is dropped on it at once is meant for it.
  useLayoutEffect(() => {
    findBlanks();
    // While one photo is being settled no other takes its place.
    taker.value = (file) => (sheet.peek() ? undefined : takeFile(file));
    return () => {
      taker.value = undefined;
      reading.peek()?.abort();
      end();
      window.scrollTo(0, 0);
    };
  }, []);
  useEffect(() => {
    window.scrollTo(0, 0);
    box.current?.focus({ preventScroll: true });
  }, [open, asks]);
  useEffect(() => {
    const escape = (event: KeyboardEvent) => event.key === 'Escape' && leave();
    window.addEventListener('keydown', escape);
    return () => window.removeEventListener('keydown', escape);
  }, []);
  return (
    <main class="coloured" ref={box} tabIndex={-1} data-state={stateOf(open, asks)}>
      <header>
        <button type="button" class="button quiet" data-form="leave" onClick={leave}>
          <Icon name="to-left" />
          <span>{say.actions['to-table']}</span>
        </button>
        <h2 class={asks ? 'asks' : ''}>{say.actions['coloured-chart']}</h2>
        {asks && (
          <p class="count">{say.coloured.count({ n: figure(at.value + 1), of: figure(all) })}</p>
        )}
      </header>
      {open && (
        <p class="small of">
          {say.coloured.blank({
            title: sheet.value!.blank.title,
            wedges: figure(sheet.value!.blank.shape.wedges),
            rounds: figure(sheet.value!.blank.shape.rounds),
          })}
        </p>
      )}
      <Trouble />
      {!open ? <PhotoIn /> : asks ? <Settle /> : <LayIt />}
      {open && (
        <footer>
          <button
            type="button"
            class="button"
            data-form="back"
            disabled={at.value === 0}
            onClick={back}
          >
            <Icon name="undo" />
            <span>{say.actions['work-back']}</span>
          </button>
          {asks && (
            <button type="button" class="button quiet" data-form="take-rest" onClick={takeRest}>
              <Icon name="to-right" />
              <span>{say.coloured.rest}</span>
            </button>
          )}
        </footer>
      )}
      {hanging.value && <div class="hanging">{say.coloured.drop}</div>}
    </main>
  );
}

function stateOf(open: boolean, asks: boolean): 'photo' | 'reading' | 'settling' | 'read' {
  if (reading.value) return 'reading';
  return !open ? 'photo' : asks ? 'settling' : 'read';
}

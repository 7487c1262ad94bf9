import { computed } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { focusCard } from './actions/focus.js';
import { ActionButton } from './parts/action-button.js';
import { Icon } from './parts/icon.js';
import { Help } from './help.js';
import { colouring } from './coloured/state.js';
import { theme } from './look/theme.js';
import { Shelf, Trouble } from './keep/shelf-view.js';
import { keeping, shelfOpen, unsaved } from './keep/state.js';
import { Mat } from './mat/mat.js';
import { newEdition } from './offline/offline.js';
import { Panel } from './panel/panel.js';
import { hanging } from './picture-in/ways-in.js';
import { stepNamed, steps } from './steps/list.js';
import { chart, choosing, opening, openStep, piece, pieces, told, view } from './store/store.js';
import { atWork } from './steps/work/work-store.js';
import { Thread } from './thread/thread.js';
import { Tongue } from './tongue.js';
import { words } from './words.js';

/** The name of the piece. What is being typed stays, whatever else is drawn anew meanwhile. */
function Title() {
  const say = words.value.table;
  const [typed, type] = useState<string>();
  return (
    <input
      class="title"
      aria-label={say.titleLabel}
      value={typed ?? piece.value.title}
      maxLength={200}
      onInput={(event) => type(event.currentTarget.value)}
      onChange={(event) => {
        const title = event.currentTarget.value.trim() || say.untitled;
        pieces.change(say.titleLabel, (now) => ({ ...now, title }));
        type(undefined);
      }}
    />
  );
}

/** The whole table. */
export function Table() {
  const say = words.value;
  const step = stepNamed(view.value.step);
  useWayBack(atWork.value ?? (colouring.value ? 'coloured-chart' : undefined));
  const card = useRef<HTMLElement>(null);
  useEffect(() => {
    if (!card.current) return;
    card.current.scrollTop = 0;
    // On a phone the window is what is pushed: a step begins where its card does.
    const under = parseFloat(getComputedStyle(document.documentElement).scrollPaddingTop) || 0;
    if (card.current.getBoundingClientRect().top < under)
      card.current.scrollIntoView({ block: 'start' });
  }, [step.id]);
  if (atWork.value && !shelfOpen.value) return <Later key="work" load={workScreen} />;
  if (colouring.value) return <Later key="coloured" load={colouredScreen} />;
  return (
    <div class="table">
      <header class="head">
        <div class="first">
          <ActionButton id="shelf" look="quiet" />
          <Title />
        </div>
        <div class="reach">
          <div class="undoing">
            <ActionButton id="undo" look="quiet" />
            <ActionButton id="redo" look="quiet" />
          </div>
          <Way open={step.id} />
        </div>
        <div class="rest">
          <Tongue />
          <ActionButton id={theme.value === 'dark' ? 'light' : 'dark'} look="quiet" />
          <ActionButton id="help" look="quiet" />
        </div>
      </header>
      {!shelfOpen.value && <Trouble />}
      {newEdition.value && (
        <div class="keep-trouble new-edition" role="status">
          <p>{say.shelf.edition}</p>
          <ActionButton id="new-edition" />
        </div>
      )}
      <main data-state={state.value} data-kept={unsaved.value ? 'saving' : keeping.value}>
        {step.View ? <step.View /> : <Panel />}
        <Thread />
        <section class="card" ref={card} tabIndex={-1} aria-label={step.name(say)}>
          <div class="sheet">
            <Told />
            <step.Card />
          </div>
        </section>
        <Mat />
      </main>
      {shelfOpen.value && <Shelf />}
      {view.value.help && <Help />}
      {hanging.value && <div class="hanging">{say.picture.drop}</div>}
    </div>
  );
}

/** Back from a screen in the table's place, the keyboard lies on the button that opened it. */
function useWayBack(screen: string | undefined): void {
  const was = useRef(screen);
  useEffect(() => {
    const left = was.current;
    was.current = screen;
    if (left === undefined || screen !== undefined) return;
    document.querySelector<HTMLElement>(`.card [data-action="${left}"]`)?.focus();
    if (document.activeElement === document.body) focusCard();
  }, [screen]);
}

const workScreen = async () => (await import('./steps/work/at-work.js')).AtWork;
const colouredScreen = async () => (await import('./coloured/screen.js')).ColouredScreen;

/** A screen in the table's place, once it is there: a table that is only looked at does without it. */
function Later({ load }: { load: () => Promise<ComponentType> }) {
  const [Screen, show] = useState<ComponentType>();
  useEffect(() => {
    void load().then((loaded) => show(() => loaded));
  }, []);
  return Screen ? <Screen /> : null;
}

/** The steps in their order; where they do not fit side by side, the open one is pushed into sight. */
function Way({ open }: { open: string }) {
  const say = words.value;
  const row = useRef<HTMLElement>(null);
  useEffect(() => {
    const [here] = row.current!.querySelectorAll<HTMLElement>('[aria-current]');
    const { offsetLeft = 0, offsetWidth = 0 } = here ?? {};
    row.current!.scrollLeft = offsetLeft - (row.current!.clientWidth - offsetWidth) / 2;
  }, [open]);
  return (
    <nav class="way" ref={row} aria-label={say.table.way}>
      {steps.map(({ id, icon, name }) => (
        <button
          key={id}
          type="button"
          data-step={id}
          aria-current={id === open ? 'step' : undefined}
          onClick={({ detail }) => {
            openStep(id);
            // Pressed by key: whoever does without a pointer goes on in the card.
            if (detail === 0) focusCard();
          }}
        >
          <Icon name={icon} />
          <span>{name(say)}</span>
        </button>
      ))}
    </nav>
  );
}

/** How far the present wish is: for the tests, and for whoever waits. */
const state = computed((): 'opening' | 'choosing' | 'settled' => {
  if (opening.value) return 'opening';
  return choosing.value || !chart.value?.settled ? 'choosing' : 'settled';
});

/** What went wrong, or was done; it stays until the next thing is done. */
function Told() {
  const sentence = opening.value ? words.value.picture.opening : told.value?.text;
  const kind = opening.value ? 'note' : told.value?.kind;
  return (
    <div class="told" role={kind === 'trouble' ? 'alert' : 'status'}>
      {sentence && (
        <p class={kind}>
          <span>{sentence}</span>
          {!opening.value && (
            <button type="button" class="button quiet" onClick={() => (told.value = undefined)}>
              <Icon name="close" />
              <span>{words.value.table.close}</span>
            </button>
          )}
        </p>
      )}
    </div>
  );
}

import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useFocusOver } from '../actions/focus.js';
import { ActionButton } from '../parts/action-button.js';
import { Icon } from '../parts/icon.js';
import { language, words } from '../words.js';
import type { OnShelf } from './shelf.js';
import { clearRemoved, onShelf, openKept, setRemoved } from './shelf.js';
import { keeping, pieceId, shelfOpen } from './state.js';

/** The shelf of pieces, over the table. */
export function Shelf() {
  const say = words.value;
  const box = useRef<HTMLElement>(null);
  useFocusOver(box, '[data-action="shelf"]');
  const there = onShelf.value.filter((one) => !one.removedAt);
  const removed = onShelf.value.filter((one) => one.removedAt);
  return (
    <aside class="shelf" ref={box} tabIndex={-1} aria-label={say.shelf.title}>
      <div class="head">
        <h2>{say.shelf.title}</h2>
        <button type="button" class="button quiet" onClick={() => (shelfOpen.value = false)}>
          <Icon name="close" />
          <span>{say.table.close}</span>
        </button>
      </div>
      <p>{say.shelf.intro}</p>
      <Trouble />
      <div class="row">
        <ActionButton id="begin-piece" look="main" />
        <ActionButton id="copy-piece" />
        <ActionButton id="save-piece" />
        <ActionButton id="open-piece" />
      </div>
      {there.length === 0 && <p>{say.shelf.empty}</p>}
      <ul class="pieces">
        {there.map((one) => (
          <Kept key={one.id} kept={one} />
        ))}
      </ul>
      <Class />
      {removed.length > 0 && (
        <>
          <h3>{say.shelf.removed}</h3>
          <p class="small">{say.shelf.removedHow}</p>
          <ul class="pieces removed">
            {removed.map((one) => (
              <Kept key={one.id} kept={one} />
            ))}
          </ul>
          <button type="button" class="button" onClick={() => void clearRemoved()}>
            <Icon name="close" />
            <span>{say.actions['clear-removed']}</span>
          </button>
        </>
      )}
    </aside>
  );
}

/** What goes to a class; loaded when it is opened. */
function Class() {
  const [View, show] = useState<ComponentType>();
  const load = () => void import('./for-class.js').then(({ ForClass }) => show(() => ForClass));
  return (
    <details class="for-class" onToggle={load}>
      <summary>{words.value.shelf.forClass}</summary>
      {View && <View />}
    </details>
  );
}

function Kept({ kept }: { kept: OnShelf }) {
  const say = words.value.shelf;
  const { id, title, savedAt, removedAt, look } = kept;
  const here = id === pieceId.value;
  const date = new Intl.DateTimeFormat(language.value, { dateStyle: 'medium' }).format(savedAt);
  return (
    <li>
      <button
        type="button"
        class="piece"
        disabled={removedAt !== undefined}
        aria-current={here ? 'true' : undefined}
        aria-label={say.open(title)}
        onClick={() => void openKept(id).then(() => (shelfOpen.value = false))}
      >
        <Picture look={look} />
        <span class="name">{title}</span>
        <span class="small">{here ? say.onTable : say.when(date)}</span>
      </button>
      <button
        type="button"
        class="button quiet"
        aria-label={(removedAt ? say.back : say.take)(title)}
        onClick={() => void setRemoved(id, !removedAt)}
      >
        <Icon name={removedAt ? 'undo' : 'close'} />
        <span>{removedAt ? say.backShort : say.takeShort}</span>
      </button>
    </li>
  );
}

function Picture({ look }: { look: Blob | undefined }) {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    if (!look) return;
    const made = URL.createObjectURL(look);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [look]);
  return address ? <img src={address} alt="" /> : <span class="no-look" />;
}

/** What keeps the piece from being kept, with the cure beside it; nothing when all is well. */
export function Trouble() {
  const say = words.value.shelf;
  const state = keeping.value;
  if (state === 'nothing' || state === 'kept') return null;
  return (
    <div class="keep-trouble" role="alert">
      <p>{say[state]}</p>
      <ActionButton id={state === 'elsewhere' ? 'work-here' : 'save-piece'} />
    </div>
  );
}

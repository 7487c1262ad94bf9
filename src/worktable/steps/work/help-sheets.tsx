import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { useFocusOver } from '../../actions/focus.js';
import { ActionButton } from '../../parts/action-button.js';
import { words } from '../../words.js';
import { CheckStrung } from './check-strung.js';
import { FindPlace } from './find-place.js';
import { NoteHere } from './notes.js';
import { WrongComing } from './wrong-coming.js';
import { helping } from './work-store.js';

/** The help that is open, over what hands do. */
export function HelpSheets() {
  const say = words.value.mending;
  if (helping.value === 'find')
    return (
      <Sheet key="find" title={say.findTitle}>
        <FindPlace />
      </Sheet>
    );
  if (helping.value === 'check')
    return (
      <Sheet key="check" title={say.checkTitle}>
        <CheckStrung />
      </Sheet>
    );
  if (helping.value === 'wrong')
    return (
      <Sheet key="wrong" title={say.wrongTitle}>
        <WrongComing />
      </Sheet>
    );
  if (helping.value === 'note')
    return (
      <Sheet key="note" title={say.notes}>
        <NoteHere />
      </Sheet>
    );
  return null;
}

function Sheet({ title, children }: { title: string; children: ComponentChildren }) {
  const box = useRef<HTMLElement>(null);
  // Space goes on with the work as soon as the sheet is gone.
  useFocusOver(box, '.at-work button.tap', true);
  return (
    <section class="help-sheet" ref={box} tabIndex={-1} aria-label={title}>
      <div class="head">
        <h2>{title}</h2>
        <ActionButton id="close-help" look="quiet" />
      </div>
      {children}
    </section>
  );
}

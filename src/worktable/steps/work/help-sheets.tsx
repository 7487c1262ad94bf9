import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
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
      <Sheet title={say.findTitle}>
        <FindPlace />
      </Sheet>
    );
  if (helping.value === 'check')
    return (
      <Sheet title={say.checkTitle}>
        <CheckStrung />
      </Sheet>
    );
  if (helping.value === 'wrong')
    return (
      <Sheet title={say.wrongTitle}>
        <WrongComing />
      </Sheet>
    );
  if (helping.value === 'note')
    return (
      <Sheet title={say.notes}>
        <NoteHere />
      </Sheet>
    );
  return null;
}

function Sheet({ title, children }: { title: string; children: ComponentChildren }) {
  const box = useRef<HTMLElement>(null);
  useEffect(() => box.current?.focus(), [title]);
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

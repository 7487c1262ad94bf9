import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';

/** Gives the keyboard to an element; nothing else moves. */
export const focusOn = (selector: string): void =>
  document.querySelector<HTMLElement>(selector)?.focus({ preventScroll: true });

/** The card of the open step has the keyboard: its first control is the next one. */
export const focusCard = () => focusOn('.card');

/** The panel has the keyboard: Space and Enter are meant for it, not for the button that was pressed last. */
export const focusPanel = () => focusOn('.panel .ground');

/**
 * What lies over the table takes the keyboard, and gives it back when it goes: to where it was, else
 * to what a selector finds.
 *
 * @param always whether what the selector finds has it in any case
 */
export function useFocusOver(
  box: RefObject<HTMLElement | null>,
  opener: string,
  always = false,
): void {
  useEffect(() => {
    const own = box.current!;
    const before = document.activeElement as HTMLElement | null;
    own.focus();
    return () => {
      const now = document.activeElement;
      if (now && now !== document.body && !own.contains(now)) return;
      const there = before?.isConnected && before !== document.body && !own.contains(before);
      if (there && !always) before.focus();
      else document.querySelector<HTMLElement>(opener)?.focus();
    };
  }, []);
}

import type { english } from '../../words/worktable/english/index.js';
import type { IconName } from '../parts/icon.js';

/** Every action has its name in the words. */
export type ActionId = keyof (typeof english)['actions'];

/** Something the maker can do: buttons, keys, help and tests come from it. */
export interface Action {
  readonly id: ActionId;
  readonly icon: IconName;
  /** As `KeyboardEvent.key`, after `Ctrl+` or `Shift+`; Ctrl is Command where that is usual. */
  readonly keys?: readonly string[];
  /** Whether each of its keys does a part of its own; the list of keys names them all then. */
  readonly eachKey?: boolean;
  /** The step that it belongs to; its keys hold only there. Everywhere when absent. */
  readonly step?: string;
  /** Reads signals; always when absent. */
  possible?(): boolean;
  /** For something that is on or off. Reads signals. */
  on?(): boolean;
  /** `key`: which of its keys was pressed; none by its button. */
  do(key?: string): void;
}

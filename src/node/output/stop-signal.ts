/**
 * What stops a write before its end: an `AbortSignal`. This is all that is asked of it, so that
 * programs compile without the types of Node and of the DOM.
 */
export interface StopSignal {
  /** Throws the reason when the write shall stop. */
  throwIfAborted(): void;
}

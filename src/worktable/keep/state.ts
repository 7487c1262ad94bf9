import { signal } from '@preact/signals';

/** How the piece on the table is kept. */
export type Keeping =
  /** Not begun: our sample, untouched. */
  | 'nothing'
  | 'kept'
  /** The browser keeps nothing: a private window, or it was forbidden. */
  | 'refused'
  /** The device has no more room. */
  | 'full'
  /** The piece is open in another window, which keeps it. */
  | 'elsewhere';

export const keeping = signal<Keeping>('nothing');

/** Whether something was done that is not kept yet. */
export const unsaved = signal(false);

/** Id of the piece on the table; undefined while nothing of it is kept. */
export const pieceId = signal<string | undefined>(undefined);

/** Whether the shelf is open. */
export const shelfOpen = signal(false);

/** Where the photo of a coloured chart is kept while its cells are being settled, among the pictures. */
export const halfReadPhoto = 'half-read photo';

import { colouring } from '../coloured/state.js';
import { shelfOpen } from '../keep/state.js';
import { atWork, helping } from '../steps/work/work-store.js';
import { look, view } from '../store/store.js';
import { actionNamed } from './known.js';

/** What lies over the table or stands in its place, the uppermost first, and how each is put aside. */
const over: readonly { open(): boolean; putAside(): void }[] = [
  { open: () => view.value.help, putAside: () => look({ help: false }) },
  { open: () => shelfOpen.value, putAside: () => void (shelfOpen.value = false) },
  {
    open: () => atWork.value !== undefined && helping.value !== undefined,
    putAside: () => actionNamed('close-help').do(),
  },
  { open: () => atWork.value !== undefined, putAside: () => actionNamed('to-table').do() },
  { open: () => colouring.value, putAside: () => void (colouring.value = false) },
];

/** The uppermost of what hides the table; undefined when the table is seen. Reads signals. */
export const uppermost = () => over.find((one) => one.open());

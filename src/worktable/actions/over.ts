import { colouring } from '../coloured/state.js';
import { shelfOpen } from '../keep/state.js';
import { atWork, helping } from '../steps/work/work-store.js';
import { look, view } from '../store/store.js';
import { actionNamed } from './known.js';

/** Something that hides the table, and how it is put aside. */
interface Cover {
  open(): boolean;
  putAside(): void;
}

/** What lies over the table or its place, the uppermost first. */
const lying: readonly Cover[] = [
  { open: () => view.value.help, putAside: () => look({ help: false }) },
  { open: () => shelfOpen.value, putAside: () => void (shelfOpen.value = false) },
];

/** What stands in the table's place, the uppermost first. */
const inItsPlace: readonly Cover[] = [
  {
    open: () => atWork.value !== undefined && helping.value !== undefined,
    putAside: () => actionNamed('close-help').do(),
  },
  { open: () => atWork.value !== undefined, putAside: () => actionNamed('to-table').do() },
  { open: () => colouring.value, putAside: () => void (colouring.value = false) },
];

/** The uppermost of what lies over the table. Reads signals. */
export const overTable = (): Cover | undefined => lying.find((one) => one.open());

/** The uppermost of all that hides the table; undefined when the table is seen. Reads signals. */
export const uppermost = (): Cover | undefined =>
  overTable() ?? inItsPlace.find((one) => one.open());

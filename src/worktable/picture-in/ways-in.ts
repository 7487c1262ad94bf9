import { signal } from '@preact/signals';
import { tellTrouble } from '../store/store.js';
import { words } from '../words.js';
import { layFile } from './lay-file.js';

/** Whether a file hangs over the table. */
export const hanging = signal(false);

/** Who takes a file that is dropped or pasted; it is laid on the panel where nobody does. */
export const taker = signal<((file: File) => void | Promise<void>) | undefined>(undefined);

/** Files dropped anywhere, and pictures pasted. */
export function listenForPictures(): void {
  let inside = 0;
  window.addEventListener('dragenter', (event) => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    inside++;
    hanging.value = true;
  });
  window.addEventListener('dragleave', () => {
    inside = Math.max(0, inside - 1);
    if (inside === 0) hanging.value = false;
  });
  window.addEventListener('dragover', (event) => event.preventDefault());
  window.addEventListener('drop', (event) => {
    event.preventDefault();
    inside = 0;
    hanging.value = false;
    lay(event.dataTransfer?.files);
  });
  window.addEventListener('paste', (event) => {
    const at = event.target as HTMLElement | null;
    if (at?.closest('input, textarea')) return;
    event.preventDefault();
    lay(event.clipboardData?.files);
  });
}

function lay(files: FileList | undefined): void {
  const [first] = files ?? [];
  if (first) void (taker.peek() ?? layFile)(first);
  else tellTrouble(words.peek().errors.nothingToOpen);
}

/** What can be chosen in the device's own window for files. */
const accepted = 'image/*,.svg,.json,.zip';

/** Lets the maker choose a picture or a piece, or take a photo with the camera. */
export function chooseFile(camera: boolean): void {
  chooseAny(camera ? 'image/*' : accepted, camera, (file) => void layFile(file));
}

/** Lets the maker choose a file of some kinds, or take a photo with the camera. */
export function chooseAny(accept: string, camera: boolean, chosen: (file: File) => void): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = accept;
  if (camera) input.capture = 'environment';
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file) chosen(file);
  });
  input.click();
}

/** Takes a picture from the clipboard, where the browser lets the page ask. */
export async function pasteNow(): Promise<void> {
  try {
    for (const item of await navigator.clipboard.read()) {
      const type = item.types.find((one) => one.startsWith('image/'));
      if (!type) continue;
      const blob = await item.getType(type);
      await layFile(new File([blob], `pasted.${type.slice(6)}`, { type }));
      return;
    }
  } catch {
    // refused, or nothing there: said below
  }
  tellTrouble(words.peek().errors.nothingToOpen);
}

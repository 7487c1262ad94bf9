import { signal } from '@preact/signals';
import { save } from '../keep/autosave.js';

/** A newer edition of the page that waits for the maker's word. */
export const newEdition = signal<ServiceWorker | undefined>(undefined);

/** Keeps the page on the device, where the browser can, and listens for new editions. */
export async function startOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  try {
    const kept = await navigator.serviceWorker.register('./service-worker.js');
    const offer = (worker: ServiceWorker | null) => {
      // Without a page that is kept already there is nothing to replace.
      if (worker && navigator.serviceWorker.controller) newEdition.value = worker;
    };
    offer(kept.waiting);
    kept.addEventListener('updatefound', () => {
      const coming = kept.installing;
      coming?.addEventListener('statechange', () => {
        if (coming.state === 'installed') offer(coming);
      });
    });
  } catch {
    // The page works without being kept.
  }
}

/** Goes over to the new edition; the piece is kept first. */
export async function takeNewEdition(): Promise<void> {
  await save();
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
  newEdition.peek()?.postMessage('take the new edition');
}

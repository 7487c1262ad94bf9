/**
 * Which window works on which piece: a lock of the browser's for each, and a channel on which one window
 * asks another to let go. A browser without locks keeps one window's work from another's by nothing; the
 * last to write wins there.
 */
const channel =
  typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('rondure');

let letGo: (() => void) | undefined;
let heldId: string | undefined;

const lockName = (id: string) => `rondure piece ${id}`;

/** Takes a piece for this window; false where another window has it. Lets go of the one before. */
export function hold(id: string): Promise<boolean> {
  if (heldId === id) return Promise.resolve(true);
  release();
  if (!('locks' in navigator)) {
    heldId = id;
    return Promise.resolve(true);
  }
  return new Promise((done) => {
    void navigator.locks.request(lockName(id), { ifAvailable: true }, (lock) => {
      if (!lock) {
        done(false);
        return undefined;
      }
      heldId = id;
      done(true);
      return new Promise<void>((ended) => {
        letGo = ended;
      });
    });
  });
}

/** Lets the piece go. */
export function release(): void {
  letGo?.();
  letGo = undefined;
  heldId = undefined;
}

/** Asks the window that has a piece to let it go, then takes it; false after two seconds without an answer. */
export async function takeOver(id: string): Promise<boolean> {
  channel?.postMessage({ wanted: id });
  for (let tries = 0; tries < 40; tries++) {
    if (await hold(id)) return true;
    await new Promise((done) => setTimeout(done, 50));
  }
  return false;
}

/** Calls when another window asks for the piece of this one; it is let go when that has been done. */
export function whenWanted(saveFirst: () => Promise<void>): void {
  channel?.addEventListener('message', ({ data }: MessageEvent<{ wanted?: string }>) => {
    if (data.wanted === undefined || data.wanted !== heldId) return;
    void saveFirst().finally(release);
  });
}

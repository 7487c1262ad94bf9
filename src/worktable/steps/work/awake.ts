let held: WakeLockSentinel | undefined;
let wanted = false;

async function hold(): Promise<void> {
  if (!wanted || document.hidden || !('wakeLock' in navigator)) return;
  try {
    const lock = await navigator.wakeLock.request('screen');
    if (wanted) held = lock;
    else void lock.release();
  } catch {
    // A battery that is nearly empty may refuse it: the screen goes dark as it always does.
  }
}

/** Keeps the screen from going dark, where the browser can, until it is let go. */
export function keepAwake(): () => void {
  wanted = true;
  void hold();
  // The browser lets go when the page is left; it is asked again when the maker comes back.
  const again = () => void hold();
  document.addEventListener('visibilitychange', again);
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', again);
    void held?.release();
    held = undefined;
  };
}

/** Whether the browser can keep the screen from going dark. */
export const canStayAwake = () => 'wakeLock' in navigator;

/** Keeps the screen from going dark, where the browser can, until it is let go. */
export function keepAwake(): () => void {
  let wanted = true;
  let asking = false;
  let held: WakeLockSentinel | undefined;

  async function hold(): Promise<void> {
    const holds = held !== undefined && !held.released;
    if (!wanted || asking || holds || document.hidden || !canStayAwake()) return;
    asking = true;
    try {
      held = await navigator.wakeLock.request('screen');
      if (!wanted) await held.release();
    } catch {
      // A battery that is nearly empty may refuse it: the screen goes dark as it always does.
    } finally {
      asking = false;
    }
  }

  void hold();
  // The browser lets go when the page is left; it is asked again when the maker comes back.
  const again = () => void hold();
  document.addEventListener('visibilitychange', again);
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', again);
    void held?.release();
  };
}

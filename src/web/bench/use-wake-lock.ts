import { useEffect } from 'react';

/** Keeps the screen on while the page is seen, where the browser can. A refusal (low battery) changes nothing else. */
export function useWakeLock(): void {
  useEffect(() => {
    if (!('wakeLock' in navigator)) return;
    let held: WakeLockSentinel | null = null;
    let left = false;
    const hold = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      try {
        const lock = await navigator.wakeLock.request('screen');
        if (left) void lock.release();
        else held = lock;
      } catch {
        held = null;
      }
    };
    void hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', hold);
      void held?.release();
    };
  }, []);
}

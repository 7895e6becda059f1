/**
 * Keeps the screen on until told otherwise. The browser takes the lock away whenever the page is hidden, so it is requested again.
 * @param onTrouble hears once, in plain words, when the screen may go dark
 * @returns a function that lets the screen go
 */
export function keepScreenOn(onTrouble: (message: string) => void): () => void {
  let lock: WakeLockSentinel | undefined;
  let isOver = false;
  let isTold = false;

  const tell = () => {
    if (isTold || isOver) return;
    isTold = true;
    onTrouble(say('drill.screenMaySleep'));
  };
  const take = async () => {
    if (isOver || document.visibilityState !== 'visible') return;
    // Older browsers and pages without a secure origin have no wakeLock, whatever the types say.
    if (!('wakeLock' in navigator)) {
      tell();
      return;
    }
    try {
      const taken = await navigator.wakeLock.request('screen');
      if (isOver) await taken.release();
      else lock = taken;
    } catch {
      // A page that was hidden meanwhile is refused too; it asks again when it is back.
      if (document.visibilityState === 'visible') tell();
    }
  };
  const onVisible = () => void take();
  document.addEventListener('visibilitychange', onVisible);
  void take();
  return () => {
    isOver = true;
    document.removeEventListener('visibilitychange', onVisible);
    lock?.release().catch(() => undefined);
  };
}

import { say } from '@larkhold/words';

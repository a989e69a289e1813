export interface ScreenKeeping {
  /**
   * Keeps the screen on until the answer is called; asked again whenever the page comes back into sight, as browsers let go of a
   * page that is hidden. Tells whether it is kept on.
   */
  keepScreenOn(onChange: (isKept: boolean) => void): () => void;
}

export function screenKeeping(): ScreenKeeping {
  return {
    keepScreenOn(onChange) {
      let lock: WakeLockSentinel | null = null;
      let isWanted = true;
      const ask = async () => {
        if (document.visibilityState !== 'visible') return;
        const asked = await requestLock();
        if (!isWanted) return void asked?.release();
        lock = asked;
        onChange(asked !== null);
      };
      const onSight = () => void ask();
      document.addEventListener('visibilitychange', onSight);
      void ask();
      return () => {
        isWanted = false;
        document.removeEventListener('visibilitychange', onSight);
        void lock?.release();
      };
    },
  };
}

/** Null where the browser has no such thing, or refuses, as with an empty battery. */
async function requestLock(): Promise<WakeLockSentinel | null> {
  try {
    return (await navigator.wakeLock?.request('screen')) ?? null;
  } catch {
    return null;
  }
}

import { useSyncExternalStore } from 'react';

/** As in `styles/narrow.css`, where the body stands on top of the work. */
const narrow = window.matchMedia('(max-width: 52rem)');

/** True on a screen that is hardly wider than a phone, followed as it turns. */
export function useNarrow(): boolean {
  return useSyncExternalStore(subscribe, () => narrow.matches);
}

function subscribe(onChange: () => void) {
  narrow.addEventListener('change', onChange);
  return () => narrow.removeEventListener('change', onChange);
}

import type { AppStore } from './create-app-store.ts';
import type { Retraced } from './types.ts';

/** Takes a step back or does it again, and keeps which one it was. */
export function retrace(store: AppStore, way: Retraced['way']): void {
  const before = store.getState();
  store.temporal.getState()[way]();
  const after = store.getState();
  const made = way === 'undo' ? before : after;
  if (after.project !== before.project && made.project)
    store.setState({ retraced: { way, step: made.step, made: made.project } });
  else if (after.drawn !== before.drawn)
    store.setState({ retraced: { way, step: made.step, made: made.drawn } });
}

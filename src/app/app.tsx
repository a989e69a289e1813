import { lazy, Suspense, useSyncExternalStore } from 'react';
import { useStore } from 'zustand';
import { canDrawInSpace } from './can-draw-in-space.ts';
import type { Services } from './services/index.ts';
import type { Actions, AppStore } from './store/index.ts';
import { Workroom, WorkroomProvider } from './views/index.ts';

const BodyScene = lazy(async () => ({ default: (await import('./scene/index.ts')).BodyScene }));

interface AppProps {
  readonly store: AppStore;
  readonly actions: Actions;
  readonly services: Services;
}

export function App({ store, actions, services }: AppProps) {
  const theme = useStore(store, (state) => state.theme);
  const isDarkComputer = useSyncExternalStore(subscribeToDarkness, isComputerDark);
  const isDark = theme === 'dark' || (theme === 'system' && isDarkComputer);
  const scene = canDrawInSpace ? (
    <Suspense fallback={null}>
      <BodyScene store={store} actions={actions} isDark={isDark} onPicture={services.savePicture} />
    </Suspense>
  ) : null;
  return (
    <WorkroomProvider store={store} actions={actions} services={services}>
      <Workroom scene={scene} />
    </WorkroomProvider>
  );
}

const darkness = window.matchMedia('(prefers-color-scheme: dark)');
const isComputerDark = () => darkness.matches;
function subscribeToDarkness(onChange: () => void) {
  darkness.addEventListener('change', onChange);
  return () => darkness.removeEventListener('change', onChange);
}

import { createContext, type ReactNode, useContext } from 'react';
import { useStore } from 'zustand';
import type { Services } from '../../services/index.ts';
import { type Actions, type AppState, type AppStore, historyOf } from '../../store/index.ts';

interface WorkroomContextValue {
  readonly store: AppStore;
  readonly actions: Actions;
  readonly services: Services;
}

const WorkroomContext = createContext<WorkroomContextValue | null>(null);

export function WorkroomProvider({
  children,
  ...value
}: WorkroomContextValue & { readonly children: ReactNode }) {
  return <WorkroomContext value={value}>{children}</WorkroomContext>;
}

export function useWorkroom(): WorkroomContextValue {
  const value = useContext(WorkroomContext);
  if (!value) throw new Error('panels: must be inside WorkroomProvider');
  return value;
}

/** A part of the state; `select` must return the same object while nothing changes. */
export function useApp<T>(select: (state: AppState) => T): T {
  return useStore(useWorkroom().store, select);
}

export function useActions(): Actions {
  return useWorkroom().actions;
}

export function useServices(): Services {
  return useWorkroom().services;
}

/** Names of the steps undo and redo would take back or repeat. */
export function useHistory(): ReturnType<typeof historyOf> {
  const { store } = useWorkroom();
  useStore(store.temporal);
  useStore(store, (state) => state.step);
  useStore(store, (state) => state.drafts);
  return historyOf(store);
}

import type { Project } from '../../core/project/index.ts';
import type { StoppableCallName } from '../calls/index.ts';
import type { Actions, AppStore } from '../store/index.ts';

/** Whoever makes the forms. */
export interface FormMaker {
  request(project: Project): void;
  stop(): void;
  stopCall(name: StoppableCallName): void;
}

export interface WorkSteering {
  stopWork(): void;
  makeAgain(): void;
  /** Brings a call of the worker to an early answer. */
  stopCall(name: StoppableCallName): void;
}

export function steerWork(
  store: AppStore,
  actions: Pick<Actions, 'markStopped'>,
  maker: FormMaker,
): WorkSteering {
  return {
    stopWork() {
      maker.stop();
      actions.markStopped();
    },
    makeAgain() {
      const { project } = store.getState();
      if (project) maker.request(project);
    },
    stopCall: maker.stopCall,
  };
}

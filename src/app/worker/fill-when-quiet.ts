import type { Issue, Result } from '../../core/base/index.ts';
import type { Form } from '../../core/form/index.ts';
import type { Project } from '../../core/project/index.ts';
import { type PageCalls, type Quality, rulesOf, type Work } from '../calls/index.ts';
import type { WorkerClient } from './create-worker-client.ts';

/** So long nothing more must be asked before the form is filled: where that is waited for, and where nobody looks at it. */
const PAUSE_MS = 400;
const REST_MS = 4_000;

export interface FillHandlers {
  onWork(work: Work | null): void;
  onForm(form: Form, project: Project, quality: Quality): void;
  onFailure(issues: readonly Issue[], project: Project): void;
  /** Whether what is looked at now waits for the filled form. */
  awaitsFilled(): boolean;
}

/** The last pass over a project: its full form is shown, and is to be filled. */
export interface Filling {
  plan(project: Project): void;
  drop(): void;
  /** Something else is looked at now. */
  reconsider(): void;
  /** A call to the worker that fills: goes before the filling, or breaks it off unless it needs that itself. */
  letPass(name: keyof PageCalls, call: () => Promise<unknown>): Promise<unknown>;
}

/**
 * Fills a form when nothing else is asked of the worker, and again from the start when it had to give way. `make` is answered
 * null when the worker was stopped: who stops it drops the plan.
 */
export function fillWhenQuiet(
  handlers: FillHandlers,
  worker: WorkerClient,
  make: (project: Project) => Promise<Result<Form> | null>,
): Filling {
  let planned: Project | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isFilling = false;
  let hasGivenWay = false;
  /** How many calls the worker has yet to answer. */
  let asked = 0;

  const fill = async (project: Project) => {
    isFilling = true;
    hasGivenWay = false;
    handlers.onWork({ quality: 'full', fraction: 0, what: null });
    const made = await make(project);
    isFilling = false;
    if (planned !== project || !made) return;
    handlers.onWork(null);
    if (!made.ok && hasGivenWay) return reconsider();
    planned = null;
    if (made.ok) handlers.onForm(made.value, project, 'full');
    else handlers.onFailure(made.issues, project);
  };

  const reconsider = () => {
    clearTimeout(timer);
    const project = planned;
    if (!project || isFilling || asked > 0) return;
    timer = setTimeout(() => void fill(project), handlers.awaitsFilled() ? PAUSE_MS : REST_MS);
  };

  return {
    reconsider,
    plan(project) {
      planned = project;
      reconsider();
    },
    drop() {
      clearTimeout(timer);
      planned = null;
    },
    async letPass(name, call) {
      asked += 1;
      clearTimeout(timer);
      if (isFilling && !rulesOf(name).needsFilled) {
        hasGivenWay = true;
        worker.stopCall('makeForm');
      }
      try {
        return await call();
      } finally {
        asked -= 1;
        reconsider();
      }
    },
  };
}

import type { Actions, AppStore } from './store/index.ts';
import { lacksFirstMeasure } from './store/index.ts';
import type { Follower } from './worker/index.ts';

/** While a body lacks some of its first measures, one guessed from those that are there grows with each of them. */
export function keepGuess(
  store: AppStore,
  actions: Pick<Actions, 'receiveGuess'>,
  worker: Pick<Follower, 'guessBody'>,
): void {
  let asked: unknown = null;
  store.subscribe(async ({ project, form }) => {
    if (!project || form || asked === project.body || !lacksFirstMeasure(project)) return;
    const { body } = project;
    asked = body;
    const guessed = await worker.guessBody(project);
    // Where none can be made, or a newer one is on its way, the last one stays in sight.
    if (guessed && store.getState().project?.body === body) actions.receiveGuess({ of: body, ...guessed });
  });
}

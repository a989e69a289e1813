import type { Demo } from './services/index.ts';
import { loadProjectRoom } from './services/index.ts';
import type { Actions, AppState, AppStore } from './store/index.ts';
import type { Follower } from './worker/index.ts';

/** Whose body shows where the tapes lie, by figure: demos of usual measures. */
const EXAMPLES = { bust: 'average', chest: 'broad-chest' };

/** While nothing can be made of what is typed, an example of the same figure shows where the tapes lie. */
export function keepExample(
  store: AppStore,
  actions: Pick<Actions, 'receiveExample'>,
  worker: Pick<Follower, 'shapeBody'>,
  demos: readonly Demo[],
): void {
  let asked: string | null = null;
  store.subscribe(async (now) => {
    const figure = lackingFigure(now);
    if (!figure || now.example?.figure === figure || asked === figure) return;
    asked = figure;
    const body = await shapeDemo(
      demos.find(({ id }) => id === EXAMPLES[figure]),
      worker,
    ).catch(() => null);
    // Only a picture: where it cannot be made, there is none, and it is not asked for again.
    if (body) actions.receiveExample(body);
  });
}

/** The figure of a body that is not there yet and cannot be. */
function lackingFigure({ project, form, failure }: AppState) {
  return project && !form && failure ? project.body.figure : null;
}

async function shapeDemo(demo: Demo | undefined, worker: Pick<Follower, 'shapeBody'>) {
  if (!demo) return null;
  const [{ parseProject }, text] = await Promise.all([loadProjectRoom(), demo.load()]);
  const read = parseProject(text);
  return read.ok ? worker.shapeBody(read.value) : null;
}

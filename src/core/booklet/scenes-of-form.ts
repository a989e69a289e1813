import type { Drawing } from '../drawing/index.ts';
import type { Form } from '../form/index.ts';
import { makeScene, type Scene, type SceneChoices, weldPanels } from '../picture/index.ts';
import { scenePartsOf } from './scene-parts.ts';

/** The scenes of one form, each made when it is first asked for: about 0.1 s a scene. */
export interface ScenesOfForm {
  /** Sewn but for these seams of the shell, whose edges gape by so many mm. */
  open(seams: readonly string[], gape?: number): Scene;
  readonly closed: Scene;
  /** All sewn, with tapes on it or on a stand. */
  closedWith(choices: Pick<SceneChoices, 'tapes' | 'stand'>): Scene;
  /** A picture that several steps show, by its name. */
  drawn(name: string, draw: () => Drawing): Drawing;
}

/** How far the edges of a seam that is not sewn yet are drawn apart, mm. */
const GAPE = 70;

export function scenesOfForm(form: Form): ScenesOfForm {
  const parts = scenePartsOf(form);
  const once = rememberAll<Scene>();
  const drawn = rememberAll<Drawing>();
  const sewn = rememberAll<ReturnType<typeof weldPanels>>();
  const closedWith = (choices: Pick<SceneChoices, 'tapes' | 'stand'>): Scene => {
    const { tapes = [], stand } = choices;
    const welded = sewn('', () => weldPanels(form.shell));
    return once(JSON.stringify([tapes.map(({ id }) => id), stand]), () => makeScene(parts, choices, welded));
  };
  return {
    open(seams, gape = GAPE) {
      if (seams.length === 0) return closedWith({});
      return once(`${gape} ${seams.join(' ')}`, () => makeScene(parts, { open: { seams, gape } }));
    },
    get closed() {
      return closedWith({});
    },
    closedWith,
    drawn,
  };
}

/** What is made under a key is made once. */
function rememberAll<T>(): (key: string, make: () => T) => T {
  const made = new Map<string, T>();
  return (key, make) => {
    const known = made.get(key) ?? make();
    made.set(key, known);
    return known;
  };
}

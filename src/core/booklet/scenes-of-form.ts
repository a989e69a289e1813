import type { Form } from '../form/index.ts';
import { makeScene, type Scene } from '../picture/index.ts';
import { scenePartsOf } from './scene-parts.ts';

/** The scenes of one form, each made when it is first asked for: about 0.2 s a scene. */
export interface ScenesOfForm {
  /** Sewn but for these seams of the shell, whose edges gape by so many mm. */
  open(seams: readonly string[], gape?: number): Scene;
  readonly closed: Scene;
}

/** How far the edges of a seam that is not sewn yet are drawn apart, mm. */
const GAPE = 70;

export function scenesOfForm(form: Form): ScenesOfForm {
  const parts = scenePartsOf(form);
  const made = new Map<string, Scene>();
  const open = (seams: readonly string[], gape = GAPE): Scene => {
    const key = `${gape} ${seams.join(' ')}`;
    const scene = made.get(key) ?? makeScene(parts, seams.length > 0 ? { open: { seams, gape } } : {});
    made.set(key, scene);
    return scene;
  };
  return {
    open,
    get closed() {
      return open([]);
    },
  };
}

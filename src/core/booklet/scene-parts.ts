import type { Form } from '../form/index.ts';
import type { SceneParts, Sheet, SheetKind, Showing } from '../picture/index.ts';

/** What of a form a scene is made of. */
export function scenePartsOf(form: Form): SceneParts {
  return { shell: form.shell, ...(form.inside && { shape: form.inside.shape }), arms: form.body.arms };
}

/** Shows the panels and these kinds of other sheets. */
export function panelsAnd(...kinds: readonly SheetKind[]): (sheet: Sheet) => Showing {
  return ({ kind }) => (kind === 'panel' || kinds.includes(kind) ? 'solid' : 'none');
}

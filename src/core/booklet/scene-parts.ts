import { surfaceOfBody } from '../body/index.ts';
import type { Form } from '../form/index.ts';
import type { SceneParts, Sheet, SheetKind, Showing } from '../picture/index.ts';

/** What of a form a scene is made of. */
export function scenePartsOf(form: Form): SceneParts {
  return {
    shell: form.shell,
    ...(form.inside && { shape: form.inside.shape }),
    arms: form.body.arms,
    supports: supportsOf(form),
  };
}

/** Shows the panels and these kinds of other sheets. */
export function panelsAnd(...kinds: readonly SheetKind[]): (sheet: Sheet) => Showing {
  return ({ kind }) => (kind === 'panel' || kinds.includes(kind) ? 'solid' : 'none');
}

/** The shoulder supports where they stand: drawn from in front as they are, each in the plane of the shoulder's middle. */
function supportsOf({ inside, body }: Form): NonNullable<SceneParts['supports']> {
  return (inside?.pieces ?? []).flatMap(({ id, side, draft }) => {
    if (!id.startsWith('shoulder-support') || !draft || side === 'centre') return [];
    const v = body.landmarks.shoulderPointRight.v;
    const [, y] = surfaceOfBody(body).evaluate(Float64Array.of(side === 'right' ? 0 : Math.PI, v));
    const outline = draft.input.edges.flatMap(({ points }) => {
      // The last point of an edge is the first of the next.
      return Array.from({ length: points.length / 2 - 1 }, (_, i) => [points[2 * i], y, points[2 * i + 1]]);
    });
    return [{ side, outline: Float64Array.from(outline.flat()) }];
  });
}

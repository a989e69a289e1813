import type { Result } from '../../core/base/index.ts';
import { type Body, type BodyUncertainty, uncertaintyOfBody } from '../../core/body/index.ts';
import type { Project } from '../../core/project/index.ts';

/** How well the shape of the project's body is known; null when it has none. */
export function tellUncertainty(project: Project, body: Result<Body>): BodyUncertainty | null {
  return body.ok ? uncertaintyOfBody(project.body, body.value) : null;
}

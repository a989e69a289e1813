import { adviseZone } from '../../core/advice/index.ts';
import { layoutOf, surfaceOfProject } from '../../core/assembly/index.ts';
import { type Result, success } from '../../core/base/index.ts';
import type { Body } from '../../core/body/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { ChartPlace } from '../../core/seams/index.ts';
import type { SeamAdvice, StopFlag } from '../calls/index.ts';

/** What would lower the strain at one place; stops when the flag is raised. */
export function adviseSeams(
  project: Project,
  body: Result<Body>,
  place: ChartPlace,
  stopFlag: StopFlag,
): Result<readonly SeamAdvice[]> {
  if (!body.ok) return body;
  const layout = layoutOf(project);
  if (!layout.ok) return layout;
  const advice = adviseZone(surfaceOfProject(project, body.value), body.value, layout.value, place, {
    isCancelled: () => stopFlag !== null && Atomics.load(stopFlag, 0) !== 0,
  });
  if (!advice.ok) return advice;
  return success(
    advice.value.map(({ layout: better, step, message }) => ({ lines: better.lines, step, message })),
    advice.issues,
  );
}

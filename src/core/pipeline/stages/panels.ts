import {
  flattenProblemFromShell,
  layAlongGrain,
  nameFlattenIssues,
  shrinkGirths,
} from '../../assembly/index.ts';
import { success } from '../../base/index.ts';
import { type FlattenOptions, flattenRounds, flattenTogether, unrolling } from '../../flatten/index.ts';
import { cutGirth, doesTakeOff, takenOffBy } from '../../inside/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage, StepContext } from '../step.ts';
import { type FormGiven, formStep } from './form-step.ts';
import { cutStep } from './seams.ts';

const what = phrase('pipeline.panels');

/** What is to be unrolled: smaller in girth than the body by growth and layers, if these were typed in. */
export const problemStep = formStep({
  id: 'problem',
  needs: { cut: cutStep },
  dependsOn: ({ project }) => takenOffBy(project.inside),
  run({ cut: { shell } }, { given: { project } }) {
    const { inside } = project;
    const problem = flattenProblemFromShell(shell);
    if (!doesTakeOff(inside)) return success(problem);
    return success(shrinkGirths(problem, shell, (girth) => cutGirth(girth, inside)));
  },
});

/** Single panels are remembered too, so that a moved seam unrolls only those next to it again. */
export const flatStep = formStep({
  id: 'flat',
  needs: { cut: cutStep, problem: problemStep },
  section: 'seams',
  dependsOn: ({ project: { seams } }) => [seams.lengthBlend, seams.wrinkleAversion],
  *rounds({ problem }, context) {
    for (const jobs of flattenRounds(problem, flattenOptions(context))) {
      const inLots = jobs.map((job) => ({ data: job, lot: job.disk, weight: job.mesh.triangles.length }));
      yield { kind: unrolling, jobs: inLots, what, share: 0.5 };
    }
  },
  run({ cut, problem }, context) {
    const unrolled = flattenTogether(problem, flattenOptions(context));
    return { ...unrolled, issues: nameFlattenIssues(unrolled.issues, cut.shell) };
  },
});

/** What of the project unrolling depends on. */
export function flattenOptions({ given, memoryOf, onProgress, isCancelled }: StepContext<FormGiven>) {
  const { lengthBlend, wrinkleAversion } = given.project.seams;
  return {
    ...(lengthBlend === undefined ? {} : { seamLengthBlend: lengthBlend }),
    ...(wrinkleAversion === undefined ? {} : { wrinkleAversion }),
    memory: memoryOf(unrolling),
    onProgress,
    isCancelled,
  } satisfies FlattenOptions;
}

/** Every panel along its grain, as it is cut. */
export const laidStep = formStep({
  id: 'laid',
  needs: { cut: cutStep, flat: flatStep },
  dependsOn: ({ project }) => project.cloth.grain,
  run: ({ cut, flat }, { given }) => layAlongGrain(cut.shell, flat, given.project.cloth.grain),
});

export const panels: Stage<'panels', FormGiven> = {
  id: 'panels',
  what,
  share: 28,
  steps: [problemStep, flatStep, laidStep],
};

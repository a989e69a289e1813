import { success } from '../../base/index.ts';
import { surfaceOfBody } from '../../body/index.ts';
import { capBoundaryLoops } from '../../mesh/index.ts';
import { bridgeHollows, cutIntoPanels, USUAL_BRIDGING } from '../../seams/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage } from '../step.ts';
import { bodyStep, layoutStep } from './body.ts';
import { type FormGiven, formStep } from './form-step.ts';

const usualTriangles = 20_000;

/** The surface with its hollows bridged, the shell cut from it, and the shell closed with its plates. */
export const cutStep = formStep({
  id: 'cut',
  needs: { body: bodyStep, layout: layoutStep },
  section: 'seams',
  dependsOn: ({ project, options }) => [project.seams.bridging, options.targetTriangles],
  run({ body, layout }, { given: { project, options } }) {
    const surface = bridgeHollows(surfaceOfBody(body), body, project.seams.bridging ?? USUAL_BRIDGING);
    const shell = cutIntoPanels(surface, body, layout, {
      targetTriangles: options.targetTriangles ?? usualTriangles,
    });
    if (!shell.ok) return shell;
    const loops = shell.value.openings.map((opening) => opening.vertices);
    const closedMesh = capBoundaryLoops(shell.value.mesh, loops);
    return success({ surface, shell: shell.value, closedMesh }, shell.issues);
  },
});

export const seams: Stage<'seams', FormGiven> = {
  id: 'seams',
  what: phrase('pipeline.seams'),
  share: 25,
  steps: [cutStep],
};

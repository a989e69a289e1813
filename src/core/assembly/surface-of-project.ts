import { type Body, surfaceOfBody } from '../body/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import type { Project } from '../project/index.ts';
import { bridgeHollows, USUAL_BRIDGING } from '../seams/index.ts';

/** The surface seams are drawn on: that of the body, its hollows bridged as the project says. */
export function surfaceOfProject(project: Project, body: Body): ChartSurface {
  return bridgeHollows(surfaceOfBody(body), body, project.seams.bridging ?? USUAL_BRIDGING);
}

import { flattenProblemFromShell, layoutOf, nameFlattenIssues, prefixIssues } from '../assembly/index.ts';
import { failure, type Result, rememberLast, success } from '../base/index.ts';
import { type Body, surfaceOfBody } from '../body/index.ts';
import {
  createFlattenMemory,
  type FlatDisk,
  type FormStrain,
  flattenTogether,
  measureFormStrain,
} from '../flatten/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import type { Project } from '../project/index.ts';
import {
  bridgeHollows,
  type ControlPoint,
  cutIntoPanels,
  listControlPoints,
  moveControlPoint,
  type SeamEdit,
  type SeamedShell,
  type SeamLine,
  type SnappedPlace,
  USUAL_BRIDGING,
} from '../seams/index.ts';

export interface PreviewOptions {
  /** One point of one line being dragged; absent = the project's lines as they are. */
  readonly edit?: SeamEdit;
  /** Of the whole shell; default 3000. */
  readonly targetTriangles?: number;
}

/** What a maker sees while dragging. Plain data, survives postMessage. */
export interface SeamPreview {
  /** The whole layout with the edit in it: what `project.seams.lines` becomes when the drag is let go. */
  readonly lines: readonly SeamLine[];
  /** Where the dragged point came to lie and what it snapped to. */
  readonly snapped?: SnappedPlace;
  /** Control points of all lines, after the edit. */
  readonly points: readonly ControlPoint[];
  readonly shell: SeamedShell;
  /** Parallel to `shell.panels`. */
  readonly flat: readonly FlatDisk[];
  readonly strain: FormStrain;
}

export type PreviewSeams = (project: Project, options?: PreviewOptions) => Result<SeamPreview>;

const dragTriangles = 3000;

/**
 * Cuts and unrolls a project's seams, with one point moved, on a coarse mesh. Keeps body, surface and unrolled panels
 * between calls, so that only panels next to the moved line are solved again. Issues as of cutting and unrolling, paths as in
 * the project file; a line that cannot be cut so is refused with its reason and the one before stays good.
 * Cost: about 25 ms for twelve panels once warm.
 */
export function createSeamPreview(shapeBody: (project: Project) => Result<Body>): PreviewSeams {
  const memory = createFlattenMemory();
  const rememberSurface = rememberLast<{ body: Body; surface: ChartSurface }>();
  let lastShell: SeamedShell | undefined;
  return (project, options = {}) => {
    const asked = layoutOf(project);
    if (!asked.ok) return asked;
    // 1. Body and surface, hollows filled as in the form itself.
    const share = project.seams.bridging ?? USUAL_BRIDGING;
    const shaped = rememberSurface(JSON.stringify([project.body, share]), () => {
      const body = shapeBody(project);
      if (!body.ok) return body;
      lastShell = undefined;
      const surface = bridgeHollows(surfaceOfBody(body.value), body.value, share);
      return success({ body: body.value, surface });
    });
    if (!shaped.ok) return shaped;
    const { body, surface } = shaped.value;
    // 2. The edit.
    const edited = options.edit
      ? moveControlPoint(surface, body, asked.value, options.edit, lastShell)
      : success({ layout: asked.value, snapped: undefined });
    if (!edited.ok) return failure(prefixIssues(edited.issues, 'seams'));
    const { layout, snapped } = edited.value;
    // 3. Cut and unroll.
    const cut = cutIntoPanels(surface, body, layout, {
      targetTriangles: options.targetTriangles ?? dragTriangles,
    });
    if (!cut.ok) return failure(prefixIssues(cut.issues, 'seams'));
    const shell = cut.value;
    lastShell = shell;
    const unrolled = flattenTogether(flattenProblemFromShell(shell), { ...settingsOf(project), memory });
    const issues = prefixIssues([...cut.issues, ...nameFlattenIssues(unrolled.issues, shell)], 'seams');
    if (!unrolled.ok) return failure(issues);
    const points = listControlPoints(surface, body, layout);
    const disks = shell.panels.map((panel) => panel.mesh);
    return success(
      {
        lines: layout.lines,
        ...(snapped ? { snapped } : {}),
        points: points.ok ? points.value : [],
        shell,
        flat: unrolled.value,
        strain: measureFormStrain(disks, unrolled.value),
      },
      issues,
    );
  };
}

function settingsOf({ seams: { lengthBlend, wrinkleAversion } }: Project) {
  return {
    ...(lengthBlend === undefined ? {} : { seamLengthBlend: lengthBlend }),
    ...(wrinkleAversion === undefined ? {} : { wrinkleAversion }),
  };
}

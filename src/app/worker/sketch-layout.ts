import { flattenProblemFromShell, surfaceOfProject } from '../../core/assembly/index.ts';
import { withUsual } from '../../core/base/index.ts';
import type { Body } from '../../core/body/index.ts';
import { type FlatDisk, flattenTogether, measureFormStrain } from '../../core/flatten/index.ts';
import { findUse, LAYING_OPTIONS } from '../../core/laying/index.ts';
import { measurePolyline } from '../../core/math/index.ts';
import type { ChartSurface } from '../../core/mesh/index.ts';
import { PATTERN_OPTIONS, packOutlines } from '../../core/pattern/index.ts';
import type { Project } from '../../core/project/index.ts';
import { cutIntoPanels, LAYOUTS, type ShellPanel } from '../../core/seams/index.ts';
import { hoursOfShell } from '../../core/sewing/index.ts';
import type { LayoutSketch } from '../calls/index.ts';

/** Enough for a picture of thumb size, and for its strain to a tenth of itself or so. */
const SKETCH_TRIANGLES = 1_500;

type SketchLayout = (project: Project, body: Body, layoutId: string) => LayoutSketch | null;

/**
 * Cuts and unrolls a coarse shell by a layout: its seams, and roughly what it would come to. Null when it does not fit the body. The
 * surface is kept from one layout of a body to the next.
 */
export function createLayoutSketcher(): SketchLayout {
  let last: { readonly body: Body; readonly share: unknown; readonly surface: ChartSurface } | null = null;
  return (project, body, layoutId) => {
    const layout = LAYOUTS.find(({ id }) => id === layoutId);
    if (!layout) return null;
    const share = project.seams.bridging;
    if (last?.body !== body || last.share !== share)
      last = { body, share, surface: surfaceOfProject(project, body) };
    const cut = cutIntoPanels(last.surface, body, layout, { targetTriangles: SKETCH_TRIANGLES });
    if (!cut.ok) return null;
    const { mesh, seams, panels } = cut.value;
    const unrolled = flattenTogether(flattenProblemFromShell(cut.value));
    if (!unrolled.ok) return null;
    const outlines = panels.map((panel, index) => outlineOf(panel, unrolled.value[index]));
    const sewn = seams.reduce((sum, { length3d }) => sum + length3d, 0);
    const round = outlines.reduce((sum, outline) => sum + measurePolyline(outline, true), 0);
    return {
      lines: seams.map(({ points }) =>
        Float64Array.from(
          { length: 3 * points.length },
          (_, i) => mesh.positions[3 * points[Math.floor(i / 3)] + (i % 3)],
        ),
      ),
      strain: measureFormStrain(
        panels.map((panel) => panel.mesh),
        unrolled.value,
      ).p95,
      cloth: lengthOfCloth(outlines, project),
      hours: hoursOfShell(sewn, panels.length, round),
    };
  };
}

/** Closed, n × 2 mm, as it lies upright. */
function outlineOf({ edges }: ShellPanel, { positions }: FlatDisk): Float64Array {
  return Float64Array.from(
    edges.flatMap(({ vertices }) =>
      Array.from(vertices.subarray(0, -1)).flatMap((vertex) => [
        positions[2 * vertex],
        positions[2 * vertex + 1],
      ]),
    ),
  );
}

/** What the panels take of their cloth laid quickly, none turned, with their allowances between them; mm. */
function lengthOfCloth(outlines: readonly Float64Array[], { cloth, laying }: Project): number {
  const { allowance } = withUsual(PATTERN_OPTIONS, cloth);
  const width = withUsual(LAYING_OPTIONS, laying?.shell ?? {}).stockWidth ?? findUse('shell').width;
  const packed = packOutlines(outlines, width, 2 * allowance, 0);
  return 'height' in packed ? packed.height : Number.NaN;
}

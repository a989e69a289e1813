import { failure, type Issue, type Result, success } from '../base/index.ts';
import { hollowMesh, thickenFlat, writeGlb, writeObj, writeStl } from '../export/index.ts';
import type { Form } from '../form/index.ts';
import { boundsOfPoints } from '../math/index.ts';
import { capBoundaryLoops, type Mesh, mergeMeshes } from '../mesh/index.ts';
import type { Piece } from '../pattern/index.ts';
import { type FormFile, filesOfForm } from './files-of-form.ts';
import { type ExportOptions, PROGRAM } from './format-writer.ts';
import { phrase } from './phrases.ts';

/** Scale of the model for a 3D printer, one to this: 700 mm of trunk become 140 mm, which any printer's bed takes. */
const MODEL_SCALE = 5;
const MODEL_SCALES = { least: 2, most: 20 } as const;
/** Wall of the hollow model, mm: four lines of a usual nozzle of 0.4 (common practice). */
const MODEL_WALL = 1.6;
const THINNEST_WALL = 0.4;
/** The wall in full size must stay well under the neck's radius, or the inner surface folds. mm. */
const THICKEST_WALL = 20;
/** Thickness of a flat panel as a solid, mm. */
const PANEL_THICKNESS = 1;

/** The body with its arms, and every flat panel as a thin plate. */
export async function writeGlbFiles(
  form: Form,
  _pieces: readonly Piece[],
  { say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const body = (await filesOfForm(form, say)).filter(({ name }) => name.endsWith('.glb'));
  const meshes = flatPanels(form).map(({ name, mesh }) => ({ name, mesh }));
  const content = await writeGlb({ meshes, generator: PROGRAM });
  return success([...body, { name: 'panels.glb', type: 'model/gltf-binary', content }]);
}

/** The body in full size, a solid and a hollow model of it, and the flat panels as plates. */
export function writeStlFiles(
  form: Form,
  _pieces: readonly Piece[],
  { model }: ExportOptions,
): Result<FormFile[]> {
  const { scale = MODEL_SCALE, wall = MODEL_WALL } = model ?? {};
  const issues = checkModel(scale, wall);
  if (issues.length > 0) return failure(issues);
  const { shell, closedMesh } = form;
  // Open at the base alone, which is level: no material is shut in, and it stands flat.
  const others = shell.openings.filter(({ id }) => id !== 'base').map(({ vertices }) => vertices);
  const hollow = hollowMesh(capBoundaryLoops(shell.mesh, others), wall * scale);
  const options = { scale: 1 / scale, standsOnZero: true };
  return success([
    stlFile('body.stl', writeStl(closedMesh)),
    stlFile(`model-1-to-${scale}.stl`, writeStl(closedMesh, options)),
    stlFile(`model-1-to-${scale}-hollow.stl`, writeStl(hollow, options)),
    stlFile('panels.stl', writeStl(mergeMeshes(flatPanels(form).map(({ mesh }) => mesh)))),
  ]);
}

function checkModel(scale: number, wall: number): Issue[] {
  const issues: Issue[] = [];
  const { least, most } = MODEL_SCALES;
  if (!(scale >= least && scale <= most)) {
    const message = phrase('file.model-scale', { scale, least, most });
    const limit = scale > most ? most : least;
    issues.push({
      code: 'model-scale',
      path: 'model.scale',
      message,
      severity: 'error',
      measured: scale,
      limit,
    });
  }
  if (issues.length > 0) return issues;
  const thickest = THICKEST_WALL / scale;
  if (!(wall >= THINNEST_WALL && wall <= thickest)) {
    const message = phrase('file.model-wall', { wall, scale, least: THINNEST_WALL, most: thickest });
    const limit = wall < THINNEST_WALL ? THINNEST_WALL : thickest;
    issues.push({
      code: 'model-wall',
      path: 'model.wall',
      message,
      severity: 'error',
      measured: wall,
      limit,
    });
  }
  return issues;
}

/** The flat panels, seam to seam without allowance, side by side as plates. */
function flatPanels(form: Form): { readonly name: string; readonly mesh: Mesh }[] {
  const gap = 20;
  let x = 0;
  return form.shell.panels.map(({ id, mesh: { triangles } }, i) => {
    const { positions } = form.flat[i];
    const { minX = 0, minY = 0, maxX = 0 } = boundsOfPoints([positions]) ?? {};
    const mesh = thickenFlat(positions, triangles, PANEL_THICKNESS, x - minX, -minY);
    x += maxX - minX + gap;
    return { name: id, mesh };
  });
}

function stlFile(name: string, content: Uint8Array): FormFile {
  return { name, type: 'model/stl', content };
}

/** The closed body, and the panels as they lie on it with their places on the flat. */
export function writeObjFiles(form: Form): Result<FormFile[]> {
  const panels = form.shell.panels.map((panel, i) => ({
    name: panel.id,
    mesh: panel.mesh,
    flat: form.flat[i].positions,
  }));
  const type = 'model/obj';
  return success([
    { name: 'body.obj', type, content: writeObj([{ name: 'body', mesh: form.closedMesh }]) },
    { name: 'panels.obj', type, content: writeObj(panels) },
  ]);
}

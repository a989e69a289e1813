import { flattenJoined, flattenRegion, picturePatch } from '../../core/advice/index.ts';
import { surfaceOfProject } from '../../core/assembly/index.ts';
import { type Result, type Say, success } from '../../core/base/index.ts';
import type { Body } from '../../core/body/index.ts';
import { writeSvg } from '../../core/export/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { CutWish, FlatCut } from '../calls/index.ts';

/** A region or some panels as one flat piece, with its picture. */
export function flattenCut(project: Project, body: Result<Body>, wish: CutWish, say: Say): Result<FlatCut> {
  if (!body.ok) return body;
  const made =
    'loop' in wish
      ? flattenRegion(surfaceOfProject(project, body.value), body.value, wish.loop)
      : flattenJoined(wish.joined);
  if (!made.ok) return made;
  const { flat, length3d, lengthFlat } = made.value;
  const { areaFlat, p95: strain, min, max } = flat.strain.summary;
  const picture = writeSvg(picturePatch(made.value, project.name, say), { say });
  return success({ area: areaFlat, length3d, lengthFlat, strain, min, max, picture });
}

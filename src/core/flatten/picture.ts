import { type DrawingItem, makePath, pageFromUpright } from '../drawing/index.ts';
import type { Mesh } from '../mesh/index.ts';
import { greaterStrain, strainCss } from './strain-colour.ts';
import type { FlatDisk } from './types.ts';

/** A flat panel with every triangle in the colour of its greater strain; y down, its own origin, true size, mm. */
export function pictureStrain(flat: FlatDisk, disk: Mesh): DrawingItem[] {
  const { triangles } = disk;
  return Array.from({ length: triangles.length / 3 }, (_, f) => {
    const upright = new Float64Array(6);
    for (let k = 0; k < 3; k++) {
      const v = 2 * triangles[3 * f + k];
      upright[2 * k] = flat.positions[v];
      upright[2 * k + 1] = flat.positions[v + 1];
    }
    const fill = strainCss(greaterStrain(flat.strain.major[f], flat.strain.minor[f]));
    return makePath(pageFromUpright(upright, 0, 0), {
      closed: true,
      style: { fill, stroke: fill, strokeWidth: 0.2 },
    });
  });
}

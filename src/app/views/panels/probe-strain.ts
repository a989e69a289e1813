import type { Form } from '../../../core/form/index.ts';

export interface ProbedStrain {
  /** Larger and smaller principal strain there: positive must stretch, negative must shrink. */
  readonly major: number;
  readonly minor: number;
  /** Of the major strain, radians from +x in the piece. */
  readonly direction: number;
}

/** Strain of the triangle under a point of a flat piece (mm, y up); null beside the sewn surface. O(triangles). */
export function probeStrain(form: Form, index: number, x: number, y: number): ProbedStrain | null {
  const disk = form.flat[index];
  const triangles = form.shell.panels[index]?.mesh.triangles;
  if (!disk || !triangles) return null;
  const { positions, strain } = disk;
  const side = (a: number, b: number) =>
    (positions[2 * b] - positions[2 * a]) * (y - positions[2 * a + 1]) -
    (positions[2 * b + 1] - positions[2 * a + 1]) * (x - positions[2 * a]);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    if (side(a, b) < 0 || side(b, c) < 0 || side(c, a) < 0) continue;
    const face = t / 3;
    return { major: strain.major[face], minor: strain.minor[face], direction: strain.direction[face] };
  }
  return null;
}

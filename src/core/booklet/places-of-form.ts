import type { Form } from '../form/index.ts';

/** Height of the shell's lower edge, mm. */
export function heightOfBase(form: Form): number {
  return Math.min(...pointsOfOpening(form, 'base').map(([, , z]) => z));
}

/** The middle of an opening's edge, mm; null for one that this shell does not have. */
export function middleOfOpening(form: Form, id: string): [number, number, number] | null {
  const points = pointsOfOpening(form, id);
  if (points.length === 0) return null;
  const mean = (k: number): number => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  return [mean(0), mean(1), mean(2)];
}

function pointsOfOpening({ shell: { mesh, openings } }: Form, id: string): number[][] {
  const loop = openings.find((opening) => opening.id === id)?.vertices ?? [];
  return Array.from(loop, (v) => [...mesh.positions.subarray(3 * v, 3 * v + 3)]);
}

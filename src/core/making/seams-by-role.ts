import type { OrderedSeam } from '../assembly/index.ts';
import type { Method, Op } from '../sewing/index.ts';
import type { Work } from './work-of-form.ts';

/** Seams of the shell with one of the roles, in the order of sewing. */
export function seamsByRole({ order }: Work, ...roles: OrderedSeam['role'][]): OrderedSeam[] {
  return order.filter(({ role }) => roles.includes(role));
}

export function idsOfSeams(seams: readonly OrderedSeam[]): string[] {
  return seams.map(({ seam }) => seam.id);
}

/** All of them sewn in one way. */
export function joinSeams(seams: readonly OrderedSeam[], how: Method): Op[] {
  return seams.map(({ seam }) => ({ does: 'join', joint: seam.id, how }));
}

/** Whether the line that closes the shell lies in the back. */
export function closesBehind({ order, form }: Work): boolean {
  const last = order[order.length - 1];
  if (last?.role !== 'closing') return false;
  const { points } = last.seam;
  // Sides stand at right angles to front and back.
  return Math.sin(form.shell.chart[2 * points[points.length >> 1]]) < -0.4;
}

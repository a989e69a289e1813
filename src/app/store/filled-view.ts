import { strainColour } from '../../core/flatten/index.ts';
import type { FormFilled } from '../../core/form/index.ts';
import { SLACK, TAUT } from '../../core/statics/index.ts';

/** What is looked at of the filled form: its webs through it, how far its cloth lies off the body, how taut it is, where it may wrinkle. */
export const FILLED_LOOKS = ['webs', 'distance', 'tension', 'wrinkles'] as const;

/** How the filled form is looked at. */
export interface FilledView {
  readonly look: (typeof FILLED_LOOKS)[number];
  /** From the body's own shape, 0, to the filled one, 1. */
  readonly share: number;
  /** Every way from the body five times as long, so that an eye can see it. */
  readonly isEnlarged: boolean;
  /** The body itself over it, as a veil. */
  readonly hasBody: boolean;
}

/** Farther off the body, mm, and under more tension, N/mm, colours stay the same. */
export const MOST_DISTANCE = 8;
export const MOST_TENSION = 1;
const ENLARGED = 5;

/** The points of its shell as they are looked at, #V × 3 mm. */
export function positionsInView(
  { shell, positions }: FormFilled,
  { share, isEnlarged }: FilledView,
): Float64Array {
  const way = share * (isEnlarged ? ENLARGED : 1);
  return shell.mesh.positions.map((from, i) => from + way * (positions[i] - from));
}

/** sRGB, 0 to 1 each; outside of the body is warm, inside cold. */
export function distanceColour(mm: number): [number, number, number] {
  return strainColour(mm, MOST_DISTANCE);
}

/** Of cloth under so much tension, N/mm. */
export function tensionColour(tension: number): [number, number, number] {
  return strainColour(tension, MOST_TENSION);
}

/** How far cloth in a state is from being taut both ways, 0, to 1 where it is slack. */
export function looseness(state: number): number {
  return state === TAUT ? 0 : state === SLACK ? 1 : 0.5;
}

export function loosenessColour(loose: number): [number, number, number] {
  return strainColour(-loose, 1);
}

/** Of its area, how much is taut, wrinkled (taut one way) and slack; together 1. */
export function sharesOfStates({ shell, states }: FormFilled): {
  readonly taut: number;
  readonly wrinkled: number;
  readonly slack: number;
} {
  const { positions, triangles } = shell.mesh;
  let [taut, slack, all] = [0, 0, 0];
  states.forEach((state, t) => {
    const area = areaOfTriangle(positions, triangles.subarray(3 * t, 3 * t + 3));
    all += area;
    if (state === TAUT) taut += area;
    if (state === SLACK) slack += area;
  });
  return { taut: taut / all, wrinkled: 1 - (taut + slack) / all, slack: slack / all };
}

function areaOfTriangle(positions: Float64Array, corners: Uint32Array): number {
  const [a, b, c] = Array.from(corners, (v) => positions.subarray(3 * v, 3 * v + 3));
  const [ux, uy, uz, vx, vy, vz] = [b, c].flatMap((to) => [0, 1, 2].map((k) => to[k] - a[k]));
  return 0.5 * Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
}

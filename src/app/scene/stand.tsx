import { useRef } from 'react';
import type { Form } from '../../core/form/index.ts';
import { StandMaterial, SteelMaterial } from './materials.tsx';
import { GroundShadow } from './studio.tsx';

/** Pole seen between the form and the base, mm: short, or the body would be small in the picture. */
const POLE_SEEN = 62;
const BASE_THICKNESS = 14;
/** Of the base, as a share of the form's lower edge. */
const BASE_SHARE = 0.36;
/** Arms hang at least so far over the floor, mm. */
const OVER_FLOOR = 15;
/** Until the pole is fitted. */
const USUAL_RADIUS = 12.5;
const UPRIGHT = [Math.PI / 2, 0, 0] as const;
/** Above the lowest point, what still belongs to the lower edge, mm. */
const FOOT = 40;

/** Where a form stands: the middle and extent of its lower edge, and the floor under its stand, mm. */
export interface Footing {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly width: number;
  readonly depth: number;
  readonly floor: number;
}

export function footingOf({ shell, body }: Form): Footing {
  const { positions } = shell.mesh;
  const z = lowestOf(positions);
  const [x, y] = [
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  ] as [[number, number], [number, number]];
  for (let i = 0; i < positions.length; i += 3) {
    if (positions[i + 2]! > z + FOOT) continue;
    widen(x, positions[i]!);
    widen(y, positions[i + 1]!);
  }
  const hand = Math.min(...body.arms.map(({ points }) => lowestOf(points)));
  return {
    x: (x[0] + x[1]) / 2,
    y: (y[0] + y[1]) / 2,
    z,
    width: x[1] - x[0],
    depth: y[1] - y[0],
    floor: Math.min(z - POLE_SEEN - BASE_THICKNESS, hand - OVER_FLOOR),
  };
}

function lowestOf(points: Float64Array): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 2; i < points.length; i += 3) lowest = Math.min(lowest, points[i]!);
  return lowest;
}

function widen(range: [number, number], value: number): void {
  range[0] = Math.min(range[0], value);
  range[1] = Math.max(range[1], value);
}

/** A low stand under the form, its pole where the form's own is, and the shadow of both. */
export function Stand({ form, footing }: { readonly form: Form; readonly footing: Footing }) {
  const pole = useLastPole(form);
  const { x, z, width, depth, floor } = footing;
  const y = pole?.y ?? footing.y;
  const radius = pole?.radius ?? USUAL_RADIUS;
  const base = BASE_SHARE * width;
  const top = floor + BASE_THICKNESS;
  return (
    <>
      <mesh position={[0, y, (z + top) / 2]} rotation={UPRIGHT} raycast={() => null}>
        <cylinderGeometry args={[radius, radius, z - top, 32]} />
        <SteelMaterial />
      </mesh>
      <mesh position={[0, y, floor + BASE_THICKNESS / 2]} rotation={UPRIGHT} raycast={() => null}>
        <cylinderGeometry args={[base - 4, base, BASE_THICKNESS, 64]} />
        <StandMaterial />
      </mesh>
      <GroundShadow x={x} y={y} z={floor} width={width} depth={Math.max(depth, 2.1 * base)} />
    </>
  );
}

/** Drafts know of no pole: it stays where it last was, so that it does not jump at every edit. */
function useLastPole(form: Form) {
  const kept = useRef(form.inside?.shape.pole);
  if (form.inside) kept.current = form.inside.shape.pole;
  return kept.current;
}

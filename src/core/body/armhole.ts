import { ARMPIT_V, KNOT, type ShapeEvaluator } from './rails.ts';

/** The plane of an armhole: n · p = offset, n pointing outwards. */
export interface ArmholePlane {
  readonly normal: readonly [number, number, number];
  readonly offset: number;
}

/** Points of a loop; index 0 is the armpit, then front break, shoulder point, back break. */
export const ARMHOLE_POINTS = 64;

/** The plane through armpit and shoulder point, turned by `yaw` (radians, front inwards when positive). */
export function armholePlane(evaluator: ShapeEvaluator, side: 'right' | 'left', yaw: number): ArmholePlane {
  const u = side === 'right' ? 0 : Math.PI;
  const p = new Float64Array(6);
  evaluator.point(u, ARMPIT_V, p, 0);
  evaluator.point(u, KNOT.shoulderPoint, p, 3);
  // n ⟂ (shoulder − armpit); its y component is set by the yaw.
  const outward = side === 'right' ? 1 : -1;
  const ny = Math.tan(yaw);
  const dz = p[5] - p[2];
  const nz = -(outward * (p[3] - p[0]) + ny * (p[4] - p[1])) / dz;
  const normal = [outward, ny, nz] as const;
  return { normal, offset: normal[0] * p[0] + normal[1] * p[1] + normal[2] * p[2] };
}

/**
 * The armhole: where the plane cuts the arm stump. Each point is found along a ray of the chart from the stump's
 * middle, by bracketing and then regula falsi (Illinois). The loop runs counter-clockwise in (u, v), from the armpit.
 * Returns the chart loop (n × 2), or null when the plane does not cut an oval from the stump.
 */
export function traceArmhole(
  evaluator: ShapeEvaluator,
  plane: ArmholePlane,
  side: 'right' | 'left',
  pointCount = ARMHOLE_POINTS,
): Float64Array | null {
  const loop = new Float64Array(2 * pointCount);
  const middle = 0.5 * (ARMPIT_V + KNOT.shoulderPoint);
  const halfHeight = 0.5 * (KNOT.shoulderPoint - ARMPIT_V);
  const centre = side === 'right' ? 0 : Math.PI;
  const p = new Float64Array(3);
  const depth = (du: number, dv: number, t: number): number => {
    evaluator.point(centre + t * du, middle + t * dv, p);
    return plane.normal[0] * p[0] + plane.normal[1] * p[1] + plane.normal[2] * p[2] - plane.offset;
  };
  if (!(depth(0, 0, 0) > 0)) return null;
  for (let i = 0; i < pointCount; i++) {
    // Counter-clockwise from straight down: right = towards larger u.
    const angle = -Math.PI / 2 + (2 * Math.PI * i) / pointCount;
    const du = 0.75 * Math.cos(angle);
    const dv = halfHeight * Math.sin(angle);
    const t = i % (pointCount / 2) === 0 ? 1 : findCrossing((x) => depth(du, dv, x));
    if (Number.isNaN(t)) return null;
    loop[2 * i] = centre + t * du;
    loop[2 * i + 1] = middle + t * dv;
  }
  return loop;
}

/** First t where f falls through 0, f(0) > 0; NaN when none is found up to 1.6. */
function findCrossing(f: (t: number) => number): number {
  const step = 0.2;
  let low = 0;
  let fLow = f(0);
  for (let high = step; high < 1.7; high += step) {
    const fHigh = f(high);
    if (fHigh <= 0) return refineCrossing(f, low, fLow, high, fHigh);
    low = high;
    fLow = fHigh;
  }
  return Number.NaN;
}

function refineCrossing(f: (t: number) => number, a: number, fa: number, b: number, fb: number): number {
  let side = 0;
  for (let i = 0; i < 60 && Math.abs(b - a) > 1e-13; i++) {
    const t = (a * fb - b * fa) / (fb - fa);
    const ft = f(t);
    if (Math.abs(ft) < 1e-11) return t;
    if (ft > 0) {
      a = t;
      fa = ft;
      if (side === 1) fb *= 0.5;
      side = 1;
    } else {
      b = t;
      fb = ft;
      if (side === -1) fa *= 0.5;
      side = -1;
    }
  }
  return 0.5 * (a + b);
}

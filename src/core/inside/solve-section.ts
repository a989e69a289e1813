import { distanceInPlane, factorDense, solveDense } from '../math/index.ts';
import { type SpanArc, solveSpanArc } from './span-arc.ts';

/** A closed sleeve under pressure, cut across: held points counter-clockwise, spans of cloth between, ties. mm. */
export interface SectionProblem {
  /** Unstretched length of the cloth from point k to point k + 1 (the last one back to point 0). */
  readonly spans: Float64Array;
  /** Where to start, n × 2, counter-clockwise; two points or more. */
  readonly start: Float64Array;
  readonly ties: readonly SectionTie[];
  /** Pulls of a like section, to start from; parallel to the ties. */
  readonly pulls?: ArrayLike<number>;
  /** Pressure over cloth stiffness, p/(Et), 1/mm; default 0, cloth that does not stretch. */
  readonly stretch?: number;
}

/** A tie that can pull but not push: between two points, or from a point to a fixed place. */
export interface SectionTie {
  readonly from: number;
  readonly to: number | readonly [x: number, y: number];
  /** Longest it can be, mm. */
  readonly length: number;
}

export interface SectionBalance {
  /** n × 2. */
  readonly points: Float64Array;
  /** Parallel to the spans. */
  readonly arcs: readonly SpanArc[];
  /** Parallel to the ties: force per unit of pressure (mm), 0 when slack, and how far the ends are nearer than the tie is long. */
  readonly ties: readonly { readonly pull: number; readonly slack: number; readonly isTaut: boolean }[];
  /** Enclosed, mm². */
  readonly area: number;
  /** Largest force per unit of pressure left unbalanced at a point, mm; the solve aims at 1e-9. */
  readonly residual: number;
  readonly converged: boolean;
}

const FORCE_TOLERANCE = 1e-9;
/** A tie shorter than its ends are apart by this counts as not holding, mm. */
const LENGTH_TOLERANCE = 1e-9;
const ROUNDS = 40;
/** A pivot of the factored second derivatives below this counts as none. */
const LEAST_PIVOT = 1e-14;
const NEWTON_STEPS = 60;
/**
 * First penalty on an overlong tie, per mm; grows when ties hold badly. Of 20, 100, 500, 1500 and 5000 the one with the
 * fewest evaluations on six demo bodies: a third fewer than 20, which takes more rounds, and half of 5000, where steps stall.
 */
const FIRST_PENALTY = 500;

/**
 * The exact balance of the sleeve: the held points where the area, less the energy of the cloth, is largest while no tie
 * is longer than it may be. Each free span is an arc (see `solveSpanArc`), so only the points are unknown.
 * Augmented Lagrangian for the inequalities (Nocedal & Wright, Numerical Optimization, 2nd ed., §17.4), damped Newton
 * inside; the multiplier of a tie is its pull over the pressure. Rigid motion is left where it starts. O(n³) a step,
 * 10 to 40 steps. Not converging is told in `converged` and `residual`.
 */
export function solveSection(problem: SectionProblem): SectionBalance {
  const { ties, spans, stretch = 0 } = problem;
  const points = keepSpansPossible(problem);
  const pulls = Float64Array.from(ties, (_, j) => problem.pulls?.[j] ?? 0);
  const room = roomFor(points.length);
  let penalty = FIRST_PENALTY;
  let worst = Number.POSITIVE_INFINITY;
  let force = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    force = balanceAtPulls(problem, points, pulls, penalty, room);
    let violation = 0;
    for (let j = 0; j < ties.length; j++) {
      const over = measureTie(ties[j], points).length - ties[j].length;
      violation = Math.max(violation, pulls[j] > 0 || over > 0 ? Math.abs(over) : 0);
      pulls[j] = Math.max(0, pulls[j] + penalty * over);
    }
    if (violation < LENGTH_TOLERANCE && force < FORCE_TOLERANCE) break;
    if (violation > 0.1 * worst) penalty = Math.min(1e4, penalty * 4);
    worst = violation;
  }
  const arcs = arcsOf(points, spans, stretch);
  return {
    points,
    arcs,
    ties: ties.map((tie, j) => {
      const slack = tie.length - measureTie(tie, points).length;
      return { pull: pulls[j], slack: Math.max(0, slack), isTaut: pulls[j] > 0 };
    }),
    area: arcs.reduce((sum, arc) => sum + arc.area, areaOfPoints(points)),
    residual: force,
    converged: force < 1e-6 && worst < 1e-6,
  };
}

/** Starts with every chord a little shorter than its span: shrinks the start about its middle if needed. */
function keepSpansPossible({ start, spans, stretch = 0 }: SectionProblem): Float64Array {
  const points = start.slice();
  if (stretch > 0) return points;
  const n = spans.length;
  let scale = 1;
  for (let k = 0; k < n; k++) {
    const m = (k + 1) % n;
    const chord = distanceInPlane(start, k, m);
    scale = Math.min(scale, (0.9999 * spans[k]) / chord);
  }
  if (scale === 1) return points;
  let [x, y] = [0, 0];
  for (let k = 0; k < n; k++) [x, y] = [x + start[2 * k] / n, y + start[2 * k + 1] / n];
  for (let k = 0; k < n; k++) {
    points[2 * k] = x + scale * (start[2 * k] - x);
    points[2 * k + 1] = y + scale * (start[2 * k + 1] - y);
  }
  return points;
}

/** Arrays that every Newton step fills anew; making them each time would cost more than the step. */
function roomFor(n: number) {
  return {
    gradient: new Float64Array(n),
    hessian: new Float64Array(n * n),
    factor: new Float64Array(n * n),
    trial: new Float64Array(n),
    step: new Float64Array(n),
  };
}

type Room = ReturnType<typeof roomFor>;

/** Damped Newton on energy − area + penalties at fixed multipliers; moves `points`, returns the largest force left. */
function balanceAtPulls(
  problem: SectionProblem,
  points: Float64Array,
  pulls: Float64Array,
  penalty: number,
  { gradient, hessian, trial, step, factor }: Room,
): number {
  const n = points.length;
  let damping = 1e-6;
  let value = evaluateSection(problem, points, pulls, penalty, gradient, hessian);
  let force = largest(gradient);
  for (let i = 0; i < NEWTON_STEPS && force > 0.1 * FORCE_TOLERANCE; i++) {
    let isAccepted = false;
    for (let tries = 0; tries < 24 && !isAccepted; tries++) {
      factor.set(hessian);
      for (let k = 0; k < n; k++) factor[k * n + k] += damping;
      if (factorDense(factor, n, LEAST_PIVOT)) {
        solveDense(factor, gradient, step);
        for (let k = 0; k < n; k++) trial[k] = points[k] - step[k];
        const next = evaluateSection(problem, trial, pulls, penalty, null, null);
        // Near the balance the value stands still in its last digits: there the step is taken on trust.
        if (next <= value + 1e-13 * Math.abs(value)) {
          // Faster than `set` for a few numbers.
          for (let k = 0; k < n; k++) points[k] = trial[k];
          isAccepted = true;
        }
      }
      damping = isAccepted ? Math.max(1e-9, damping * 0.1) : damping * 10;
    }
    if (!isAccepted) break;
    value = evaluateSection(problem, points, pulls, penalty, gradient, hessian);
    force = largest(gradient);
  }
  return force;
}

function largest(values: Float64Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) most = Math.max(most, Math.abs(values[i]));
  return most;
}

/** Potential per unit of pressure; fills gradient and Hessian when given. Infinity where a chord outgrows its span. */
function evaluateSection(
  { spans, ties, stretch = 0 }: SectionProblem,
  points: Float64Array,
  pulls: Float64Array,
  penalty: number,
  gradient: Float64Array | null,
  hessian: Float64Array | null,
): number {
  const n = spans.length;
  gradient?.fill(0);
  hessian?.fill(0);
  let value = -areaOfPoints(points);
  for (let k = 0; k < n; k++) {
    const m = (k + 1) % n;
    // 1. The polygon of the points: −½ (x_k y_m − x_m y_k).
    if (gradient && hessian) addPolygonEdge(points, 2 * k, 2 * m, gradient, hessian);
    // 2. The bow of the span over its chord; d(energy − area)/dc = pull.
    const dx = points[2 * m] - points[2 * k];
    const dy = points[2 * m + 1] - points[2 * k + 1];
    const chord = Math.sqrt(dx * dx + dy * dy);
    if (stretch === 0 && chord >= spans[k] * (1 - 1e-13)) return Number.POSITIVE_INFINITY;
    const arc = solveSpanArc(spans[k], Math.max(chord, 1e-12), stretch);
    value += arc.energy - arc.area;
    if (gradient && hessian)
      addRadial(gradient, hessian, 2 * k, 2 * m, dx, dy, chord, arc.pull, arc.stiffness);
  }
  // 3. Ties that are too long, or pull already.
  for (let j = 0; j < ties.length; j++) {
    const { dx, dy, length } = measureTie(ties[j], points);
    const pull = pulls[j] + penalty * (length - ties[j].length);
    if (pull <= 0) {
      value -= (pulls[j] * pulls[j]) / (2 * penalty);
      continue;
    }
    value += (pull * pull - pulls[j] * pulls[j]) / (2 * penalty);
    const to = ties[j].to;
    if (gradient && hessian)
      addRadial(
        gradient,
        hessian,
        2 * ties[j].from,
        typeof to === 'number' ? 2 * to : -1,
        dx,
        dy,
        length,
        pull,
        penalty,
      );
  }
  return value;
}

function addPolygonEdge(
  p: Float64Array,
  a: number,
  b: number,
  gradient: Float64Array,
  h: Float64Array,
): void {
  const n = p.length;
  gradient[a] -= 0.5 * p[b + 1];
  gradient[a + 1] += 0.5 * p[b];
  gradient[b] += 0.5 * p[a + 1];
  gradient[b + 1] -= 0.5 * p[a];
  h[a * n + b + 1] -= 0.5;
  h[(b + 1) * n + a] -= 0.5;
  h[(a + 1) * n + b] += 0.5;
  h[b * n + a + 1] += 0.5;
}

/** Adds f(length of q − p): slope f′, curvature f″; `b` < 0 means that q does not move. */
function addRadial(
  gradient: Float64Array,
  h: Float64Array,
  a: number,
  b: number,
  dx: number,
  dy: number,
  length: number,
  slope: number,
  curvature: number,
): void {
  const n = gradient.length;
  const ux = dx / length;
  const uy = dy / length;
  const across = slope / length;
  const xx = curvature * ux * ux + across * uy * uy;
  const xy = (curvature - across) * ux * uy;
  const yy = curvature * uy * uy + across * ux * ux;
  gradient[a] -= slope * ux;
  gradient[a + 1] -= slope * uy;
  addBlock(h, n, a, a, xx, xy, yy);
  if (b < 0) return;
  gradient[b] += slope * ux;
  gradient[b + 1] += slope * uy;
  addBlock(h, n, b, b, xx, xy, yy);
  addBlock(h, n, a, b, -xx, -xy, -yy);
  addBlock(h, n, b, a, -xx, -xy, -yy);
}

/** Adds a symmetric 2 × 2 block to an n × n matrix. */
function addBlock(
  h: Float64Array,
  n: number,
  i: number,
  j: number,
  xx: number,
  xy: number,
  yy: number,
): void {
  h[i * n + j] += xx;
  h[i * n + j + 1] += xy;
  h[(i + 1) * n + j] += xy;
  h[(i + 1) * n + j + 1] += yy;
}

function measureTie(tie: SectionTie, points: Float64Array): { dx: number; dy: number; length: number } {
  const x = typeof tie.to === 'number' ? points[2 * tie.to] : tie.to[0];
  const y = typeof tie.to === 'number' ? points[2 * tie.to + 1] : tie.to[1];
  const dx = x - points[2 * tie.from];
  const dy = y - points[2 * tie.from + 1];
  return { dx, dy, length: Math.sqrt(dx * dx + dy * dy) };
}

function areaOfPoints(points: Float64Array): number {
  let twice = 0;
  for (let a = 0; a < points.length; a += 2) {
    const b = (a + 2) % points.length;
    twice += points[a] * points[b + 1] - points[b] * points[a + 1];
  }
  return 0.5 * twice;
}

function arcsOf(points: Float64Array, spans: Float64Array, stretch: number): SpanArc[] {
  return Array.from(spans, (length, k) => {
    const a = 2 * k;
    const b = 2 * ((k + 1) % spans.length);
    return solveSpanArc(length, Math.hypot(points[b] - points[a], points[b + 1] - points[a + 1]), stretch);
  });
}

export { convexHull } from './convex-hull.ts';
export { cubicSplineMoments, evaluateCubicSpline, findSplineInterval } from './cubic-spline.ts';
export {
  type LeastSquaresOptions,
  type LeastSquaresProblem,
  type LeastSquaresSolution,
  minimiseLeastSquares,
} from './minimise-least-squares.ts';

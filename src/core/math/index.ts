export { convexHull } from './convex-hull.ts';
export { cubicSplineMoments, evaluateCubicSpline, findSplineInterval } from './cubic-spline.ts';
export { Ldlt, type LdltReport } from './ldlt.ts';
export { analyseLdlt, type LdltSymbolic } from './ldlt-symbolic.ts';
export {
  isInsidePolygon,
  measureDistanceToPolyline,
  measurePolygonArea,
  measurePolyline,
} from './measure-polyline.ts';
export {
  type LeastSquaresOptions,
  type LeastSquaresProblem,
  type LeastSquaresSolution,
  minimiseLeastSquares,
} from './minimise-least-squares.ts';
export {
  doSegmentsTouch,
  intersectSegments,
  locateInPolygon,
  orientation,
  type SegmentCrossing,
} from './predicates.ts';
export { findSlot, patternFromPairs, type SparsePattern } from './sparse-pattern.ts';
export { thinPolyline } from './thin-polyline.ts';
export { weightedPercentiles } from './weighted-percentiles.ts';

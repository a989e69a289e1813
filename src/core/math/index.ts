export { type Bounds, boundsOfPoints, boundsOfPolyline } from './bounds-of-points.ts';
export { clamp } from './clamp.ts';
export { convexHull } from './convex-hull.ts';
export { clampKnots, cubicSpanPolynomials, grevilleAbscissae } from './cubic-b-spline.ts';
export { cubicSplineMoments, evaluateCubicSpline, findSplineInterval } from './cubic-spline.ts';
export { distance, distanceInPlane, distanceInSpace } from './distances.ts';
export { Ldlt, type LdltReport } from './ldlt.ts';
export { analyseLdlt, type BlockSize, type LdltSymbolic } from './ldlt-symbolic.ts';
export {
  isInsidePolygon,
  measureAlong,
  measureDistanceToPolyline,
  measurePolygonArea,
  measurePolyline,
  nearestAlong,
  reversePolyline,
  shareOfSegment,
} from './measure-polyline.ts';
export {
  type LeastSquaresOptions,
  type LeastSquaresProblem,
  type LeastSquaresSolution,
  minimiseLeastSquares,
} from './minimise-least-squares.ts';
export { orderMinimumDegree } from './order-minimum-degree.ts';
export { orderNestedDissection } from './order-nested-dissection.ts';
export {
  doSegmentsTouch,
  intersectSegments,
  locateInPolygon,
  orientation,
  type SegmentCrossing,
} from './predicates.ts';
export {
  type BandMatrix,
  factorBanded,
  makeBandMatrix,
  multiplyBanded,
  sliceBand,
  solveLowerBanded,
  solveUpperBanded,
} from './solve-banded.ts';
export { factorDense, solveDense, solveLowerDense } from './solve-dense.ts';
export { findSlot, patternFromPairs, type SparsePattern } from './sparse-pattern.ts';
export { thinPolyline } from './thin-polyline.ts';
export { vectorFronts } from './vector-fronts.ts';
export { add, cross, dot, normalise, scale, subtract, type Vector } from './vectors.ts';
export { weightedPercentiles } from './weighted-percentiles.ts';

export { convexHull } from './convex-hull.ts';
export { cubicSplineMoments, evaluateCubicSpline, findSplineInterval } from './cubic-spline.ts';
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

/** Area of a simple polygon by the trapezoids under its sides; positive when it runs counter-clockwise with y up. */
export function measurePolygonArea(corners: readonly (readonly [number, number])[]): number {
  let area = 0;
  for (const [i, [x1, y1]] of corners.entries()) {
    const [x0, y0] = corners[(i + corners.length - 1) % corners.length];
    area -= ((y0 + y1) / 2) * (x1 - x0);
  }
  return area;
}

/** SVG path of a polyline in a piece's own plane: n × 2 mm, y up. */
export function pathOf(points: Float64Array, isClosed: boolean): string {
  let d = '';
  for (let i = 0; i < points.length; i += 2) {
    d += `${i === 0 ? 'M' : 'L'}${points[i].toFixed(2)} ${(-points[i + 1]).toFixed(2)}`;
  }
  return isClosed ? `${d}Z` : d;
}

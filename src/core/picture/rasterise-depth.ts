/** What is seen at each pixel. */
export interface DepthImage {
  readonly columns: number;
  readonly rows: number;
  /** Page place of the upper left corner, and pixels a mm of paper. */
  readonly left: number;
  readonly top: number;
  readonly perMm: number;
  /** columns × rows: number of the triangle that is seen, −1: none. */
  readonly triangles: Int32Array;
  /** Whether it is seen from its right side (its corners run counter-clockwise to the viewer). */
  readonly isRightSide: Uint8Array;
  /** How near it is, mm in space; −∞ where there is none. */
  readonly depths: Float64Array;
}

/** A border of empty pixels round the image, so that every region has an outside. */
const MARGIN = 2;

/**
 * Triangles (`seen` #V × 3 as `Projector.project` makes them) as pixels, the nearest at each pixel's middle. Of equal ones the first
 * stays, so that the same triangles give the same image. O(#F + pixels covered).
 */
export function rasteriseDepth(seen: Float64Array, triangles: ArrayLike<number>, perMm: number): DepthImage {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let e = 0; e < triangles.length; e++) {
    const v = 3 * triangles[e];
    minX = Math.min(minX, seen[v]);
    maxX = Math.max(maxX, seen[v]);
    minY = Math.min(minY, seen[v + 1]);
    maxY = Math.max(maxY, seen[v + 1]);
  }
  if (triangles.length === 0) [minX, minY, maxX, maxY] = [0, 0, 0, 0];
  const left = minX - MARGIN / perMm;
  const top = minY - MARGIN / perMm;
  const columns = Math.ceil((maxX - left) * perMm) + MARGIN;
  const rows = Math.ceil((maxY - top) * perMm) + MARGIN;
  const image = {
    columns,
    rows,
    left,
    top,
    perMm,
    triangles: new Int32Array(columns * rows).fill(-1),
    isRightSide: new Uint8Array(columns * rows),
    depths: new Float64Array(columns * rows).fill(-Infinity),
  };
  for (let f = 0; f < triangles.length / 3; f++) fillTriangle(image, seen, triangles, f);
  return image;
}

function fillTriangle(image: DepthImage, seen: Float64Array, triangles: ArrayLike<number>, f: number): void {
  const { columns, left, top, perMm, depths } = image;
  const a = 3 * triangles[3 * f];
  const b = 3 * triangles[3 * f + 1];
  const c = 3 * triangles[3 * f + 2];
  // In pixels, whole numbers in the pixels' middles.
  const ax = (seen[a] - left) * perMm - 0.5;
  const ay = (seen[a + 1] - top) * perMm - 0.5;
  const ux = (seen[b] - seen[a]) * perMm;
  const uy = (seen[b + 1] - seen[a + 1]) * perMm;
  const vx = (seen[c] - seen[a]) * perMm;
  const vy = (seen[c + 1] - seen[a + 1]) * perMm;
  const area = ux * vy - uy * vx;
  if (area === 0) return;
  const depthU = seen[b + 2] - seen[a + 2];
  const depthV = seen[c + 2] - seen[a + 2];
  // The page's y runs down: counter-clockwise to the viewer is a negative area.
  const isRightSide = area < 0 ? 1 : 0;
  const lastRow = Math.floor(ay + Math.max(0, uy, vy));
  const first = Math.ceil(ax + Math.min(0, ux, vx));
  const last = Math.floor(ax + Math.max(0, ux, vx));
  for (let row = Math.ceil(ay + Math.min(0, uy, vy)); row <= lastRow; row++) {
    const py = row - ay;
    for (let column = first; column <= last; column++) {
      const px = column - ax;
      const s = (px * vy - py * vx) / area;
      const t = (ux * py - uy * px) / area;
      if (s < 0 || t < 0 || s + t > 1) continue;
      const depth = seen[a + 2] + s * depthU + t * depthV;
      const pixel = row * columns + column;
      if (depth <= depths[pixel]) continue;
      depths[pixel] = depth;
      image.triangles[pixel] = f;
      image.isRightSide[pixel] = isRightSide;
    }
  }
}

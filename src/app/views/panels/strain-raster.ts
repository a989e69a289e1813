import type { FlatDisk } from '../../../core/flatten/index.ts';
import { boundsOfPolyline, clamp } from '../../../core/math/index.ts';
import { greaterStrain, STRAIN_LIMIT, strainColour } from '../../store/index.ts';

/** Pixels of one piece's strain, and where they lie in the piece's own plane, y down, mm. */
export interface StrainRaster {
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  readonly columns: number;
  readonly rows: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const PIXELS_PER_MM = 1.5;
const SHADES = 256;

/** Strain averaged to vertices and blended across each triangle; outside the piece the picture is clear. */
export function rasterStrain(disk: FlatDisk, triangles: Uint32Array): StrainRaster {
  const { positions } = disk;
  const { minX: left, minY, maxX: right, maxY } = boundsOfPolyline(positions);
  const [top, bottom] = [-maxY, -minY];
  const columns = Math.max(1, Math.ceil((right - left) * PIXELS_PER_MM));
  const rows = Math.max(1, Math.ceil((bottom - top) * PIXELS_PER_MM));
  const pixels = new Uint8ClampedArray(columns * rows * 4);
  const palette = strainPalette();
  const strain = strainAtVertices(disk, triangles);
  const px = (v: number) => (positions[2 * v] - left) * PIXELS_PER_MM - 0.5;
  const py = (v: number) => (-positions[2 * v + 1] - top) * PIXELS_PER_MM - 0.5;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    const [ax, ay, bx, by, cx, cy] = [px(a), py(a), px(b), py(b), px(c), py(c)];
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    if (area === 0) continue;
    const lastRow = Math.min(rows - 1, Math.ceil(Math.max(ay, by, cy)));
    const lastColumn = Math.min(columns - 1, Math.ceil(Math.max(ax, bx, cx)));
    for (let y = Math.max(0, Math.floor(Math.min(ay, by, cy))); y <= lastRow; y++) {
      for (let x = Math.max(0, Math.floor(Math.min(ax, bx, cx))); x <= lastColumn; x++) {
        const wa = ((bx - x) * (cy - y) - (by - y) * (cx - x)) / area;
        const wb = ((cx - x) * (ay - y) - (cy - y) * (ax - x)) / area;
        const wc = 1 - wa - wb;
        if (wa < -1e-3 || wb < -1e-3 || wc < -1e-3) continue;
        const value = wa * strain[a] + wb * strain[b] + wc * strain[c];
        const shade = Math.round(((value / STRAIN_LIMIT + 1) / 2) * (SHADES - 1));
        const from = 3 * clamp(shade, 0, SHADES - 1);
        const to = 4 * (y * columns + x);
        pixels[to] = palette[from];
        pixels[to + 1] = palette[from + 1];
        pixels[to + 2] = palette[from + 2];
        pixels[to + 3] = 255;
      }
    }
  }
  return {
    pixels,
    columns,
    rows,
    x: left,
    y: top,
    width: columns / PIXELS_PER_MM,
    height: rows / PIXELS_PER_MM,
  };
}

function strainAtVertices({ positions, strain }: FlatDisk, triangles: Uint32Array): Float64Array {
  const sum = new Float64Array(positions.length / 2);
  const count = new Uint16Array(sum.length);
  for (let f = 0; f < strain.major.length; f++) {
    const value = greaterStrain(strain.major[f], strain.minor[f]);
    for (let k = 0; k < 3; k++) {
      sum[triangles[3 * f + k]] += value;
      count[triangles[3 * f + k]] += 1;
    }
  }
  return sum.map((total, v) => total / Math.max(1, count[v]));
}

function strainPalette(): Uint8Array {
  const palette = new Uint8Array(3 * SHADES);
  for (let i = 0; i < SHADES; i++) {
    const colour = strainColour(((i / (SHADES - 1)) * 2 - 1) * STRAIN_LIMIT);
    palette.set(
      colour.map((channel) => Math.round(channel * 255)),
      3 * i,
    );
  }
  return palette;
}

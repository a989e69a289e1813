import { clamp } from '../math/index.ts';

/**
 * Points of a hexagonal lattice inside an outline (n × 2, may contain slits), none nearer than `clearance` to it.
 * The rows are spread so that they fit the outline's height. O(points · near outline segments).
 */
export function fillOutline(outline: Float64Array, spacing: number, clearance: number): Float64Array {
  const n = outline.length / 2;
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < n; i++) {
    left = Math.min(left, outline[2 * i]);
    right = Math.max(right, outline[2 * i]);
    low = Math.min(low, outline[2 * i + 1]);
    high = Math.max(high, outline[2 * i + 1]);
  }
  const rowCount = Math.max(1, Math.round((high - low) / (spacing * Math.sqrt(0.75))));
  const rowStep = (high - low) / rowCount;
  const near = binSegments(outline, Math.max(spacing, clearance));
  const points: number[] = [];
  for (let j = 1; j < rowCount; j++) {
    const y = low + j * rowStep;
    const crossings = crossRow(outline, y);
    for (let c = 0; c + 1 < crossings.length; c += 2) {
      const [from, to] = [crossings[c], crossings[c + 1]];
      // Equal steps from border to border, every other row moved by half a step.
      const steps = Math.max(1, Math.round((to - from) / spacing));
      const step = (to - from) / steps;
      for (let k = j % 2 === 0 ? 1 : 0.5; k < steps; k++) {
        const x = from + k * step;
        if (isClear(near, outline, x, y, clearance)) points.push(x, y);
      }
    }
  }
  return Float64Array.from(points);
}

/** Where a horizontal line crosses the outline, rising. Half-open in y, so corners count once. */
function crossRow(outline: Float64Array, y: number): number[] {
  const out: number[] = [];
  const n = outline.length / 2;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const ay = outline[2 * j + 1];
    const by = outline[2 * i + 1];
    if (ay > y === by > y) continue;
    out.push(outline[2 * j] + ((y - ay) / (by - ay)) * (outline[2 * i] - outline[2 * j]));
  }
  return out.sort((a, b) => a - b);
}

interface SegmentBins {
  readonly size: number;
  readonly bins: ReadonlyMap<number, readonly number[]>;
}

const BIN_ROW = 1 << 20;

function binKey(x: number, y: number, size: number): number {
  return (Math.floor(y / size) + (BIN_ROW >> 1)) * BIN_ROW + Math.floor(x / size) + (BIN_ROW >> 1);
}

/** Outline segments by every bin their box touches. */
function binSegments(outline: Float64Array, size: number): SegmentBins {
  const bins = new Map<number, number[]>();
  const n = outline.length / 2;
  for (let i = 0; i < n; i++) {
    const k = (i + 1) % n;
    const x0 = Math.min(outline[2 * i], outline[2 * k]);
    const x1 = Math.max(outline[2 * i], outline[2 * k]);
    const y0 = Math.min(outline[2 * i + 1], outline[2 * k + 1]);
    const y1 = Math.max(outline[2 * i + 1], outline[2 * k + 1]);
    for (let y = Math.floor(y0 / size); y <= Math.floor(y1 / size); y++) {
      for (let x = Math.floor(x0 / size); x <= Math.floor(x1 / size); x++) {
        const key = binKey((x + 0.5) * size, (y + 0.5) * size, size);
        const bin = bins.get(key);
        if (bin) bin.push(i);
        else bins.set(key, [i]);
      }
    }
  }
  return { size, bins };
}

function isClear(near: SegmentBins, outline: Float64Array, x: number, y: number, clearance: number): boolean {
  const n = outline.length / 2;
  for (let dy = -1; dy <= 1; dy++) {
    for (let dx = -1; dx <= 1; dx++) {
      for (const i of near.bins.get(binKey(x + dx * near.size, y + dy * near.size, near.size)) ?? []) {
        const k = (i + 1) % n;
        const ax = outline[2 * i];
        const ay = outline[2 * i + 1];
        const ex = outline[2 * k] - ax;
        const ey = outline[2 * k + 1] - ay;
        const t = clamp(((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey), 0, 1);
        if (Math.hypot(x - ax - t * ex, y - ay - t * ey) < clearance) return false;
      }
    }
  }
  return true;
}

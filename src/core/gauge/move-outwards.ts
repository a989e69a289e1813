/**
 * A line (n × 2 mm) moved to its right by `distance`, which of a counter-clockwise outline is outwards: each segment lies
 * parallel to itself, corners stay sharp (mitres). The ends of an open line move along `ends`, unit vectors, so that they stay on the
 * lines where they were cut. Right where no hollow is rounder than `distance`. O(n).
 */
export function moveOutwards(
  line: Float64Array,
  distance: number,
  ends?: { readonly first: readonly [number, number]; readonly last: readonly [number, number] },
): Float64Array {
  const count = line.length / 2;
  const normal = (i: number): [number, number] => {
    const j = (i + 1) % count;
    const [x, y] = [line[2 * j] - line[2 * i], line[2 * j + 1] - line[2 * i + 1]];
    const length = Math.hypot(x, y);
    return [y / length, -x / length];
  };
  const moved = new Float64Array(line.length);
  for (let i = 0; i < count; i++) {
    const [n, m] = [normal((i + count - 1) % count), normal(i)];
    const end = ends && (i === 0 ? ends.first : i === count - 1 ? ends.last : undefined);
    const [x, y] = end ? alongEnd(end, i === 0 ? m : n) : mitre(n, m);
    moved[2 * i] = line[2 * i] + distance * x;
    moved[2 * i + 1] = line[2 * i + 1] + distance * y;
  }
  return moved;
}

/** Where both neighbours, each moved by one, meet: (n + m) / (1 + n · m). */
function mitre(n: readonly [number, number], m: readonly [number, number]): [number, number] {
  const share = 1 + n[0] * m[0] + n[1] * m[1];
  return [(n[0] + m[0]) / share, (n[1] + m[1]) / share];
}

/** How far along `end` the moved segment is reached. */
function alongEnd(end: readonly [number, number], n: readonly [number, number]): [number, number] {
  const share = end[0] * n[0] + end[1] * n[1];
  return [end[0] / share, end[1] / share];
}

import type { Mesh } from '../mesh/index.ts';

/**
 * From every vertex of an opening's loop the way into the shell along its wall, square to the loop (n × 3, mm): the mean of
 * the edges that leave the loop there, less what runs along it. A vertex that no such edge leaves takes its neighbour's.
 * O(triangles).
 */
export function waysIntoShell({ positions: p, triangles }: Mesh, loop: ArrayLike<number>): Float64Array {
  const count = loop.length;
  const place = new Map(Array.from(loop, (vertex, i) => [vertex, i]));
  const ways = new Float64Array(3 * count);
  for (let t = 0; t < triangles.length; t++) {
    const i = place.get(triangles[t]);
    if (i === undefined) continue;
    const first = t - (t % 3);
    for (let k = first; k < first + 3; k++) {
      if (place.has(triangles[k])) continue;
      for (let c = 0; c < 3; c++) ways[3 * i + c] += p[3 * triangles[k] + c] - p[3 * triangles[t] + c];
    }
  }
  for (let i = 0; i < count; i++) {
    const [a, b] = [3 * loop[(i + count - 1) % count], 3 * loop[(i + 1) % count]];
    const along = [0, 1, 2].map((c) => p[b + c] - p[a + c]);
    const squared = along[0] ** 2 + along[1] ** 2 + along[2] ** 2;
    const way = ways.subarray(3 * i, 3 * i + 3);
    const share = (way[0] * along[0] + way[1] * along[1] + way[2] * along[2]) / squared;
    for (let c = 0; c < 3; c++) way[c] -= share * along[c];
    if (i > 0 && way.every((x) => x === 0)) way.set(ways.subarray(3 * i - 3, 3 * i));
  }
  return ways;
}

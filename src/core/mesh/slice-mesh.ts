import type { Mesh } from './mesh.ts';

/** One line in which a plane meets a mesh. */
export interface Slice {
  /** n × 2 mm: the two coordinates in the plane, in the order of x, y, z. A closed one does not come back to its first point. */
  readonly points: Float64Array;
  readonly closed: boolean;
}

/**
 * The lines in which the plane x, y or z (`axis` 0, 1, 2) = `at` meets a mesh, exact for its triangles; open ones begin and end at
 * borders of the mesh. A vertex in the plane counts as above it. In no order, each in either direction. O(triangles).
 */
export function sliceMesh({ positions, triangles }: Mesh, axis: 0 | 1 | 2, at: number): Slice[] {
  const count = positions.length / 3;
  const across = [0, 1, 2].filter((other) => other !== axis);
  const places = new Map<number, readonly number[]>();
  const links = new Map<number, number[]>();
  const placeOn = (a: number, b: number): number => {
    const [low, high] = a < b ? [a, b] : [b, a];
    const key = low * count + high;
    if (!places.has(key)) {
      const from = positions[3 * low + axis] - at;
      const t = from / (from - (positions[3 * high + axis] - at));
      const between = (k: number) =>
        positions[3 * low + k] + t * (positions[3 * high + k] - positions[3 * low + k]);
      places.set(key, across.map(between));
    }
    return key;
  };
  for (let f = 0; f < triangles.length; f += 3) {
    const cut: number[] = [];
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[f + k], triangles[f + ((k + 1) % 3)]];
      if (positions[3 * a + axis] < at !== positions[3 * b + axis] < at) cut.push(placeOn(a, b));
    }
    if (cut.length !== 2) continue;
    for (const [here, there] of [cut, cut.toReversed()]) links.set(here, [...(links.get(here) ?? []), there]);
  }
  return followLinks(links).map(({ keys, closed }) => ({
    points: Float64Array.from(keys.flatMap((key) => places.get(key) ?? [])),
    closed,
  }));
}

/** Open lines first, from their ends; what is left are rings. */
function followLinks(links: ReadonlyMap<number, readonly number[]>): { keys: number[]; closed: boolean }[] {
  const isDone = new Set<number>();
  const follow = (start: number): number[] => {
    const keys: number[] = [];
    let here: number | undefined = start;
    while (here !== undefined) {
      keys.push(here);
      isDone.add(here);
      here = links.get(here)?.find((next) => !isDone.has(next));
    }
    return keys;
  };
  const ends = [...links.keys()].filter((key) => links.get(key)?.length === 1);
  const lines = ends.flatMap((key) => (isDone.has(key) ? [] : [{ keys: follow(key), closed: false }]));
  const rings = [...links.keys()].flatMap((key) =>
    isDone.has(key) ? [] : [{ keys: follow(key), closed: true }],
  );
  return [...lines, ...rings];
}

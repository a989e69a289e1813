/**
 * Edges of faces (#T × 3 points) without a partner that runs the other way: pairs of points. Empty for a closed surface that
 * is wound one way. A sort of the edges.
 */
export function findOpenEdges(faces: Uint32Array): Uint32Array {
  const size = faces.reduce((most, p) => Math.max(most, p), 0) + 1;
  // One number an edge: its points, and last which way it runs.
  const keys = new Float64Array(faces.length);
  for (let k = 0; k < faces.length; k++) {
    const a = faces[k];
    const b = faces[k % 3 === 2 ? k - 2 : k + 1];
    keys[k] = 2 * (Math.min(a, b) * size + Math.max(a, b)) + (a < b ? 1 : 0);
  }
  keys.sort();
  const open: number[] = [];
  for (let k = 0; k < keys.length; ) {
    const edge = Math.floor(keys[k] / 2);
    let balance = 0;
    for (; k < keys.length && Math.floor(keys[k] / 2) === edge; k++) balance += keys[k] % 2 === 1 ? 1 : -1;
    if (balance !== 0) open.push(Math.floor(edge / size), edge % size);
  }
  return Uint32Array.from(open);
}

/** Between evenly spaced values round a circle, `turn` in turns, by Catmull and Rom's cubics. */
export function readRound(values: Float64Array, turn: number): number {
  const n = values.length;
  const at = turn * n;
  const cell = Math.floor(at);
  const f = at - cell;
  const first = (((cell - 1) % n) + n) % n;
  const a = values[first];
  const b = values[(first + 1) % n];
  const c = values[(first + 2) % n];
  const d = values[(first + 3) % n];
  return b + 0.5 * f * (c - a + f * (2 * a - 5 * b + 4 * c - d + f * (3 * (b - c) + d - a)));
}

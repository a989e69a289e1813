/** A layout moved so that `pinA` lies at the origin and `pinB` on the +x axis, where the solver holds them. */
export function turnToPins(flat: Float64Array, pinA: number, pinB: number): Float64Array {
  const [x0, y0] = [flat[2 * pinA], flat[2 * pinA + 1]];
  const x = flat[2 * pinB] - x0;
  const y = flat[2 * pinB + 1] - y0;
  const length = Math.hypot(x, y);
  const [cos, sin] = [x / length, -y / length];
  const out = new Float64Array(flat.length);
  for (let i = 0; i < flat.length; i += 2) {
    const [px, py] = [flat[i] - x0, flat[i + 1] - y0];
    out[i] = cos * px - sin * py;
    out[i + 1] = sin * px + cos * py;
  }
  out[2 * pinB + 1] = 0;
  return out;
}

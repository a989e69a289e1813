import type { CutChange, CutGiven } from './change-cut.ts';
import type { CutUnknowns } from './cut-unknowns.ts';

/**
 * What a change costs for itself, so that nothing changes that helps nothing: 1 % of strain all over the panels as much as a
 * surface so many mm off; a brace's knot so many mm longer as much as one mm off.
 */
const STRAIN_COST = 0.2;
const BRACE_COST = 40;

/** The cost of amounts a is aᵀ H a: n × n, symmetric. O(triangles × unknowns of a panel²). */
export function holdOfCut(
  { shell, upright }: CutGiven,
  { moves }: CutUnknowns,
  changes: readonly CutChange[],
): Float64Array {
  const n = changes.length;
  const hold = new Float64Array(n * n);
  let total = 0;
  shell.panels.forEach(({ mesh }, p) => {
    const own = changes.flatMap(({ panels }, k) => (panels[p].some((x) => x !== 0) ? [k] : []));
    const moved = own.map((k) => changes[k].panels[p]);
    const strains = new Float64Array(3 * own.length);
    for (let t = 0; t < mesh.triangles.length; t += 3) {
      const area = strainsOfTriangle(mesh.triangles.subarray(t, t + 3), upright[p], moved, strains);
      total += area;
      addSquares(hold, n, own, strains, area);
    }
  });
  const scale = (100 * STRAIN_COST) ** 2 / total;
  for (let k = 0; k < hold.length; k++) hold[k] *= scale;
  moves.forEach(({ kind }, k) => {
    if (kind === 'brace') hold[k * n + k] += 1 / BRACE_COST ** 2;
  });
  return hold;
}

/** Strain of one triangle under each of several moves, along, across and √2 times its shear; returns its area. */
function strainsOfTriangle(
  corners: Uint32Array,
  flat: Float64Array,
  moved: readonly Float64Array[],
  out: Float64Array,
): number {
  const [a, b, c] = [2 * corners[0], 2 * corners[1], 2 * corners[2]];
  const [x1, y1] = [flat[b] - flat[a], flat[b + 1] - flat[a + 1]];
  const [x2, y2] = [flat[c] - flat[a], flat[c + 1] - flat[a + 1]];
  const double = x1 * y2 - y1 * x2;
  moved.forEach((m, i) => {
    const [u1, v1] = [m[b] - m[a], m[b + 1] - m[a + 1]];
    const [u2, v2] = [m[c] - m[a], m[c + 1] - m[a + 1]];
    out[3 * i] = (u1 * y2 - u2 * y1) / double;
    out[3 * i + 1] = (v2 * x1 - v1 * x2) / double;
    out[3 * i + 2] = (u2 * x1 - u1 * x2 + v1 * y2 - v2 * y1) / double / Math.SQRT2;
  });
  return Math.abs(double) / 2;
}

function addSquares(
  hold: Float64Array,
  n: number,
  own: readonly number[],
  strains: Float64Array,
  area: number,
): void {
  own.forEach((row, i) => {
    const [along, across, shear] = [strains[3 * i], strains[3 * i + 1], strains[3 * i + 2]];
    if (along === 0 && across === 0 && shear === 0) return;
    own.forEach((column, j) => {
      hold[row * n + column] +=
        area * (along * strains[3 * j] + across * strains[3 * j + 1] + shear * strains[3 * j + 2]);
    });
  });
}

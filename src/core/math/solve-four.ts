import type { FourRights } from './dense-fronts.ts';
import type { LdltSymbolic } from './ldlt-symbolic.ts';

/**
 * Up to four solves at once with a factor of blocks of three: each number of the factor is fetched once for all. `rights`: as
 * `Ldlt.solve` takes them; the same bits come out.
 */
export function solveFour(
  symbolic: LdltSymbolic,
  panels: Float64Array,
  pivots: Float64Array,
  four: FourRights,
  rights: readonly Float64Array[],
): Float64Array[] {
  const { order, columnStart } = symbolic;
  const { own } = four;
  own.fill(0);
  rights.forEach((right, n) => {
    for (let k = 0; k < order.length; k++)
      for (let a = 0; a < 3; a++) own[4 * (3 * k + a) + n] = right[3 * order[k] + a];
  });
  for (let s = 0; s + 1 < columnStart.length; s++) goDown(symbolic, panels, four, s);
  for (let s = columnStart.length - 2; s >= 0; s--) goUp(symbolic, panels, pivots, four, s);
  return rights.map((right, n) => {
    const found = new Float64Array(right.length);
    for (let k = 0; k < order.length; k++)
      for (let a = 0; a < 3; a++) found[3 * order[k] + a] = own[4 * (3 * k + a) + n];
    return found;
  });
}

/** y = L⁻¹ b: own columns of supernode s, then what they do to the rows below. */
function goDown(symbolic: LdltSymbolic, panels: Float64Array, four: FourRights, s: number): void {
  const { columnStart, rowStart, rows, panelStart } = symbolic;
  const { own, below } = four;
  const first = 3 * columnStart[s];
  const width = 3 * columnStart[s + 1] - first;
  const at = panelStart[s];
  let isZero = true;
  for (let k = 4 * first; k < 4 * (first + width); k++) if (own[k] !== 0) isZero = false;
  if (isZero) return;
  for (let i = 1; i < width; i++) {
    const row = at + i * width;
    const to = 4 * (first + i);
    let s0 = own[to];
    let s1 = own[to + 1];
    let s2 = own[to + 2];
    let s3 = own[to + 3];
    for (let k = 0, x = 4 * first; k < i; k++, x += 4) {
      const l = panels[row + k];
      s0 -= l * own[x];
      s1 -= l * own[x + 1];
      s2 -= l * own[x + 2];
      s3 -= l * own[x + 3];
    }
    own[to] = s0;
    own[to + 1] = s1;
    own[to + 2] = s2;
    own[to + 3] = s3;
  }
  const count = rowStart[s + 1] - rowStart[s];
  if (count === 0) return;
  below.fill(0, 0, 12 * count);
  four.pushDown(at, width + 3 * count, width, first);
  for (let r = 0; r < count; r++) {
    const to = 12 * rows[rowStart[s] + r];
    for (let k = 0; k < 12; k++) own[to + k] += below[12 * r + k];
  }
}

/** x with D Lᵀ x = y: what the rows below do to the own columns of supernode s, then these. */
function goUp(
  symbolic: LdltSymbolic,
  panels: Float64Array,
  pivots: Float64Array,
  four: FourRights,
  s: number,
): void {
  const { columnStart, rowStart, rows, panelStart } = symbolic;
  const { own, below } = four;
  const first = 3 * columnStart[s];
  const width = 3 * columnStart[s + 1] - first;
  const at = panelStart[s];
  for (let i = first; i < first + width; i++) for (let n = 4 * i; n < 4 * i + 4; n++) own[n] /= pivots[i];
  const count = rowStart[s + 1] - rowStart[s];
  if (count > 0) {
    for (let r = 0; r < count; r++) {
      const from = 12 * rows[rowStart[s] + r];
      for (let k = 0; k < 12; k++) below[12 * r + k] = own[from + k];
    }
    four.pullUp(at, width + 3 * count, width, first);
  }
  const last = width - 1;
  for (let k = last - 1; k >= 0; k--) {
    const to = 4 * (first + k);
    let s0 = own[to];
    let s1 = own[to + 1];
    let s2 = own[to + 2];
    let s3 = own[to + 3];
    for (let i = last, x = 4 * (first + last), l = at + last * width + k; i > k; i--, x -= 4, l -= width) {
      const value = panels[l];
      s0 -= value * own[x];
      s1 -= value * own[x + 1];
      s2 -= value * own[x + 2];
      s3 -= value * own[x + 3];
    }
    own[to] = s0;
    own[to + 1] = s1;
    own[to + 2] = s2;
    own[to + 3] = s3;
  }
}

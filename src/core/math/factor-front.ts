/**
 * Dense work of the sparse LDLᵀ. A front has `rows` rows and `width` own columns; its panel is stored row
 * by row in `panel` from `at` (row stride = width). On entry the panel holds matrix values, on return L
 * (unit diagonal implied) with D on the diagonal places. `scaled` receives L·D, same layout from 0.
 * Returns the number of pivots that are not positive; stops at the first one when `stopEarly`.
 * A pivot of exactly 0 (or not a number) gives −1: the front cannot be factored.
 */
export function factorPanel(
  panel: Float64Array,
  at: number,
  rows: number,
  width: number,
  scaled: Float64Array,
  inversePivots: Float64Array,
  stopEarly: boolean,
): number {
  let negative = 0;
  // 1. Diagonal block, row by row.
  for (let i = 0; i < width; i++) {
    const row = at + i * width;
    const y = i * width;
    let pivot = panel[row + i];
    for (let j = 0; j < i; j++) {
      const other = at + j * width;
      let sum = panel[row + j];
      for (let k = 0; k < j; k++) sum -= scaled[y + k] * panel[other + k];
      scaled[y + j] = sum;
    }
    for (let j = 0; j < i; j++) {
      const l = scaled[y + j] * inversePivots[j];
      panel[row + j] = l;
      pivot -= l * scaled[y + j];
    }
    panel[row + i] = pivot;
    if (!(pivot > 0)) {
      if (!(pivot < 0)) return -1;
      negative++;
      if (stopEarly) return negative;
    }
    inversePivots[i] = 1 / pivot;
  }
  // 2. Rows below, two at a time, two columns at a time.
  let i = width;
  for (; i + 1 < rows; i += 2) {
    const r0 = at + i * width;
    const r1 = r0 + width;
    const y0 = i * width;
    const y1 = y0 + width;
    let j = 0;
    for (; j + 1 < width; j += 2) {
      const c0 = at + j * width;
      const c1 = c0 + width;
      let s00 = panel[r0 + j];
      let s01 = panel[r0 + j + 1];
      let s10 = panel[r1 + j];
      let s11 = panel[r1 + j + 1];
      for (let k = 0; k < j; k++) {
        const a0 = scaled[y0 + k];
        const a1 = scaled[y1 + k];
        const b0 = panel[c0 + k];
        const b1 = panel[c1 + k];
        s00 -= a0 * b0;
        s01 -= a0 * b1;
        s10 -= a1 * b0;
        s11 -= a1 * b1;
      }
      const cross = panel[c1 + j];
      scaled[y0 + j] = s00;
      scaled[y1 + j] = s10;
      scaled[y0 + j + 1] = s01 - s00 * cross;
      scaled[y1 + j + 1] = s11 - s10 * cross;
    }
    if (j < width) {
      const c0 = at + j * width;
      let s0 = panel[r0 + j];
      let s1 = panel[r1 + j];
      for (let k = 0; k < j; k++) {
        const b = panel[c0 + k];
        s0 -= scaled[y0 + k] * b;
        s1 -= scaled[y1 + k] * b;
      }
      scaled[y0 + j] = s0;
      scaled[y1 + j] = s1;
    }
  }
  if (i < rows) {
    const row = at + i * width;
    const y = i * width;
    for (let j = 0; j < width; j++) {
      const other = at + j * width;
      let sum = panel[row + j];
      for (let k = 0; k < j; k++) sum -= scaled[y + k] * panel[other + k];
      scaled[y + j] = sum;
    }
  }
  // 3. L = (L·D)·D⁻¹.
  for (let r = width; r < rows; r++) {
    const row = at + r * width;
    const y = r * width;
    for (let j = 0; j < width; j++) panel[row + j] = scaled[y + j] * inversePivots[j];
  }
  return negative;
}

/**
 * What elimination leaves for the parent: rest −= (L·D)·Lᵀ over the rows below the own columns.
 * `rest` is square (rows − width), lower triangle, row by row from `restAt`. Cost: width · side² / 2
 * multiply-adds, in 2 × 2 tiles so that each pair of loads serves four products.
 */
export function updateRest(
  panel: Float64Array,
  at: number,
  rows: number,
  width: number,
  scaled: Float64Array,
  rest: Float64Array,
  restAt: number,
): void {
  const side = rows - width;
  let i = 0;
  for (; i + 1 < side; i += 2) {
    const y0 = (width + i) * width;
    const y1 = y0 + width;
    const u0 = restAt + i * side;
    const u1 = u0 + side;
    for (let j = 0; j <= i; j += 2) {
      const l0 = at + (width + j) * width;
      const l1 = l0 + width;
      let s00 = 0;
      let s01 = 0;
      let s10 = 0;
      let s11 = 0;
      for (let k = 0; k < width; k++) {
        const a0 = scaled[y0 + k];
        const a1 = scaled[y1 + k];
        const b0 = panel[l0 + k];
        const b1 = panel[l1 + k];
        s00 += a0 * b0;
        s01 += a0 * b1;
        s10 += a1 * b0;
        s11 += a1 * b1;
      }
      rest[u0 + j] -= s00;
      rest[u0 + j + 1] -= s01; // above the diagonal when j = i: never read
      rest[u1 + j] -= s10;
      rest[u1 + j + 1] -= s11;
    }
  }
  if (i < side) {
    const y = (width + i) * width;
    const u = restAt + i * side;
    for (let j = 0; j <= i; j++) {
      const l = at + (width + j) * width;
      let sum = 0;
      for (let k = 0; k < width; k++) sum += scaled[y + k] * panel[l + k];
      rest[u + j] -= sum;
    }
  }
}

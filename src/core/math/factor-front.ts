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
  // 2. Rows below, four at a time and two columns at a time, then those left over one by one.
  let i = width;
  for (; i + 3 < rows; i += 4) {
    const r0 = at + i * width;
    const r1 = r0 + width;
    const r2 = r1 + width;
    const r3 = r2 + width;
    const y0 = i * width;
    const y1 = y0 + width;
    const y2 = y1 + width;
    const y3 = y2 + width;
    let j = 0;
    for (; j + 1 < width; j += 2) {
      const c0 = at + j * width;
      const c1 = c0 + width;
      let s00 = panel[r0 + j];
      let s01 = panel[r0 + j + 1];
      let s10 = panel[r1 + j];
      let s11 = panel[r1 + j + 1];
      let s20 = panel[r2 + j];
      let s21 = panel[r2 + j + 1];
      let s30 = panel[r3 + j];
      let s31 = panel[r3 + j + 1];
      for (let k = 0; k < j; k++) {
        const b0 = panel[c0 + k];
        const b1 = panel[c1 + k];
        const a0 = scaled[y0 + k];
        const a1 = scaled[y1 + k];
        const a2 = scaled[y2 + k];
        const a3 = scaled[y3 + k];
        s00 -= a0 * b0;
        s01 -= a0 * b1;
        s10 -= a1 * b0;
        s11 -= a1 * b1;
        s20 -= a2 * b0;
        s21 -= a2 * b1;
        s30 -= a3 * b0;
        s31 -= a3 * b1;
      }
      const cross = panel[c1 + j];
      scaled[y0 + j] = s00;
      scaled[y1 + j] = s10;
      scaled[y2 + j] = s20;
      scaled[y3 + j] = s30;
      scaled[y0 + j + 1] = s01 - s00 * cross;
      scaled[y1 + j + 1] = s11 - s10 * cross;
      scaled[y2 + j + 1] = s21 - s20 * cross;
      scaled[y3 + j + 1] = s31 - s30 * cross;
    }
    if (j < width) {
      for (let r = i; r < i + 4; r++) scaleEntry(panel, at, width, scaled, r, j);
    }
  }
  for (; i < rows; i++) {
    for (let j = 0; j < width; j++) scaleEntry(panel, at, width, scaled, i, j);
  }
  // 3. L = (L·D)·D⁻¹.
  for (let r = width; r < rows; r++) {
    const row = at + r * width;
    const y = r * width;
    for (let j = 0; j < width; j++) panel[row + j] = scaled[y + j] * inversePivots[j];
  }
  return negative;
}

/** One entry of L·D from those left of it. */
function scaleEntry(
  panel: Float64Array,
  at: number,
  width: number,
  scaled: Float64Array,
  row: number,
  column: number,
): void {
  const y = row * width;
  const other = at + column * width;
  let sum = panel[at + y + column];
  for (let k = 0; k < column; k++) sum -= scaled[y + k] * panel[other + k];
  scaled[y + column] = sum;
}

/** Rows of the panel that stay in the nearest cache while a strip of the remainder takes them. */
const STRIP = 64;

/**
 * What elimination leaves for the parent: rest −= (L·D)·Lᵀ over the rows below the own columns.
 * `rest` is square (rows − width), lower triangle, row by row from `restAt`, rows `stride` apart. Cost: width · side² / 2
 * multiply-adds, in 4 × 2 tiles so that six loads serve eight products, strip by strip of columns so that large fronts
 * stay in the cache. Entries up to three places above the diagonal are written and never read.
 * Source: register and cache blocking as in Goto and van de Geijn, "Anatomy of high-performance matrix multiplication",
 * ACM TOMS 34 (2008).
 */
export function updateRest(
  panel: Float64Array,
  at: number,
  rows: number,
  width: number,
  scaled: Float64Array,
  rest: Float64Array,
  restAt: number,
  stride: number,
): void {
  const side = rows - width;
  for (let from = 0; from < side; from += STRIP) {
    const to = Math.min(side, from + STRIP);
    let i = from;
    for (; i + 3 < side; i += 4) {
      const end = Math.min(to, i + 4);
      let j = from;
      for (; j + 1 < end; j += 2) updateTile(panel, at, width, scaled, rest, restAt, stride, i, j);
      if (j < end)
        for (let r = i; r < i + 4; r++) updateEntry(panel, at, width, scaled, rest, restAt, stride, r, j);
    }
    for (; i < side; i++) {
      for (let j = from; j < Math.min(to, i + 1); j++) {
        updateEntry(panel, at, width, scaled, rest, restAt, stride, i, j);
      }
    }
  }
}

/** Rows i … i + 3, columns j and j + 1 of the remainder. */
function updateTile(
  panel: Float64Array,
  at: number,
  width: number,
  scaled: Float64Array,
  rest: Float64Array,
  restAt: number,
  stride: number,
  i: number,
  j: number,
): void {
  const y0 = (width + i) * width;
  const y1 = y0 + width;
  const y2 = y1 + width;
  const y3 = y2 + width;
  const l0 = at + (width + j) * width;
  const l1 = l0 + width;
  let s00 = 0;
  let s01 = 0;
  let s10 = 0;
  let s11 = 0;
  let s20 = 0;
  let s21 = 0;
  let s30 = 0;
  let s31 = 0;
  for (let k = 0; k < width; k++) {
    const b0 = panel[l0 + k];
    const b1 = panel[l1 + k];
    const a0 = scaled[y0 + k];
    const a1 = scaled[y1 + k];
    const a2 = scaled[y2 + k];
    const a3 = scaled[y3 + k];
    s00 += a0 * b0;
    s01 += a0 * b1;
    s10 += a1 * b0;
    s11 += a1 * b1;
    s20 += a2 * b0;
    s21 += a2 * b1;
    s30 += a3 * b0;
    s31 += a3 * b1;
  }
  let u = restAt + i * stride + j;
  rest[u] -= s00;
  rest[u + 1] -= s01;
  u += stride;
  rest[u] -= s10;
  rest[u + 1] -= s11;
  u += stride;
  rest[u] -= s20;
  rest[u + 1] -= s21;
  u += stride;
  rest[u] -= s30;
  rest[u + 1] -= s31;
}

function updateEntry(
  panel: Float64Array,
  at: number,
  width: number,
  scaled: Float64Array,
  rest: Float64Array,
  restAt: number,
  stride: number,
  i: number,
  j: number,
): void {
  const y = (width + i) * width;
  const l = at + (width + j) * width;
  let sum = 0;
  for (let k = 0; k < width; k++) sum += scaled[y + k] * panel[l + k];
  rest[restAt + i * stride + j] -= sum;
}

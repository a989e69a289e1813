import { type DenseFronts, type FourRights, type FrontSizes, plainFronts } from './dense-fronts.ts';
import { productsModule } from './products-module.ts';

/** What is used of WebAssembly; the core's types know only the language itself. */
declare const WebAssembly:
  | {
      readonly Memory: new (limits: { initial: number }) => { readonly buffer: ArrayBuffer };
      readonly Module: new (bytes: Uint8Array<ArrayBuffer>) => object;
      readonly Instance: new (
        module: object,
        imports: { a: { memory: object } },
      ) => { readonly exports: Record<string, unknown> };
    }
  | undefined;

type SubtractProducts = (
  c: number,
  cStride: number,
  a: number,
  aStride: number,
  b: number,
  rows: number,
  groups: number,
  depth: number,
  fresh: number,
  lower: number,
  aStep: number,
) => void;

/** Columns of the remainder taken at once: their rows of the panel stay in the nearest cache. */
const STRIP = 64;

/**
 * Two numbers at a time, where WebAssembly may run; in plain loops where it is missing or a page's rules forbid it. The same bits
 * either way. Rows of remainders must begin at multiples of 4.
 */
export function vectorFronts(sizes: FrontSizes): DenseFronts {
  const ready = readyMemory(sizes);
  if (!ready) return plainFronts(sizes);
  const { panels, stack, scaled, packed, subtract } = ready;
  const inversePivots = new Float64Array(sizes.width);
  return {
    panels,
    stack,
    factorPanel: (at, rows, width, stopEarly) => {
      const stride = roundUp(width);
      copyRows(panels, at, width, rows, scaled, stride);
      let negative = 0;
      for (let j = 0; j < width; j += 4) {
        const wide = Math.min(4, width - j);
        if (j > 0) {
          packRows(panels, at + j * width, width, wide, j, packed);
          const c = scaled.byteOffset + 8 * (j * stride + j);
          const a = scaled.byteOffset + 8 * j * stride;
          subtract(c, 8 * stride, a, 8 * stride, packed.byteOffset, rows - j, 1, j, 0, 0, 8);
        }
        const found = finishColumns(
          panels,
          at,
          rows,
          width,
          scaled,
          stride,
          inversePivots,
          j,
          wide,
          stopEarly,
        );
        if (found < 0) return -1;
        negative += found;
        if (stopEarly && negative > 0) return negative;
      }
      return negative;
    },
    updateRest: (at, rows, width, restAt, stride) => {
      const aStride = roundUp(width);
      const side = rows - width;
      for (let from = 0; from < side; from += STRIP) {
        const wide = Math.min(STRIP, side - from);
        packRows(panels, at + (width + from) * width, width, wide, width, packed);
        const c = stack.byteOffset + 8 * (restAt + from * stride + from);
        const a = scaled.byteOffset + 8 * (width + from) * aStride;
        subtract(
          c,
          8 * stride,
          a,
          8 * aStride,
          packed.byteOffset,
          side - from,
          roundUp(wide) / 4,
          width,
          1,
          1,
          8,
        );
      }
    },
    four: fourRights(ready),
  };
}

function fourRights({ panels, own, below, subtract }: ReadyMemory): FourRights {
  const rowAt = (at: number): number => panels.byteOffset + 8 * at;
  return {
    own,
    below,
    pushDown: (at, rows, width, first) => {
      const a = rowAt(at + width * width);
      const b = own.byteOffset + 32 * first;
      subtract(below.byteOffset, 32, a, 8 * width, b, rows - width, 1, width, 0, 0, 8);
    },
    pullUp: (at, rows, width, first) => {
      const c = own.byteOffset + 32 * first;
      const a = rowAt(at + width * width);
      subtract(c, 32, a, 8, below.byteOffset, width, 1, rows - width, 0, 0, 8 * width);
    },
  };
}

type ReadyMemory = NonNullable<ReturnType<typeof readyMemory>>;

/** One memory for all the function touches; nothing where it may not run. */
function readyMemory({ panels, stack, front, width, unknowns }: FrontSizes) {
  if (typeof WebAssembly === 'undefined') return undefined;
  const lengths = [panels, stack, front * roundUp(width), STRIP * width, 4 * unknowns, 4 * front].map(
    (length) => length + (length & 1),
  );
  const bytes = 8 * lengths.reduce((sum, length) => sum + length, 0);
  try {
    const memory = new WebAssembly.Memory({ initial: Math.ceil(bytes / 65536) + 1 });
    const instance = new WebAssembly.Instance(new WebAssembly.Module(productsModule()), { a: { memory } });
    let at = 0;
    const take = (length: number): Float64Array => {
      at += 8 * length;
      return new Float64Array(memory.buffer, at - 8 * length, length);
    };
    return {
      panels: take(lengths[0]),
      stack: take(lengths[1]),
      scaled: take(lengths[2]),
      packed: take(lengths[3]),
      own: take(lengths[4]),
      below: take(lengths[5]),
      subtract: instance.exports.subtractProducts as SubtractProducts,
    };
  } catch {
    return undefined;
  }
}

function roundUp(count: number): number {
  return (count + 3) & ~3;
}

function copyRows(
  panels: Float64Array,
  at: number,
  width: number,
  rows: number,
  scaled: Float64Array,
  stride: number,
): void {
  for (let r = 0; r < rows; r++) {
    const from = at + r * width;
    const to = r * stride;
    for (let k = 0; k < width; k++) scaled[to + k] = panels[from + k];
  }
}

/** `count` rows from `at`, `depth` numbers of each: by fours of rows, the four numbers of every place together, 0 where there is no row. */
function packRows(
  panels: Float64Array,
  at: number,
  stride: number,
  count: number,
  depth: number,
  packed: Float64Array,
): void {
  let to = 0;
  let row = at;
  let r = 0;
  for (; r + 3 < count; r += 4, row += 4 * stride) {
    for (let k = row; k < row + depth; k++, to += 4) {
      packed[to] = panels[k];
      packed[to + 1] = panels[k + stride];
      packed[to + 2] = panels[k + 2 * stride];
      packed[to + 3] = panels[k + 3 * stride];
    }
  }
  if (r === count) return;
  for (let k = 0; k < depth; k++)
    for (let n = 0; n < 4; n++) packed[to++] = r + n < count ? panels[row + n * stride + k] : 0;
}

/** Columns j … j + wide − 1 of all rows from j on, when those before are taken off: pivots, L·D into `scaled`, L into the panel. */
function finishColumns(
  panels: Float64Array,
  at: number,
  rows: number,
  width: number,
  scaled: Float64Array,
  stride: number,
  inversePivots: Float64Array,
  j: number,
  wide: number,
  stopEarly: boolean,
): number {
  let negative = 0;
  for (let n = 0; n < wide; n++) {
    const i = j + n;
    const row = at + i * width;
    const y = i * stride;
    let pivot = scaled[y + i];
    for (let k = j; k < i; k++) {
      let sum = scaled[y + k];
      for (let m = j; m < k; m++) sum -= scaled[y + m] * panels[at + k * width + m];
      scaled[y + k] = sum;
      const l = sum * inversePivots[k];
      panels[row + k] = l;
      pivot -= l * sum;
    }
    panels[row + i] = pivot;
    if (!(pivot > 0)) {
      if (!(pivot < 0)) return -1;
      negative++;
      if (stopEarly) return negative;
    }
    inversePivots[i] = 1 / pivot;
  }
  if (wide === 4) finishFour(panels, at, rows, width, scaled, stride, inversePivots, j);
  else {
    for (let r = j + wide; r < rows; r++) {
      for (let k = j; k < j + wide; k++) {
        let sum = scaled[r * stride + k];
        for (let m = j; m < k; m++) sum -= scaled[r * stride + m] * panels[at + k * width + m];
        scaled[r * stride + k] = sum;
        panels[at + r * width + k] = sum * inversePivots[k];
      }
    }
  }
  return negative;
}

function finishFour(
  panels: Float64Array,
  at: number,
  rows: number,
  width: number,
  scaled: Float64Array,
  stride: number,
  inversePivots: Float64Array,
  j: number,
): void {
  const r1 = at + (j + 1) * width + j;
  const r2 = r1 + width;
  const r3 = r2 + width;
  const l10 = panels[r1];
  const l20 = panels[r2];
  const l21 = panels[r2 + 1];
  const l30 = panels[r3];
  const l31 = panels[r3 + 1];
  const l32 = panels[r3 + 2];
  const i0 = inversePivots[j];
  const i1 = inversePivots[j + 1];
  const i2 = inversePivots[j + 2];
  const i3 = inversePivots[j + 3];
  for (let r = j + 4; r < rows; r++) {
    const y = r * stride + j;
    const p = at + r * width + j;
    const s0 = scaled[y];
    const s1 = scaled[y + 1] - s0 * l10;
    const s2 = scaled[y + 2] - s0 * l20 - s1 * l21;
    const s3 = scaled[y + 3] - s0 * l30 - s1 * l31 - s2 * l32;
    scaled[y + 1] = s1;
    scaled[y + 2] = s2;
    scaled[y + 3] = s3;
    panels[p] = s0 * i0;
    panels[p + 1] = s1 * i1;
    panels[p + 2] = s2 * i2;
    panels[p + 3] = s3 * i3;
  }
}

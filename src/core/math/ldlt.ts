import { assertInvariant } from '../base/index.ts';
import { addChildInSpace } from './add-child-in-space.ts';
import { type DenseFronts, type FrontSizes, plainFronts } from './dense-fronts.ts';
import { type LdltSymbolic, strideOfRest } from './ldlt-symbolic.ts';
import { solveFour } from './solve-four.ts';

/** How a factorisation ended. */
export interface LdltReport {
  /** Positive definite: every pivot > 0. */
  readonly isPositive: boolean;
  /** Pivots below 0; by Sylvester's law the number of negative eigenvalues (1 when stopped early). */
  readonly negativePivots: number;
  /** False when a pivot was exactly 0, not a number, or when stopped early: do not solve. */
  readonly isUsable: boolean;
  /** What was added to every diagonal number. */
  readonly shift: number;
  /** Smallest and largest pivot in absolute value; 0 when not usable. */
  readonly smallestPivot: number;
  readonly largestPivot: number;
}

/**
 * Sparse symmetric L D Lᵀ without pivoting, for matrices that are positive definite or strongly
 * diagonally signed. Holds memory for one factor, reused by every `factor` call.
 * Cost for a flat triangle mesh of 5000 vertices: about 5 ms with one number per vertex,
 * 30 ms with 2 × 2, 90 ms with 3 × 3, of these 45 ms with `vectorFronts`.
 * Source: multifrontal method, Duff and Reid, ACM TOMS 9 (1983); Liu, SIAM Review 34 (1992).
 */
export class Ldlt {
  private readonly fronts: DenseFronts;
  private readonly panels: Float64Array;
  private readonly stack: Float64Array;
  /** #size × blockSize, in elimination order. */
  private readonly pivots: Float64Array;
  private readonly work: Float64Array;
  private readonly gathered: Float64Array;
  private isUsable = false;

  /** `makeFronts`: how the dense work is done. `vectorFronts` pays where fronts are large. */
  constructor(
    readonly symbolic: LdltSymbolic,
    makeFronts: (sizes: FrontSizes) => DenseFronts = plainFronts,
  ) {
    const { panelStart, stackSize, largestFront, largestWidth, size, blockSize } = symbolic;
    this.fronts = makeFronts({
      panels: panelStart[panelStart.length - 1],
      stack: stackSize,
      front: largestFront,
      width: largestWidth,
      unknowns: size * blockSize,
    });
    this.panels = this.fronts.panels;
    this.stack = this.fronts.stack;
    this.pivots = new Float64Array(size * blockSize);
    this.work = new Float64Array(size * blockSize);
    this.gathered = new Float64Array(largestFront);
  }

  /**
   * Factors the matrix with `values` on the analysed pattern: per pattern entry one number, or a block of
   * four or nine (row by row; rows belong to the entry's row). Adds `shift` to the diagonal. With
   * `stopAtNegative` it gives up at the first pivot ≤ 0 and the result cannot be solved with.
   */
  factor(values: Float64Array, options: { shift?: number; stopAtNegative?: boolean } = {}): LdltReport {
    const { symbolic, panels, stack } = this;
    const { columnStart, rowStart, panelStart, blockSize, parent } = symbolic;
    const shift = options.shift ?? 0;
    const stopEarly = options.stopAtNegative ?? false;
    this.scatter(values, shift);
    // Children waiting for supernode s occupy the top of the stack; `waiting` counts their numbers.
    const count = parent.length;
    const pending = new Int32Array(count);
    const childList = new Int32Array(count);
    const childAt = new Int32Array(count);
    let childDepth = 0;
    let height = 0;
    let negative = 0;
    for (let s = 0; s < count; s++) {
      const width = (columnStart[s + 1] - columnStart[s]) * blockSize;
      const side = (rowStart[s + 1] - rowStart[s]) * blockSize;
      const stride = strideOfRest(side, blockSize);
      const room = side * stride;
      // 1. Room for the remainder above the children, then children into panel and remainder.
      const restAt = height;
      stack.fill(0, restAt, restAt + room);
      let base = restAt;
      for (let c = pending[s]; c > 0; c--) {
        childDepth--;
        base = childAt[childDepth];
        this.addChild(childList[childDepth], base, s, restAt);
      }
      // 2. Eliminate the own columns.
      const found = this.fronts.factorPanel(panelStart[s], width + side, width, stopEarly);
      if (found < 0 || (stopEarly && found > 0)) {
        this.isUsable = false;
        return {
          isPositive: false,
          negativePivots: negative + Math.max(found, 0),
          isUsable: false,
          shift,
          smallestPivot: 0,
          largestPivot: 0,
        };
      }
      negative += found;
      const first = columnStart[s] * blockSize;
      for (let i = 0; i < width; i++) this.pivots[first + i] = panels[panelStart[s] + i * width + i];
      // 3. Pass the remainder up, moved down over the children's.
      if (side > 0) {
        this.fronts.updateRest(panelStart[s], width + side, width, restAt, stride);
        if (base < restAt) stack.copyWithin(base, restAt, restAt + room);
        pending[parent[s]]++;
        childList[childDepth] = s;
        childAt[childDepth++] = base;
        height = base + room;
      } else height = base;
    }
    this.isUsable = true;
    const [smallestPivot, largestPivot] = this.pivotRange();
    return {
      isPositive: negative === 0,
      negativePivots: negative,
      isUsable: true,
      shift,
      smallestPivot,
      largestPivot,
    };
  }

  private scatter(values: Float64Array, shift: number): void {
    const { target, columnStart, panelStart, blockSize } = this.symbolic;
    const panels = this.panels;
    panels.fill(0);
    for (let k = 0; k < target.length; k++) if (target[k] >= 0) panels[target[k]] = values[k];
    if (shift === 0) return;
    for (let s = 0; s + 1 < columnStart.length; s++) {
      const width = (columnStart[s + 1] - columnStart[s]) * blockSize;
      for (let i = 0; i < width; i++) panels[panelStart[s] + i * width + i] += shift;
    }
  }

  /** Adds child c's remainder (at `from` in the stack) into parent s: own columns or remainder at `restAt`. */
  private addChild(c: number, from: number, s: number, restAt: number): void {
    const { rowStart, columnStart, panelStart, parentPlace, blockSize } = this.symbolic;
    const { panels, stack } = this;
    if (blockSize === 3) {
      addChildInSpace(this.symbolic, panels, stack, c, from, s, restAt);
      return;
    }
    const width = (columnStart[s + 1] - columnStart[s]) * blockSize;
    const parentStride = strideOfRest((rowStart[s + 1] - rowStart[s]) * blockSize, blockSize);
    const first = rowStart[c];
    const blocks = rowStart[c + 1] - first;
    const stride = strideOfRest(blocks * blockSize, blockSize);
    for (let bi = 0; bi < blocks; bi++) {
      for (let a = 0; a < blockSize; a++) {
        const source = from + (bi * blockSize + a) * stride;
        const row = parentPlace[first + bi] * blockSize + a;
        const panelRow = panelStart[s] + row * width;
        const restRow = restAt + (row - width) * parentStride - width;
        for (let bj = 0; bj <= bi; bj++) {
          const column = parentPlace[first + bj] * blockSize;
          const take = source + bj * blockSize;
          if (column < width) {
            panels[panelRow + column] += stack[take];
            if (blockSize > 1) panels[panelRow + column + 1] += stack[take + 1];
          } else {
            stack[restRow + column] += stack[take];
            if (blockSize > 1) stack[restRow + column + 1] += stack[take + 1];
          }
        }
      }
    }
  }

  private pivotRange(): [number, number] {
    let smallest = Infinity;
    let largest = 0;
    for (let i = 0; i < this.pivots.length; i++) {
      const pivot = Math.abs(this.pivots[i]);
      if (pivot < smallest) smallest = pivot;
      if (pivot > largest) largest = pivot;
    }
    return [smallest, largest];
  }

  /** Solves with the last factor. `right` and `out` (may be the same array): size × blockSize numbers. */
  solve(right: Float64Array, out: Float64Array = new Float64Array(right.length)): Float64Array {
    return this.solveUpper(this.solveLower(right, this.work), out);
  }

  /** As `solve`, for many right sides: the same bits, faster. */
  solveMany(rights: readonly Float64Array[]): Float64Array[] {
    const { symbolic, panels, pivots, fronts } = this;
    this.assertUsable();
    if (!fronts.four || symbolic.blockSize !== 3) return rights.map((right) => this.solve(right));
    const found: Float64Array[] = [];
    for (let k = 0; k < rights.length; k += 4)
      found.push(...solveFour(symbolic, panels, pivots, fronts.four, rights.slice(k, k + 4)));
    return found;
  }

  /**
   * First half of a solve: y = L⁻¹ P b, in elimination order (`out` is not `right`). Skips supernodes where b and
   * everything below is zero, so a right side with few entries is cheap.
   * With it, aᵀ M⁻¹ b = Σ (L⁻¹Pa)ᵢ (L⁻¹Pb)ᵢ / Dᵢ: see `innerProduct`.
   */
  solveLower(right: Float64Array, out: Float64Array): Float64Array {
    this.assertUsable();
    const { symbolic, panels } = this;
    const { order, size, blockSize, columnStart, rowStart, rows, panelStart } = symbolic;
    for (let k = 0; k < size; k++) {
      for (let a = 0; a < blockSize; a++) out[k * blockSize + a] = right[order[k] * blockSize + a];
    }
    const count = columnStart.length - 1;
    for (let s = 0; s < count; s++) {
      const first = columnStart[s] * blockSize;
      const width = (columnStart[s + 1] - columnStart[s]) * blockSize;
      let isZero = true;
      for (let i = 0; i < width; i++) if (out[first + i] !== 0) isZero = false;
      if (isZero) continue;
      let row = panelStart[s] + width;
      for (let i = 1; i < width; i++, row += width) {
        let sum = out[first + i];
        for (let k = 0; k < i; k++) sum -= panels[row + k] * out[first + k];
        out[first + i] = sum;
      }
      row = panelStart[s] + width * width;
      for (let r = rowStart[s]; r < rowStart[s + 1]; r++, row += blockSize * width) {
        const to = rows[r] * blockSize;
        let sum0 = 0;
        let sum1 = 0;
        if (blockSize === 1) for (let k = 0; k < width; k++) sum0 += panels[row + k] * out[first + k];
        else if (blockSize === 3) {
          let sum2 = 0;
          for (let k = 0; k < width; k++) {
            const value = out[first + k];
            sum0 += panels[row + k] * value;
            sum1 += panels[row + width + k] * value;
            sum2 += panels[row + 2 * width + k] * value;
          }
          out[to + 1] -= sum1;
          out[to + 2] -= sum2;
        } else {
          for (let k = 0; k < width; k++) {
            const value = out[first + k];
            sum0 += panels[row + k] * value;
            sum1 += panels[row + width + k] * value;
          }
          out[to + 1] -= sum1;
        }
        out[to] -= sum0;
      }
    }
    return out;
  }

  /** Second half of a solve: x with D Lᵀ P x = y; `lower` is y in elimination order, and is overwritten. */
  solveUpper(lower: Float64Array, out: Float64Array): Float64Array {
    this.assertUsable();
    const { symbolic, panels, gathered, pivots } = this;
    const { order, size, blockSize, columnStart, rowStart, rows, panelStart } = symbolic;
    for (let s = columnStart.length - 2; s >= 0; s--) {
      const first = columnStart[s] * blockSize;
      const width = (columnStart[s + 1] - columnStart[s]) * blockSize;
      for (let i = 0; i < width; i++) gathered[i] = lower[first + i] / pivots[first + i];
      let row = panelStart[s] + width * width;
      for (let r = rowStart[s]; r < rowStart[s + 1]; r++, row += blockSize * width) {
        const value0 = lower[rows[r] * blockSize];
        if (blockSize === 1) for (let k = 0; k < width; k++) gathered[k] -= panels[row + k] * value0;
        else if (blockSize === 3) {
          const value1 = lower[rows[r] * blockSize + 1];
          const value2 = lower[rows[r] * blockSize + 2];
          for (let k = 0; k < width; k++) {
            gathered[k] =
              gathered[k] -
              panels[row + k] * value0 -
              panels[row + width + k] * value1 -
              panels[row + 2 * width + k] * value2;
          }
        } else {
          const value1 = lower[rows[r] * blockSize + 1];
          for (let k = 0; k < width; k++) {
            gathered[k] -= panels[row + k] * value0 + panels[row + width + k] * value1;
          }
        }
      }
      for (let i = width - 1; i >= 0; i--) {
        const value = gathered[i];
        lower[first + i] = value;
        row = panelStart[s] + i * width;
        for (let k = 0; k < i; k++) gathered[k] -= panels[row + k] * value;
      }
    }
    for (let k = 0; k < size; k++) {
      for (let a = 0; a < blockSize; a++) out[order[k] * blockSize + a] = lower[k * blockSize + a];
    }
    return out;
  }

  /** aᵀ M⁻¹ b from a and b as `solveLower` returned them. */
  innerProduct(a: Float64Array, b: Float64Array): number {
    const { pivots } = this;
    let sum = 0;
    for (let i = 0; i < pivots.length; i++) sum += (a[i] * b[i]) / pivots[i];
    return sum;
  }

  private assertUsable(): void {
    assertInvariant(this.isUsable, 'math', 'a sparse solve follows a usable factor', this.isUsable);
  }
}

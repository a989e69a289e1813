import {
  eliminationTree,
  invert,
  permutedRows,
  postorder,
  type RowLists,
  transpose,
} from './elimination-tree.ts';
import { orderMinimumDegree } from './order-minimum-degree.ts';
import type { SparsePattern } from './sparse-pattern.ts';

/** Unknowns of one entry of the pattern: a number, a point in the plane, a point in space. */
export type BlockSize = 1 | 2 | 3;

/**
 * Everything about a sparse LDLᵀ that depends on the pattern alone; reused for any number of factors.
 * Supernodes are runs of columns that share their rows; each is factored as one dense front.
 * "Block" = one entry of the pattern; scalars come from the block size.
 */
export interface LdltSymbolic {
  readonly size: number;
  readonly blockSize: BlockSize;
  /** order[k] = original index at elimination position k. */
  readonly order: Int32Array;
  /** #S + 1 first column (position) of each supernode. */
  readonly columnStart: Int32Array;
  /** #S + 1 into `rows`: positions below the supernode's own columns, rising. */
  readonly rowStart: Int32Array;
  readonly rows: Int32Array;
  /** Per entry of `rows`: its place in the parent's front, in blocks. */
  readonly parentPlace: Int32Array;
  readonly parent: Int32Array;
  /** #S + 1 offset of each supernode's dense panel (front rows × own columns, row by row), in numbers. */
  readonly panelStart: Int32Array;
  /** Per number of the values array: where it goes in the panels; −1 for the unused half of diagonal blocks. */
  readonly target: Int32Array;
  /** Numbers of working stack the fronts need at most. */
  readonly stackSize: number;
  readonly largestFront: number;
  readonly largestWidth: number;
}

/**
 * Plans the factorisation: order, elimination tree, supernodes, fronts, and where each value goes.
 * `order` overrides the minimum degree order. Cost: proportional to the factor's pattern.
 * Sources: Liu, "The role of elimination trees in sparse factorization", SIAM J. Matrix Anal. Appl. 11
 * (1990); Duff and Reid, "The multifrontal solution of indefinite sparse symmetric linear equations",
 * ACM TOMS 9 (1983); relaxed supernodes: Ashcraft and Grimes, ACM TOMS 15 (1989).
 */
export function analyseLdlt(pattern: SparsePattern, blockSize: BlockSize, order?: Int32Array): LdltSymbolic {
  const first = order ?? orderMinimumDegree(pattern);
  const upper = permutedRows(pattern, first);
  const tree = eliminationTree(upper, pattern.size);
  const post = postorder(tree);
  const ordered = post.map((k) => first[k]);
  const fundamental = findSupernodes(
    permutedRows(pattern, ordered),
    pattern.size,
    Math.floor((blockSize === 3 ? WIDEST_IN_SPACE : WIDEST) / blockSize),
  );
  const merged = mergeSmallSupernodes(fundamental, blockSize);
  const finalOrder = merged.oldPosition.map((k) => ordered[k]);
  return layOut(pattern, blockSize, finalOrder, merged);
}

interface Supernodes {
  /** #S + 1. */
  readonly columnStart: Int32Array;
  /** Rows below the own columns, rising. */
  readonly rows: Int32Array[];
  readonly parent: Int32Array;
}

/** Columns of a supernode, in numbers: its panel's rows stay in the nearest cache while it is factored. */
const WIDEST = 64;
/** Of points in space, whose fronts are large: fewer remainders to hand up weigh more. */
const WIDEST_IN_SPACE = 144;

/** Groups columns with nested row sets, from the postordered lower triangle. */
function findSupernodes(lower: RowLists, size: number, widest: number): Supernodes {
  // 1. Row sets of all columns, children merged into parents.
  const columns = transpose(lower, size);
  const structure: Int32Array[] = new Array(size);
  const parent = new Int32Array(size).fill(-1);
  const childHead = new Int32Array(size).fill(-1);
  const childNext = new Int32Array(size).fill(-1);
  const seen = new Int32Array(size).fill(-1);
  const scratch = new Int32Array(size);
  const starts: number[] = [];
  for (let j = 0; j < size; j++) {
    let count = 0;
    seen[j] = j;
    for (let k = columns.start[j]; k < columns.start[j + 1]; k++) {
      const i = columns.index[k];
      if (seen[i] !== j) {
        seen[i] = j;
        scratch[count++] = i;
      }
    }
    let isContinued = false;
    for (let c = childHead[j]; c >= 0; c = childNext[c]) {
      const below = structure[c];
      for (let k = 0; k < below.length; k++) {
        const i = below[k];
        if (seen[i] !== j) {
          seen[i] = j;
          scratch[count++] = i;
        }
      }
      if (c === j - 1 && below.length === count + 1 && childNext[c] < 0 && childHead[j] === c)
        isContinued = true;
    }
    // A run's next column has the rows of the one before, which are in order already.
    structure[j] = isContinued ? structure[j - 1].subarray(1) : scratch.slice(0, count).sort();
    if (count > 0) {
      const p = structure[j][0];
      parent[j] = p;
      childNext[j] = childHead[p];
      childHead[p] = j;
    }
    if (!isContinued || j - starts[starts.length - 1] >= widest) starts.push(j);
  }
  // 2. Runs of columns become supernodes; the last column's rows are theirs.
  starts.push(size);
  const columnStart = Int32Array.from(starts);
  const count = columnStart.length - 1;
  const supernodeOf = new Int32Array(size);
  for (let s = 0; s < count; s++) supernodeOf.fill(s, columnStart[s], columnStart[s + 1]);
  const rows: Int32Array[] = [];
  const superParent = new Int32Array(count).fill(-1);
  for (let s = 0; s < count; s++) {
    const last = columnStart[s + 1] - 1;
    rows.push(structure[last]);
    if (parent[last] >= 0) superParent[s] = supernodeOf[parent[last]];
  }
  return { columnStart, rows, parent: superParent };
}

interface MergedSupernodes extends Supernodes {
  /** New position → position before merging. */
  readonly oldPosition: Int32Array;
}

/** Merges a supernode into its parent where the zeros so stored cost less than the bookkeeping saved. */
function mergeSmallSupernodes(nodes: Supernodes, blockSize: number): MergedSupernodes {
  const count = nodes.parent.length;
  // 1. Decide, children first. `into` chains lead to the surviving supernode.
  const into = Int32Array.from({ length: count }, (_, s) => s);
  const width = new Float64Array(count);
  const zeros = new Float64Array(count);
  for (let s = 0; s < count; s++) width[s] = nodes.columnStart[s + 1] - nodes.columnStart[s];
  for (let s = 0; s < count; s++) {
    const p = nodes.parent[s];
    if (p < 0) continue;
    const own = width[s];
    const below = width[p] + nodes.rows[p].length;
    const extra = zeros[s] + zeros[p] + own * (below - nodes.rows[s].length);
    const both = own + width[p];
    const area = both * (both / 2 + nodes.rows[p].length);
    const share = extra / area;
    const columns = both * blockSize;
    if (
      columns <= 4 ||
      (columns <= 12 && share < 0.3) ||
      (columns <= 32 && share < 0.1) ||
      (columns <= WIDEST && share < 0.03)
    ) {
      into[s] = p;
      width[p] = both;
      zeros[p] = extra;
    }
  }
  for (let s = count - 1; s >= 0; s--) into[s] = into[into[s]];
  // 2. New tree of survivors, postordered; merged columns come just before their survivor's own.
  const survivorParent = new Int32Array(count).fill(-1);
  for (let s = 0; s < count; s++) {
    if (into[s] === s && nodes.parent[s] >= 0) survivorParent[s] = into[nodes.parent[s]];
    else if (into[s] !== s) survivorParent[s] = into[s];
  }
  const members: number[][] = Array.from({ length: count }, () => []);
  for (let s = 0; s < count; s++) members[into[s]].push(s);
  const visit = postorder(survivorParent).filter((s) => into[s] === s);
  const newIndex = new Int32Array(count).fill(-1);
  visit.forEach((s, k) => {
    newIndex[s] = k;
  });
  const size = nodes.columnStart[count];
  const oldPosition = new Int32Array(size);
  const columnStart = new Int32Array(visit.length + 1);
  let position = 0;
  visit.forEach((s, k) => {
    columnStart[k] = position;
    for (const m of members[s]) {
      for (let c = nodes.columnStart[m]; c < nodes.columnStart[m + 1]; c++) oldPosition[position++] = c;
    }
  });
  columnStart[visit.length] = size;
  const newPosition = invert(oldPosition);
  const rows = Array.from(visit, (s) => nodes.rows[s].map((i) => newPosition[i]).sort());
  const parent = Int32Array.from(visit, (s) => (survivorParent[s] < 0 ? -1 : newIndex[survivorParent[s]]));
  return { columnStart, rows, parent, oldPosition };
}

function layOut(
  pattern: SparsePattern,
  blockSize: BlockSize,
  order: Int32Array,
  nodes: MergedSupernodes,
): LdltSymbolic {
  const { columnStart, parent } = nodes;
  const count = parent.length;
  // 1. Row lists in one array, places in the parent's front, panel offsets.
  const rowStart = new Int32Array(count + 1);
  for (let s = 0; s < count; s++) rowStart[s + 1] = rowStart[s] + nodes.rows[s].length;
  const rows = new Int32Array(rowStart[count]);
  const parentPlace = new Int32Array(rowStart[count]);
  const panelStart = new Int32Array(count + 1);
  let largestFront = 0;
  let largestWidth = 0;
  for (let s = 0; s < count; s++) {
    rows.set(nodes.rows[s], rowStart[s]);
    const width = columnStart[s + 1] - columnStart[s];
    const front = (width + nodes.rows[s].length) * blockSize;
    panelStart[s + 1] = panelStart[s] + front * width * blockSize;
    largestFront = Math.max(largestFront, front);
    largestWidth = Math.max(largestWidth, width * blockSize);
    if (parent[s] >= 0) {
      locate(nodes.rows[s], parentPlace, rowStart[s], nodes, parent[s]);
    }
  }
  return {
    size: pattern.size,
    blockSize,
    order,
    columnStart,
    rowStart,
    rows,
    parentPlace,
    parent,
    panelStart,
    target: valueTargets(pattern, blockSize, order, nodes, panelStart),
    stackSize: peakStack(nodes, blockSize),
    largestFront,
    largestWidth,
  };
}

/** Places of rising positions `wanted` in the front of supernode s (own columns, then its rows). */
function locate(wanted: Int32Array, out: Int32Array, at: number, nodes: Supernodes, s: number): void {
  const first = nodes.columnStart[s];
  const width = nodes.columnStart[s + 1] - first;
  const rows = nodes.rows[s];
  let k = 0;
  for (let q = 0; q < wanted.length; q++) {
    const i = wanted[q];
    if (i < first + width) out[at + q] = i - first;
    else {
      while (rows[k] !== i) k++;
      out[at + q] = width + k;
    }
  }
}

/** Numbers from one row of a front's remainder to the next; of points in space a multiple of 4, for `vectorFronts`. */
export function strideOfRest(side: number, blockSize: number): number {
  return blockSize === 3 ? (side + 3) & ~3 : side;
}

/** Stack numbers needed by the fronts' remainders, children stacked until their parent takes them. */
function peakStack(nodes: Supernodes, blockSize: number): number {
  const count = nodes.parent.length;
  const waiting = new Float64Array(count);
  let height = 0;
  let peak = 0;
  for (let s = 0; s < count; s++) {
    const side = nodes.rows[s].length * blockSize;
    const room = side * strideOfRest(side, blockSize);
    peak = Math.max(peak, height + room);
    height += room - waiting[s];
    if (nodes.parent[s] >= 0) waiting[nodes.parent[s]] += room;
  }
  return peak;
}

function valueTargets(
  pattern: SparsePattern,
  blockSize: BlockSize,
  order: Int32Array,
  nodes: MergedSupernodes,
  panelStart: Int32Array,
): Int32Array {
  const position = invert(order);
  const { columnStart } = nodes;
  const supernodeOf = new Int32Array(pattern.size);
  for (let s = 0; s + 1 < columnStart.length; s++) supernodeOf.fill(s, columnStart[s], columnStart[s + 1]);
  const perBlock = blockSize * blockSize;
  const target = new Int32Array(pattern.rowIndex.length * perBlock).fill(-1);
  for (let c = 0; c < pattern.size; c++) {
    for (let k = pattern.columnStart[c]; k < pattern.columnStart[c + 1]; k++) {
      const p = position[c];
      const q = position[pattern.rowIndex[k]];
      const s = supernodeOf[Math.min(p, q)];
      const width = columnStart[s + 1] - columnStart[s];
      const column = Math.min(p, q) - columnStart[s];
      const below = Math.max(p, q);
      const row = below < columnStart[s + 1] ? below - columnStart[s] : width + findRow(nodes.rows[s], below);
      const isTurned = q < p;
      for (let a = 0; a < blockSize; a++) {
        for (let b = 0; b < blockSize; b++) {
          if (p === q && b > a) continue;
          const [ra, cb] = isTurned ? [b, a] : [a, b];
          target[k * perBlock + a * blockSize + b] =
            panelStart[s] + (row * blockSize + ra) * width * blockSize + column * blockSize + cb;
        }
      }
    }
  }
  return target;
}

function findRow(rows: Int32Array, wanted: number): number {
  let low = 0;
  let high = rows.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle] < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}

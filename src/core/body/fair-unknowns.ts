import {
  type BandMatrix,
  factorBanded,
  makeBandMatrix,
  multiplyBanded,
  sliceBand,
  solveLowerBanded,
  solveUpperBanded,
} from '../math/index.ts';
import { type FairEnergies, HALF_COLUMNS, halfColumn, isPinned, type Parity } from './fair-energy.ts';
import type { Coordinate } from './fair-weights.ts';
import { NET_COLUMNS } from './trunk-net.ts';

/** One coordinate of the net in one parity: a run of rows of the right half. */
interface Group extends Block {
  readonly axis: 0 | 1 | 2;
  readonly parity: Parity;
  readonly firstRow: number;
  readonly fair: BandMatrix;
}

/** Unknowns that share an energy apart from all others. */
interface Block {
  /** Where its unknowns begin. */
  readonly start: number;
  readonly size: number;
  readonly matrix: BandMatrix;
  readonly factor: BandMatrix;
}

export interface BumpUnknown {
  /** The bumps that share this height. */
  readonly bumps: readonly number[];
  readonly stiffness: number;
}

/** A force on one place of the net, on the right half: what both sides share when mirrored, and what they do not. */
export interface Push {
  readonly row: number;
  readonly along: Float64Array;
  readonly column: number;
  readonly round: Float64Array;
  readonly own: readonly number[];
  readonly other: readonly number[];
}

/**
 * The unknowns of fairing: how far the controls of the net move, then how far heights of bumps change, mm. On a body with
 * like sides only the right half counts, so that mirrored points stay mirrored to the last bit of the sums.
 * The top row stays; z stays below `firstTilted`.
 */
export class FairUnknowns {
  readonly count: number;
  private readonly groups: readonly Group[];
  /** Heights of whole rows, below those that may tilt. */
  private readonly levels: Block;
  private readonly blocks: readonly Block[];
  private readonly netCount: number;

  constructor(
    energies: FairEnergies,
    rows: number,
    firstTilted: number,
    isSymmetric: boolean,
    private readonly bumps: readonly BumpUnknown[],
  ) {
    const factors = new Map<string, { matrix: BandMatrix; factor: BandMatrix; fair: BandMatrix }>();
    const blockOf = (coordinate: Coordinate, parity: Parity, firstRow: number) => {
      const key = `${coordinate} ${parity}`;
      let block = factors.get(key);
      if (!block) {
        const cut = (band: BandMatrix) => sliceBand(band, firstRow * HALF_COLUMNS, (rows - 1) * HALF_COLUMNS);
        const matrix = cut(energies[coordinate][parity].whole);
        const factor = { ...matrix, values: matrix.values.slice() };
        factorBanded(factor);
        block = { matrix, factor, fair: energies[coordinate][parity].fair };
        factors.set(key, block);
      }
      return block;
    };
    const groups: Group[] = [];
    let start = 0;
    for (const axis of [0, 1, 2] as const) {
      const own: Parity = axis === 0 ? 'odd' : 'even';
      const other: Parity = axis === 0 ? 'even' : 'odd';
      for (const parity of isSymmetric ? [own] : [own, other]) {
        const firstRow = axis === 2 ? firstTilted : 0;
        const size = (rows - 1 - firstRow) * HALF_COLUMNS;
        groups.push({
          axis,
          parity,
          firstRow,
          start,
          size,
          ...blockOf(axis === 2 ? 'height' : 'plan', parity, firstRow),
        });
        start += size;
      }
    }
    this.groups = groups;
    this.levels = makeLevels(start, firstTilted - FIXED_BELOW_TILTED);
    this.blocks = [...groups, this.levels];
    this.netCount = start + this.levels.size;
    this.count = this.netCount + bumps.length;
  }

  /** Adds to a gradient what pulls on the controls of the net (rows × NET_COLUMNS × 3) are to the unknowns. */
  pullControls(pulls: Float64Array, out: Float64Array): void {
    for (const { axis, parity, firstRow, start, size } of this.groups) {
      for (let column = 0; column < NET_COLUMNS; column++) {
        const [half, isMirrored] = halfColumn(column);
        if (isPinned(half, parity)) continue;
        const sign = parity === 'odd' && isMirrored ? -1 : 1;
        let from = 3 * (firstRow * NET_COLUMNS + column) + axis;
        for (let k = start + half; k < start + size; k += HALF_COLUMNS, from += 3 * NET_COLUMNS) {
          out[k] += sign * pulls[from];
        }
      }
    }
    const { start, size } = this.levels;
    for (let k = 0; k < size * NET_COLUMNS; k++) out[start + Math.floor(k / NET_COLUMNS)] += pulls[3 * k + 2];
  }

  /** The same for the height of a bump. */
  pullBump(bump: number, pull: number, out: Float64Array): void {
    this.bumps.forEach(({ bumps }, i) => {
      if (bumps.includes(bump)) out[this.netCount + i] += pull;
    });
  }

  /** Controls and bump heights moved by the unknowns. */
  move(controls: Float64Array, values: Float64Array): Float64Array {
    const out = controls.slice();
    for (const { axis, parity, firstRow, start, size } of this.groups) {
      for (let column = 0; column < NET_COLUMNS; column++) {
        const [half, isMirrored] = halfColumn(column);
        if (isPinned(half, parity)) continue;
        const sign = parity === 'odd' && isMirrored ? -1 : 1;
        let to = 3 * (firstRow * NET_COLUMNS + column) + axis;
        for (let k = start + half; k < start + size; k += HALF_COLUMNS, to += 3 * NET_COLUMNS) {
          out[to] += sign * values[k];
        }
      }
    }
    const { start, size } = this.levels;
    for (let row = 0; row < size; row++) {
      for (let column = 0; column < NET_COLUMNS; column++)
        out[3 * (row * NET_COLUMNS + column) + 2] += values[start + row];
    }
    return out;
  }

  /** How far a bump's height has changed, mm. */
  changeOfBump(bump: number, values: Float64Array): number {
    const i = this.bumps.findIndex(({ bumps }) => bumps.includes(bump));
    return i < 0 ? 0 : values[this.netCount + i];
  }

  /** Where the energy and pushes alone would go from the rough net, bumps as they are. */
  findRest(controls: Float64Array, pushes: readonly Push[]): Float64Array {
    const out = new Float64Array(this.count);
    for (const group of this.groups) {
      const { axis, parity, fair, firstRow, start, size } = group;
      const rough = partOf(controls, axis, parity);
      const force = new Float64Array(rough.length);
      multiplyBanded(fair, rough, force);
      const part = out.subarray(start, start + size);
      for (let i = 0; i < size; i++)
        part[i] = isPinned(i % HALF_COLUMNS, parity) ? 0 : -force[firstRow * HALF_COLUMNS + i];
      for (const push of pushes) addPush(push, group, part);
      solveLowerBanded(group.factor, part);
      solveUpperBanded(group.factor, part);
    }
    return out;
  }

  /** y = L⁻¹ g in place, L Lᵀ the energy. */
  solveLower(g: Float64Array): void {
    for (const { factor, start, size } of this.blocks)
      solveLowerBanded(factor, g.subarray(start, start + size));
    this.bumps.forEach(({ stiffness }, i) => {
      g[this.netCount + i] /= Math.sqrt(stiffness);
    });
  }

  /** x = L⁻ᵀ y in place. */
  solveUpper(y: Float64Array): void {
    for (const { factor, start, size } of this.blocks)
      solveUpperBanded(factor, y.subarray(start, start + size));
    this.bumps.forEach(({ stiffness }, i) => {
      y[this.netCount + i] /= Math.sqrt(stiffness);
    });
  }

  /** Half of xᵀ K x. */
  measureEnergy(x: Float64Array): number {
    let sum = 0;
    for (const { matrix, start, size } of this.blocks) {
      const part = x.subarray(start, start + size);
      const force = new Float64Array(size);
      multiplyBanded(matrix, part, force);
      for (let i = 0; i < size; i++) sum += 0.5 * part[i] * force[i];
    }
    this.bumps.forEach(({ stiffness }, i) => {
      sum += 0.5 * stiffness * x[this.netCount + i] ** 2;
    });
    return sum;
  }
}

function addPush({ row, along, column, round, own, other }: Push, group: Group, out: Float64Array): void {
  const { axis, parity, firstRow, size } = group;
  const force = (axis === 0) === (parity === 'odd') ? own[axis] : other[axis];
  for (let a = 0; a < 4; a++) {
    for (let b = 0; b < 4; b++) {
      const [half, isMirrored] = halfColumn((column + b) % NET_COLUMNS);
      const k = (row + a - firstRow) * HALF_COLUMNS + half;
      if (k < 0 || k >= size || row + a < firstRow || isPinned(half, parity)) continue;
      out[k] += (parity === 'odd' && isMirrored ? -1 : 1) * along[a] * round[b] * force;
    }
  }
}

/** Rows just below those that tilt keep their heights, so that the two join. */
const FIXED_BELOW_TILTED = 3;
/** What it costs to lift a row by itself, and to space rows unevenly. */
const LIFT = 0.6;
const UNEVEN = 10;

/** Rows are lifted as wholes: second differences cost, and the lift itself a little. */
function makeLevels(start: number, size: number): Block {
  const matrix = makeBandMatrix(size, 2);
  const bend = [1, -2, 1];
  for (let row = 0; row < size; row++) {
    matrix.values[3 * row + 2] += LIFT;
    for (let a = 0; a < 3; a++) {
      for (let b = 0; b <= a; b++) {
        if (row + a < size) matrix.values[3 * (row + a) + 2 - a + b] += UNEVEN * bend[a] * bend[b];
      }
    }
  }
  const factor = { ...matrix, values: matrix.values.slice() };
  factorBanded(factor);
  return { start, size, matrix, factor };
}

/** One coordinate's even or odd part on the right half. */
function partOf(controls: Float64Array, axis: number, parity: Parity): Float64Array {
  const rows = controls.length / (3 * NET_COLUMNS);
  const out = new Float64Array(rows * HALF_COLUMNS);
  const sign = parity === 'odd' ? -0.5 : 0.5;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < NET_COLUMNS; column++) {
      const [half, isMirrored] = halfColumn(column);
      if (isPinned(half, parity)) continue;
      const isCentre = half === 0 || half === HALF_COLUMNS - 1;
      const share = isCentre ? 1 : isMirrored ? sign : 0.5;
      out[row * HALF_COLUMNS + half] += share * controls[3 * (row * NET_COLUMNS + column) + axis];
    }
  }
  return out;
}

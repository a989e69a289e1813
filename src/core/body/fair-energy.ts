import { type BandMatrix, cubicSpanPolynomials, makeBandMatrix } from '../math/index.ts';
import type { Coordinate, FairWeights } from './fair-weights.ts';
import { COLUMN_STEP, NET_COLUMNS } from './trunk-net.ts';

/** Controls of the right half of a row, from the centre back to the centre front. */
export const HALF_COLUMNS = NET_COLUMNS / 2 + 1;
/** A mirrored coordinate is even across the centres (y, z), or odd (x). */
export type Parity = 'even' | 'odd';

/** Quadratic forms of one coordinate of the net's right half; controls row by row. */
export interface FairEnergy {
  /** Fairness alone. */
  readonly fair: BandMatrix;
  /** Fairness and the hold on the rough surface. */
  readonly whole: BandMatrix;
}
export type FairEnergies = Readonly<Record<Coordinate, Readonly<Record<Parity, FairEnergy>>>>;

/** Millimetres that count as one radian: about the radius of a trunk. */
const LENGTH = 130;
/** Waves shorter than this are smoothed away where the hold is 1, mm. */
const SMOOTH_WAVE = 150;
const STRAIGHT_WAVE = 180;
const SMOOTH = (SMOOTH_WAVE / (2 * Math.PI * LENGTH)) ** 6;
const STRAIGHT = (STRAIGHT_WAVE / (2 * Math.PI * LENGTH)) ** 4;
const WIDTH = 3 * HALF_COLUMNS + 3;

/**
 * Energy of a trunk F(u, τ), τ = rise / 130 mm, over its right half: the integral of
 * hold |F − F₀|² + λ smooth (|F_τττ|² + |F_uuu + F_u|² + 3 |F_uττ|² + |(F_uuu + F_u)_τ|²) + μ straight |F_ττ|².
 * The terms in u vanish on every ellipse. Weights count as even over a cell. About 2 ms.
 */
export function assembleEnergy(
  knots: Float64Array,
  weightsAt: (u: number, t: number, coordinate: Coordinate) => FairWeights,
): FairEnergies {
  const rows = knots.length - 4;
  const make = () => makeBandMatrix(rows * HALF_COLUMNS, WIDTH);
  const pair = () => ({ even: { fair: make(), whole: make() }, odd: { fair: make(), whole: make() } });
  const energies: FairEnergies = { plan: pair(), height: pair() };
  const round = productsRound();
  const local = new Float64Array(256);
  const held = new Float64Array(256);
  for (let i = 3; i < rows; i++) {
    const along = productsAlong(knots, i);
    const t = 0.5 * (knots[i] + knots[i + 1]);
    for (let cell = 0; cell < HALF_COLUMNS - 1; cell++) {
      for (const coordinate of ['plan', 'height'] as const) {
        const weights = weightsAt((cell + 0.5) * COLUMN_STEP - 0.5 * Math.PI, t, coordinate);
        fillCell(weights, along, round, local, held);
        for (const parity of ['even', 'odd'] as const) {
          addCell(energies[coordinate][parity].fair, local, i - 3, cell - 1, parity);
          addCell(energies[coordinate][parity].whole, held, i - 3, cell - 1, parity);
        }
      }
    }
  }
  for (const { odd } of [energies.plan, energies.height]) {
    pinCentres(odd.fair.values, rows);
    pinCentres(odd.whole.values, rows);
  }
  return energies;
}

/** 16 × 16 of one cell: `local` fairness alone, `held` with the hold. */
function fillCell(
  { hold, smooth, straight }: FairWeights,
  along: readonly Float64Array[],
  round: Readonly<Record<'value' | 'slope' | 'bend', Float64Array>>,
  local: Float64Array,
  held: Float64Array,
): void {
  const e = SMOOTH * smooth;
  const f = STRAIGHT * straight;
  for (let a = 0; a < 16; a++) {
    for (let b = 0; b < 16; b++) {
      const [p, q] = [4 * (a >> 2) + (b >> 2), 4 * (a & 3) + (b & 3)];
      local[16 * a + b] =
        (e * along[3][p] + f * along[2][p]) * round.value[q] +
        e * ((along[0][p] + along[1][p]) * round.bend[q] + 3 * along[2][p] * round.slope[q]);
      held[16 * a + b] = local[16 * a + b] + hold * along[0][p] * round.value[q];
    }
  }
}

/** Adds weight · |F(u, t) − F₀(u, t)|² of one point to the whole energy. */
export function holdPoint(
  energies: FairEnergies,
  firstRow: number,
  along: Float64Array,
  firstColumn: number,
  round: Float64Array,
  weight: number,
): void {
  const local = new Float64Array(256);
  for (let a = 0; a < 16; a++) {
    for (let b = 0; b < 16; b++) {
      local[16 * a + b] = weight * along[a >> 2] * round[a & 3] * along[b >> 2] * round[b & 3];
    }
  }
  for (const parity of ['even', 'odd'] as const) {
    addCell(energies.plan[parity].whole, local, firstRow, firstColumn, parity);
    addCell(energies.height[parity].whole, local, firstRow, firstColumn, parity);
  }
}

/** Where a column of the net lies in the right half, and whether it is a mirrored one. */
export function halfColumn(column: number): readonly [half: number, isMirrored: boolean] {
  const at = (column + NET_COLUMNS / 4 + NET_COLUMNS) % NET_COLUMNS;
  return at < HALF_COLUMNS ? [at, false] : [NET_COLUMNS - at, true];
}

/** An odd coordinate is 0 on both centres. */
export function isPinned(half: number, parity: Parity): boolean {
  return parity === 'odd' && (half === 0 || half === HALF_COLUMNS - 1);
}

function addCell(
  { width, values }: BandMatrix,
  local: Float64Array,
  firstRow: number,
  firstHalf: number,
  parity: Parity,
): void {
  // Where the cell's four columns lie in the half, and with which sign; 0 where pinned.
  const halves = [0, 0, 0, 0];
  const signs = [1, 1, 1, 1];
  for (let k = 0; k < 4; k++) {
    const at = firstHalf + k;
    const half = at < 0 ? -at : at < HALF_COLUMNS ? at : 2 * (HALF_COLUMNS - 1) - at;
    halves[k] = half;
    if (isPinned(half, parity)) signs[k] = 0;
    else if (parity === 'odd' && half !== at) signs[k] = -1;
  }
  const columns = HALF_COLUMNS;
  for (let a = 0; a < 16; a++) {
    const i = (firstRow + (a >> 2)) * columns + halves[a & 3];
    const row = i * (width + 1) - i + width;
    for (let b = 0; b < 16; b++) {
      const j = (firstRow + (b >> 2)) * columns + halves[b & 3];
      if (j <= i) values[row + j] += signs[a & 3] * signs[b & 3] * local[16 * a + b];
    }
  }
}

function pinCentres(values: Float64Array, rows: number): void {
  for (let row = 0; row < rows; row++) {
    for (const half of [0, HALF_COLUMNS - 1]) {
      values[(row * HALF_COLUMNS + half) * (WIDTH + 1) + WIDTH] = 1;
    }
  }
}

/** Four points and weights on [0, 1], exact to degree 7 (Gauss–Legendre). */
const GAUSS: readonly (readonly [at: number, weight: number])[] = [
  [0.0694318442029737, 0.1739274225687269],
  [0.3300094782075719, 0.3260725774312731],
  [0.6699905217924281, 0.3260725774312731],
  [0.9305681557970263, 0.1739274225687269],
];

/** Integrals over one cell of products of the four splines round the body: of values, slopes and f‴ + f′; 4 × 4 each. */
function productsRound(): { value: Float64Array; slope: Float64Array; bend: Float64Array } {
  const polynomials = cubicSpanPolynomials(Float64Array.of(-3, -2, -1, 0, 1, 2, 3, 4), 3);
  const out = { value: new Float64Array(16), slope: new Float64Array(16), bend: new Float64Array(16) };
  for (const [s, weight] of GAUSS) {
    const d = [0, 1, 3].map((order) => derivatives(polynomials, s, order, COLUMN_STEP));
    addProducts(out.value, d[0], weight * COLUMN_STEP);
    addProducts(out.slope, d[1], weight * COLUMN_STEP);
    addProducts(
      out.bend,
      d[2].map((third, b) => third + d[1][b]),
      weight * COLUMN_STEP,
    );
  }
  return out;
}

/** The same over span i upwards, in τ: of the derivatives of order 0 to 3. */
function productsAlong(knots: Float64Array, i: number): Float64Array[] {
  const polynomials = cubicSpanPolynomials(knots, i);
  const h = (knots[i + 1] - knots[i]) / LENGTH;
  return [0, 1, 2, 3].map((order) => {
    const out = new Float64Array(16);
    for (const [s, weight] of GAUSS) addProducts(out, derivatives(polynomials, s, order, h), weight * h);
    return out;
  });
}

function derivatives(polynomials: Float64Array, s: number, order: number, h: number): Float64Array {
  return Float64Array.from({ length: 4 }, (_, b) => {
    let value = 0;
    for (let p = 3; p >= order; p--) {
      let factor = 1;
      for (let k = 0; k < order; k++) factor *= p - k;
      value = value * s + factor * polynomials[4 * b + p];
    }
    return value / h ** order;
  });
}

function addProducts(out: Float64Array, d: Float64Array, weight: number): void {
  for (let a = 0; a < 4; a++) for (let b = 0; b < 4; b++) out[4 * a + b] += weight * d[a] * d[b];
}

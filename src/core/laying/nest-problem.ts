import { withUsual } from '../base/index.ts';
import type { NestItem, NestLattice, NestPlacement, NestProblem, NestTurn } from '../nesting/index.ts';
import type { Piece } from '../pattern/index.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import type { MatchedPrint } from './match-print.ts';
import { turnsOfPiece } from './turns-of-piece.ts';
import type { GroundSheet, KeptPlace, LayGround, Stock } from './types.ts';
import type { Use } from './uses.ts';

/** A fold is a flaw this wide, mm: card is crushed along a crease, not only on its line (common practice, no source). */
const FOLD = 2;
/** Two angles nearer than this are one, radians. */
const SAME_ANGLE = 1e-9;

/** The same search for the same pieces (any number would do). */
const SEED = 1;

/**
 * What is to be searched for: pieces with their ways to lie, on the usable part of the ground. A place kept is where its piece
 * begins, or stays if it is held. `budget` in evaluations.
 */
export function nestProblem(
  use: Use,
  pieces: readonly Piece[],
  stock: Stock,
  ground: LayGround,
  print: MatchedPrint | undefined,
  budget: number,
): NestProblem {
  const places = new Map((stock.placed ?? []).map((place) => [place.piece, place]));
  const from = ground.kind === 'roll' ? ground.usableFrom : 0;
  const items = pieces.map((piece) => {
    const turns = turnsOfPiece(piece.id, use, stock, print?.phases.get(piece.id));
    const shifted = turns.map((turn) => ({ ...turn, mirrored: false, ...shiftLattice(turn.latticeY, from) }));
    return itemOf(piece, shifted, places.get(piece.id), from);
  });
  const gap = withUsual(LAYING_OPTIONS, stock).leastGap ?? use.gap;
  const common = { items, gap, budget, seed: SEED };
  if (ground.kind === 'sheets') return { ...common, sheets: ground.sheets.map(withFolds) };
  const flaws = ground.flaws.map((flaw) => flaw.map((value, i) => (i % 2 === 0 ? value : value - from)));
  return { ...common, width: ground.usableWidth, flaws };
}

function shiftLattice(lattice: NestLattice | undefined, from: number): Pick<NestTurn, 'latticeY'> {
  return lattice ? { latticeY: { ...lattice, phase: lattice.phase - from } } : {};
}

function itemOf(
  { id, cutLine }: Piece,
  turns: NestTurn[],
  place: KeptPlace | undefined,
  from: number,
): NestItem {
  const item = { id, outline: cutLine, turns };
  if (!place) return item;
  const { x, y, angle, sheet = 0 } = place;
  const found = turns.findIndex((turn) => isSameAngle(turn.angle, angle));
  const placement: NestPlacement = { turn: found, sheet, x, y: y - from };
  if (!place.isHeld) return found < 0 ? item : { ...item, start: placement };
  // What the maker turned by hand stays as it was put.
  const own = found < 0 ? [...turns, { angle, mirrored: false }] : turns;
  return { ...item, turns: own, held: found < 0 ? { ...placement, turn: turns.length } : placement };
}

export function isSameAngle(a: number, b: number): boolean {
  return Math.abs(Math.sin((a - b) / 2)) < SAME_ANGLE;
}

function withFolds({ outline, flaws, folds }: GroundSheet): { outline: Float64Array; flaws: Float64Array[] } {
  return { outline, flaws: [...flaws, ...folds.flatMap(thicken)] };
}

/** Every stretch of a polyline as a thin oblong. */
function thicken(line: Float64Array): Float64Array[] {
  const strips: Float64Array[] = [];
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [ax, ay, bx, by] = line.subarray(i, i + 4);
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) continue;
    const [nx, ny] = [(-(by - ay) / length) * (FOLD / 2), ((bx - ax) / length) * (FOLD / 2)];
    strips.push(Float64Array.of(ax + nx, ay + ny, ax - nx, ay - ny, bx - nx, by - ny, bx + nx, by + ny));
  }
  return strips;
}

import { thinPolyline } from '../math/index.ts';
import type { NestProblem } from '../nesting/index.ts';
import type { Piece } from '../pattern/index.ts';
import { findMeetings, type Meeting } from './find-meetings.ts';
import { foldPieces } from './fold-pieces.ts';
import { layGround } from './lay-ground.ts';
import type { LayTask } from './lay-pieces.ts';
import { type MatchedPrint, matchPrint, wayOfMeeting } from './match-print.ts';
import { nestProblem } from './nest-problem.ts';
import { type AllowedTurn, turnsOfPiece } from './turns-of-piece.ts';
import type { LayGround, Stock } from './types.ts';
import { findUse, type Use } from './uses.ts';

/** All that a place found by hand is judged by; worked out once for a task. */
export interface LayRules {
  readonly use: Use;
  readonly stock: Stock;
  /** Those that are laid; on folded cloth one of each pair of twins. */
  readonly pieces: readonly Piece[];
  /** On folded cloth: twins cut from the lower layer, by the piece above them. */
  readonly under: ReadonlyMap<string, Piece>;
  readonly ground: LayGround;
  readonly meetings: readonly Meeting[];
  /** Where a print is carried over the seams. */
  readonly print?: MatchedPrint;
  /** What a search would be given, places kept left out. */
  readonly problem: NestProblem;
  /** Cut lines with no more points than keep them within `FINE`, by the piece's id: judged many times while one is dragged. */
  readonly outlines: ReadonlyMap<string, Float64Array>;
  /** How each piece may lie, by its id. */
  readonly ways: ReadonlyMap<string, readonly AllowedTurn[]>;
}

/** mm: an edge a metre long is off by an area of a few mm² at most. */
const FINE = 0.01;

/** The rules of a task for who lays by hand. O(meetings · pieces). */
export function rulesOfLay({ use: id, pieces: all, stock: given, motifs, budget }: LayTask): LayRules {
  const use = findUse(id);
  const { placed: _places, ...stock } = given;
  const ground = layGround(use, stock);
  const folded = ground.isFolded ? foldPieces(all) : undefined;
  const pieces = folded?.laid ?? all;
  // Nobody sees the lower layer.
  const meets = use.isCloth && !folded && wayOfMeeting(stock.print ?? {}) !== undefined;
  const meetings = meets ? findMeetings(pieces) : [];
  const print = meets ? matchPrint(meetings, motifs, stock.print ?? {}) : undefined;
  return {
    use,
    stock,
    pieces,
    under: folded?.under ?? new Map(),
    ground,
    meetings,
    ...(print && { print }),
    problem: nestProblem(use, pieces, stock, ground, print, budget),
    outlines: new Map(pieces.map(({ id: piece, cutLine }) => [piece, thin(cutLine)])),
    ways: new Map(
      pieces.map((piece) => [piece.id, turnsOfPiece(piece.id, use, stock, print?.phases.get(piece.id))]),
    ),
  };
}

function thin(outline: Float64Array): Float64Array {
  return Float64Array.from(
    thinPolyline(outline, true, FINE).flatMap((i) => [outline[2 * i], outline[2 * i + 1]]),
  );
}

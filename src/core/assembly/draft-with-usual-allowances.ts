import { type Issue, type Result, withUsual } from '../base/index.ts';
import {
  ALLOWANCE_KINDS,
  type AllowanceKind,
  type DraftOptions,
  draftPiece,
  kindsWithUsualAllowance,
  type LabelInfo,
  nameOfAllowanceKind,
  PATTERN_OPTIONS,
  type Piece,
  type PieceInput,
} from '../pattern/index.ts';
import { phrase } from './draft-phrases.ts';

/** What a wide allowance does to a piece that has no room for it. */
const TOO_WIDE: readonly string[] = ['allowance-covers-piece', 'allowance-closes-hollow'];

export interface Drafted {
  /** Parallel to the inputs. */
  readonly pieces: readonly Result<Piece>[];
  readonly issues: readonly Issue[];
}

/**
 * Drafts every piece. Where an allowance that is usual for a kind of edge, and that nobody typed, has no room on some piece, that
 * kind has the general allowance on all pieces, so that partner edges stay alike; a warning says so. What fails without usual
 * allowances too stays a failure. Cost: as drafting; again for the pieces of a kind that was withdrawn.
 */
export function draftWithUsualAllowances(
  inputs: readonly PieceInput[],
  info: LabelInfo,
  optionsOf: (input: PieceInput) => DraftOptions,
): Drafted {
  const withdrawn = new Set<AllowanceKind>();
  const issues: Issue[] = [];
  const draft = (input: PieceInput, more: readonly AllowanceKind[] = []): Result<Piece> =>
    draftPiece(input, info, withoutUsual(input, optionsOf(input), [...withdrawn, ...more]));
  const pieces = inputs.map((input) => draft(input));
  for (const [i, input] of inputs.entries()) {
    if (!isTooWide(pieces[i])) continue;
    const kinds = kindsToWithdraw(input, optionsOf(input), (more) => draft(input, more));
    for (const kind of kinds) {
      withdrawn.add(kind);
      issues.push(withdrawal(kind, input, optionsOf(input)));
    }
    for (const [j, other] of inputs.entries())
      if (other.edges.some(({ allowanceKind: kind }) => kind && kinds.includes(kind)))
        pieces[j] = draft(other);
  }
  return { pieces, issues };
}

function isTooWide(piece: Result<Piece>): boolean {
  return !piece.ok && piece.issues.some(({ code }) => TOO_WIDE.includes(code));
}

/** The first single kind without which the piece can be cut; else all of them, if that helps; else none. */
function kindsToWithdraw(
  input: PieceInput,
  options: DraftOptions,
  draft: (without: readonly AllowanceKind[]) => Result<Piece>,
): readonly AllowanceKind[] {
  const usual = kindsWithUsualAllowance(input, options);
  // Openings first: their edges have no partner.
  const isOpening = (kind: AllowanceKind): boolean =>
    input.edges.some((edge) => edge.allowanceKind === kind && edge.kind === 'opening');
  const kinds = ALLOWANCE_KINDS.filter((kind) => usual.includes(kind));
  const inTurn = [...kinds.filter(isOpening), ...kinds.filter((kind) => !isOpening(kind))];
  const sets = [...inTurn.map((kind) => [kind]), inTurn];
  return sets.find((without) => draft(without).ok) ?? [];
}

function withoutUsual(
  input: PieceInput,
  options: DraftOptions,
  without: readonly AllowanceKind[],
): DraftOptions {
  const usual = kindsWithUsualAllowance(input, options).filter((kind) => without.includes(kind));
  if (usual.length === 0) return options;
  const { allowance } = withUsual(PATTERN_OPTIONS, options);
  const general = Object.fromEntries(usual.map((kind) => [kind, allowance]));
  return { ...options, allowanceByKind: { ...options.allowanceByKind, ...general } };
}

function withdrawal(kind: AllowanceKind, { name }: PieceInput, options: DraftOptions): Issue {
  const { allowance } = withUsual(PATTERN_OPTIONS, options);
  return {
    code: 'usual-allowance-withdrawn',
    path: `allowanceByKind.${kind}`,
    message: phrase('cloth.usual-allowance-withdrawn', {
      ...{ edges: nameOfAllowanceKind(kind), piece: name, allowance },
    }),
    severity: 'warning',
    measured: allowance,
  };
}

import { failure, type Issue, type Result, type Say, success } from '../base/index.ts';
import { nameRevision } from '../form/index.ts';
import { arrangePieces, draftPiece, type Piece, type PieceInput, titleOfSheet } from '../pattern/index.ts';
import type { Project } from '../project/index.ts';
import { bodyInWords, type CutPieces } from './draft-pieces.ts';

/** Cut on the line. */
const BARE = { allowanceByKind: { opening: 0 } } as const;

/** Drafts pieces of one material without allowance, and lays them on one sheet. All issues at once; no pieces, no sheet. */
export function draftBare(
  inputs: readonly PieceInput[],
  material: string,
  project: Project,
  date: string,
  say: Say,
): Result<CutPieces> {
  const issues: Issue[] = [];
  const pieces: Piece[] = [];
  const body = say(bodyInWords(project));
  const info = { say, project: project.name, body, date, revision: nameRevision(project) };
  for (const input of inputs) {
    const piece = draftPiece(input, info, { ...BARE, unit: project.displayUnits });
    issues.push(...piece.issues);
    if (piece.ok) pieces.push(piece.value);
  }
  if (pieces.length < inputs.length) return failure(issues);
  if (pieces.length === 0) return success({ pieces, drawings: [] }, issues);
  const sheet = arrangePieces(pieces, { title: say(titleOfSheet(project.name, material)), say });
  if (!sheet.ok) return failure([...issues, ...sheet.issues]);
  return success({ pieces, drawings: [{ material, drawing: sheet.value }] }, [...issues, ...sheet.issues]);
}

import { failure, type Issue, type Result, type Say, success } from '../base/index.ts';
import { type Form, nameRevision } from '../form/index.ts';
import { type GaugeOptions, gaugedForm, makeGauges } from '../gauge/index.ts';
import { arrangePieces, draftPiece, type Piece, titleOfSheet } from '../pattern/index.ts';
import { bodyInWords, type CutPieces } from './draft-pieces.ts';

/** Cut on the line. */
const BARE = { allowanceByKind: { opening: 0 } } as const;

/**
 * The gauges of a form as pieces, and all of them on one sheet. Fails as `makeGauges` does; drafts have gauges too, their shell
 * is as coarse as their mesh.
 */
export function draftGauges(form: Form, options: GaugeOptions, date: string, say: Say): Result<CutPieces> {
  const { project } = form;
  const inputs = makeGauges(gaugedForm(form.shell, form.closedMesh), options);
  if (!inputs.ok) return inputs;
  const issues: Issue[] = [...inputs.issues];
  const body = say(bodyInWords(project));
  const info = { say, project: project.name, body, date, revision: nameRevision(project) };
  const pieces: Piece[] = [];
  for (const input of inputs.value) {
    const piece = draftPiece(input, info, { ...BARE, unit: project.displayUnits });
    issues.push(...piece.issues);
    if (piece.ok) pieces.push(piece.value);
  }
  if (pieces.length < inputs.value.length) return failure(issues);
  const sheet = arrangePieces(pieces, { title: say(titleOfSheet(project.name, 'gauge')), say });
  if (!sheet.ok) return failure([...issues, ...sheet.issues]);
  const drawings = pieces.length === 0 ? [] : [{ material: 'gauge', drawing: sheet.value }];
  return success({ pieces, drawings }, [...issues, ...sheet.issues]);
}

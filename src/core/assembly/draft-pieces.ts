import { failure, type Issue, type Phrase, type Result, type Say, success } from '../base/index.ts';
import { type Form, nameRevision } from '../form/index.ts';
import { arrangePieces, type Piece, type PieceInput, smoothPiece, titleOfSheet } from '../pattern/index.ts';
import type { Project } from '../project/index.ts';
import { phrase } from './draft-phrases.ts';
import { draftWithUsualAllowances } from './draft-with-usual-allowances.ts';

export type CutPieces = Pick<Form, 'pieces' | 'drawings'>;

/** Drafts every piece and lays the pieces of each material on one sheet. All issues of all pieces at once. */
export function draftPieces(
  inputs: readonly PieceInput[],
  project: Project,
  date: string,
  say: Say,
): Result<CutPieces> {
  const issues: Issue[] = findUnknownEdges(inputs, project);
  const pieces: Piece[] = [];
  const body = say(bodyInWords(project));
  const info = { say, project: project.name, body, date, revision: nameRevision(project) };
  const options = { ...project.cloth, unit: project.displayUnits };
  const drafted = draftWithUsualAllowances(inputs.map(smoothPiece), info, () => options);
  issues.push(...drafted.issues);
  for (const piece of drafted.pieces) {
    issues.push(...piece.issues);
    if (piece.ok) pieces.push(piece.value);
  }
  // A wrong allowance is wrong for every piece: said once.
  if (pieces.length < inputs.length) return failure(withoutRepeats(issues));
  const materials = [...new Set(pieces.map((piece) => piece.material))];
  const drawings: { material: string; drawing: Form['drawings'][number]['drawing'] }[] = [];
  for (const material of materials) {
    const ofMaterial = pieces.filter((piece) => piece.material === material);
    const sheet = arrangePieces(ofMaterial, { title: say(titleOfSheet(project.name, material)), say });
    issues.push(...sheet.issues);
    if (sheet.ok) drawings.push({ material, drawing: sheet.value });
  }
  return drawings.length < materials.length ? failure(issues) : success({ pieces, drawings }, issues);
}

function withoutRepeats(issues: readonly Issue[]): Issue[] {
  const isSame = (a: Issue, b: Issue): boolean =>
    a.path === b.path && JSON.stringify(a.message) === JSON.stringify(b.message);
  return issues.filter((issue, i) => issues.findIndex((other) => isSame(issue, other)) === i);
}

/** Edges given an allowance of their own that no piece has, of the shell or inside it. */
function findUnknownEdges(inputs: readonly PieceInput[], { cloth }: Project): Issue[] {
  const known = [...new Set(inputs.flatMap(({ edges }) => edges.map(({ id }) => id)))];
  return Object.keys(cloth.allowanceByEdge ?? {})
    .filter((id) => !known.includes(id) && !id.startsWith('arm-'))
    .map((id) => ({
      code: 'unknown-edge',
      path: `allowanceByEdge.${id}`,
      message: phrase('cloth.unknown-edge', { edge: id, known }),
      severity: 'warning',
    }));
}

/** The one girth by which two forms in a workroom are told apart. */
export function bodyInWords({ body }: Project): Phrase {
  const { figure, measures } = body;
  const girth = measures.bustGirth;
  return phrase('form.body', typeof girth === 'number' ? { figure, girth } : { figure });
}

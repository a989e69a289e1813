import { failure, type Issue, type Result, type Say, success } from '../base/index.ts';
import type { ArmState } from '../body/index.ts';
import type { FilledMeasures } from '../filled/index.ts';
import type { Form, FormInside } from '../form/index.ts';
import {
  allowanceOfCover,
  checkSkippedTube,
  densityOfFilling,
  designInside,
  furtherParts,
  type InsideForm,
  type InsideShape,
  insideInputs,
  judgeStand,
  listMaterials,
  massOfFill,
} from '../inside/index.ts';
import {
  arrangePieces,
  type Piece,
  type PieceInput,
  smoothPiece,
  titleOfSheet,
  usualAllowance,
} from '../pattern/index.ts';
import type { Project } from '../project/index.ts';
import { type PredictedLevel, predictLevels } from '../simulate/index.ts';
import { bodyInWords } from './draft-pieces.ts';
import { draftWithUsualAllowances } from './draft-with-usual-allowances.ts';
import type { FlatArms } from './flatten-arms.ts';
import { heightOfWaist, isHeightOfWaistAssumed } from './height-of-waist.ts';
import { type FlattenedShell, insideFormFromShell } from './inside-form.ts';
import { makeArmPieces, nameArmSeams } from './make-arm-pieces.ts';

/** Where inner pieces are not to be sewn to anything, cut bare, mm; cloth is hemmed. */
const HEM = 10;
/** Materials whose edges come as chords of a smooth seam. */
const SEWN_TO_SEAMS = ['webs', 'arms'];

/** The webs and all else inside, before the pieces are drafted. */
export interface InsideDesign {
  readonly form: InsideForm;
  readonly shape: InsideShape;
  /** Empty without arm measures. */
  readonly arms: FlatArms;
}

/** Designs webs, ties, straps and pole; straps also at the levels where they are `needed`. What is wrong comes as issues beside the design, so that the panels still come. */
export function designOfShell(
  made: FlattenedShell & { readonly flatArms: Result<FlatArms> },
  project: Project,
  needed: readonly string[] = [],
): Result<InsideDesign> {
  const unrolled = made.flatArms;
  const arms = unrolled.ok ? unrolled.value : { panels: [], flat: [] };
  const form = insideFormFromShell(
    { ...made, arms },
    heightOfWaist(project, made.body),
    isHeightOfWaistAssumed(project),
  );
  const { shape, issues } = designInside(form, project.inside, needed);
  return success({ form, shape, arms }, [...issues, ...unrolled.issues]);
}

/** The arms' pieces, their seams lettered after all that are taken. */
function armInputs(
  { form, arms }: InsideDesign,
  taken: readonly PieceInput[],
  state: ArmState | undefined,
): PieceInput[] {
  const letters = new Set(taken.flatMap(({ edges }) => edges.map(({ letter }) => letter)));
  let next = form.letterCount;
  for (let i = next; i <= form.letterCount + letters.size + 26; i++)
    if (letters.has(form.letterOf(i))) next = i + 1;
  return makeArmPieces(
    arms,
    nameArmSeams(arms.panels, (k) => form.letterOf(next + k)),
    state,
  );
}

/** Inner pieces drafted and laid out by material, the stand judged, the list of materials. */
export function makeInside(
  design: InsideDesign,
  shell: readonly Piece[],
  project: Project,
  date: string,
  say: Say,
  foretold?: ForetoldLevels,
): Result<{ inside: FormInside; drawings: Form['drawings'] }> {
  const issues: Issue[] = [];
  const { form, shape, arms } = design;
  const parts = insideInputs(form, shape, project.inside);
  issues.push(...parts.issues);
  const inputs = [...parts.inputs, ...armInputs(design, parts.inputs, project.body.arms)];
  const pieces: Piece[] = [];
  const info = { say, project: project.name, body: say(bodyInWords(project)), date };
  // Plates and their covers come as fair curves already.
  const smooth = inputs.map((input) => (SEWN_TO_SEAMS.includes(input.material) ? smoothPiece(input) : input));
  const drafted = draftWithUsualAllowances(smooth, info, (input) => allowancesOf(input, project));
  issues.push(...drafted.issues.map(ofCloth));
  for (const piece of drafted.pieces) {
    // Small parts have room for their name and a short grain line only, which is enough on them.
    issues.push(
      ...piece.issues
        .filter(({ code }) => !['label-shortened', 'grain-line-short'].includes(code))
        .map((issue) => (issue.code === 'allowance-out-of-range' ? ofCloth(issue) : issue)),
    );
    if (piece.ok) pieces.push(piece.value);
  }
  if (pieces.length < inputs.length) return failure(issues);

  const drawings: Form['drawings'][number][] = [];
  for (const material of new Set(pieces.map((piece) => piece.material))) {
    const own = pieces.filter((piece) => piece.material === material);
    const sheet = arrangePieces(own, { title: say(titleOfSheet(project.name, material)), say });
    issues.push(...sheet.issues);
    if (sheet.ok) drawings.push({ material, drawing: sheet.value });
  }
  const materials = listMaterials(form, shape, shell, pieces, project.inside);
  const stand = judgeStand(weightsOf(form, shape, project), project.inside);
  issues.push(...stand.issues, ...checkSkippedTube(shape.levels, project.inside));
  const inside: FormInside = {
    shape,
    levels: levelsAsFilled(predictLevels(shape.levels, project.inside), foretold),
    pieces,
    rims: parts.rims,
    arms: arms.panels.map(({ id, name }, i) => ({ id, name, strain: arms.flat[i].strain.summary })),
    stand: stand.findings,
    materials: materials.lines,
    fill: materials.fill,
    parts: furtherParts(form, shape),
  };
  return success({ inside, drawings }, issues);
}

/** What filling the form in space told of its levels, and their girths on the panels as they are cut. */
interface ForetoldLevels {
  readonly filled: FilledMeasures['levels'];
  readonly cut: Form['report']['levels'];
}

/** Where the form was filled in space, that is what the levels come to, not their sections. */
function levelsAsFilled(levels: PredictedLevel[], foretold: ForetoldLevels | undefined): PredictedLevel[] {
  if (!foretold) return levels;
  return levels.map((level) => {
    const filled = foretold.filled.find(({ id }) => id === level.id);
    const cut = foretold.cut.find(({ id }) => id === level.id);
    if (!filled || !cut) return level;
    const { found, worst } = filled;
    const [x, y] = worst.at;
    const held = { ...found, deviation: worst.distance, where: worst.where, x, y };
    return { ...level, takenOff: level.body.girth - cut.lengthFlat, held, finished: found };
  });
}

/** Inner pieces are cut with the cloth's allowances. */
function ofCloth(issue: Issue): Issue {
  return { ...issue, path: `cloth.${issue.path}` };
}

function allowancesOf(input: PieceInput, project: Project) {
  const { allowance, allowanceByEdge, allowanceByKind, allowanceByMaterial, notchShape } = project.cloth;
  const unit = project.displayUnits;
  const { opening, ...kinds } = allowanceByKind ?? {};
  const isBare = input.material === 'card' || input.material === 'foam';
  const ofMaterial = allowanceByMaterial?.[input.material];
  const hem = ofMaterial ?? opening ?? HEM;
  const turning = (): number => allowanceOfCover(input, kinds.cover ?? usualAllowance('cover', unit, 0));
  const open = isBare ? 0 : input.material === 'covers' ? turning() : hem;
  const edges = input.edges
    .filter(({ kind, allowanceKind }) => kind === 'opening' && !allowanceKind)
    .map(({ id }) => [id, open]);
  // Other names belong to the shell; the same word on an inner part means another edge.
  const ownOfArms = Object.entries(allowanceByEdge ?? {}).filter(([id]) => id.startsWith('arm-'));
  return {
    ...(allowance === undefined ? {} : { allowance }),
    ...(allowanceByMaterial === undefined ? {} : { allowanceByMaterial }),
    // On inner parts what is typed for their material goes before what is typed for all openings.
    allowanceByKind: ofMaterial === undefined ? (allowanceByKind ?? {}) : kinds,
    unit,
    ...(notchShape === undefined ? {} : { notchShape }),
    allowanceByEdge: { ...Object.fromEntries(edges), ...Object.fromEntries(ownOfArms) },
  };
}

/** Shell, webs and plates weigh about so much beside the filling, kg (ours). */
const CLOTH_AND_BOARD = 1.2;

function weightsOf(form: InsideForm, shape: InsideShape, project: Project) {
  const fill = massOfFill(form.volumeL, densityOfFilling(project.inside));
  const { zBottom, zTop } = shape.pole;
  const [, , shoulder] = form.surface.evaluate(Float64Array.of(0, form.shoulderPointV));
  return {
    mass: 0.5 * (fill.low + fill.high) + CLOTH_AND_BOARD,
    middle: zBottom + 0.45 * (zTop - zBottom),
    base: zBottom,
    shoulder,
    waistHeight: form.waistHeight,
    isHeightAssumed: form.isWaistHeightAssumed === true,
  };
}

import {
  draftPieces,
  flattenProblemFromShell,
  layAlongGrain,
  makeInside,
  orderSeams,
  pieceInputsFromShell,
  trialInputs,
  trialProjectOf,
} from '../../assembly/index.ts';
import { assertInvariant, type Result, type Say, success } from '../../base/index.ts';
import { type FlatDisk, flattenTogether } from '../../flatten/index.ts';
import { measureLevels } from '../../form/index.ts';
import { doesTakeOff, takenOffBy } from '../../inside/index.ts';
import type { SeamedShell } from '../../seams/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage, StepContext } from '../step.ts';
import { bodyStep } from './body.ts';
import { cutDesignStep, cutFlatStep, fittedStep } from './filling.ts';
import { type FormGiven, formStep } from './form-step.ts';
import { flattenOptions, laidStep } from './panels.ts';
import { cutStep } from './seams.ts';

const printed = ({ project, options }: FormGiven) => [
  project.cloth,
  project.displayUnits,
  project.name,
  options.date,
  options.isTrialShell,
  options.speaker?.key,
];

/** Whoever makes pieces has said in which words. */
function sayOf({ options: { speaker } }: FormGiven): Say {
  assertInvariant(speaker !== undefined, 'pipeline', 'pieces are lettered by a speaker', speaker);
  return speaker.say;
}

/** Lines of inner parts drawn on the panels. */
const drawnLinesStep = formStep({
  id: 'drawnLines',
  needs: { design: cutDesignStep },
  dependsOn: () => null,
  run: ({ design }) => success(design?.shape.panelLines ?? []),
  // Most changes inside leave them as they are, and then the shell's pieces too.
  nameOf: (lines) =>
    JSON.stringify(lines.map(({ chart, ...line }) => ({ ...line, chart: Array.from(chart) }))),
});

/** The shell's pieces. */
export const shellPiecesStep = formStep({
  id: 'shellPieces',
  needs: { body: bodyStep, cut: cutStep, laid: cutFlatStep, lines: drawnLinesStep },
  section: 'cloth',
  dependsOn: printed,
  run({ body, cut, laid, lines }, { given }) {
    const { project, options } = given;
    const order = orderSeams(cut.shell, body.landmarks.neckFront.v);
    const inputs = pieceInputsFromShell(cut.shell, laid, lines, order);
    return draftPieces(
      options.isTrialShell ? trialInputs(inputs, order) : inputs,
      project,
      options.date ?? '',
      sayOf(given),
    );
  },
});

/** The trial shell's pieces, where they are to be laid: unrolled anew only where the form's panels are cut smaller. */
export const trialPiecesStep = formStep({
  id: 'trialPieces',
  needs: { body: bodyStep, cut: cutStep, unrolled: laidStep },
  section: 'cloth',
  isLeftOut: ({ project, options }) => options.isDraft === true || project.laying?.trial?.isLaid !== true,
  dependsOn: (given) => [printed(given), takenOffBy(given.project.inside), given.project.seams],
  run({ body, cut: { shell }, unrolled }, context) {
    const { project, options } = context.given;
    const own = doesTakeOff(project.inside) ? unrollTrial(shell, context) : success(unrolled);
    if (!own.ok) return own;
    const order = orderSeams(shell, body.landmarks.neckFront.v);
    const inputs = trialInputs(pieceInputsFromShell(shell, own.value, [], order), order);
    const drafted = draftPieces(inputs, trialProjectOf(project), options.date ?? '', sayOf(context.given));
    // What may be told of them was told of the form's own pieces.
    return drafted.ok ? success(drafted.value.pieces) : drafted;
  },
});

/** In the person's own size. */
function unrollTrial(shell: SeamedShell, context: StepContext<FormGiven>): Result<readonly FlatDisk[]> {
  const unrolled = flattenTogether(flattenProblemFromShell(shell), flattenOptions(context));
  return unrolled.ok ? layAlongGrain(shell, unrolled.value, context.given.project.cloth.grain) : unrolled;
}

/** The inner ones, and what the filled form will be. */
export const insideStep = formStep({
  id: 'inside',
  needs: {
    cut: cutStep,
    laid: cutFlatStep,
    design: cutDesignStep,
    fitted: fittedStep,
    shell: shellPiecesStep,
  },
  section: 'inside',
  isLeftOut: ({ options }) => options.isDraft === true,
  dependsOn: printed,
  run({ cut, laid, design, fitted, shell }, { given }) {
    const { project, options } = given;
    assertInvariant(
      design !== undefined,
      'pipeline',
      'inner pieces are drafted where they are designed',
      design,
    );
    const foretold = fitted && { filled: fitted.measures.levels, cut: measureLevels(cut.shell, laid) };
    return makeInside(design, shell.pieces, project, options.date ?? '', sayOf(given), foretold);
  },
});

export const cutting: Stage<'cutting', FormGiven> = {
  id: 'cutting',
  what: phrase('pipeline.cutting'),
  share: 15,
  steps: [cutFlatStep, cutDesignStep, drawnLinesStep, shellPiecesStep, insideStep, trialPiecesStep],
};

import { draftPieces, makeInside, orderSeams, pieceInputsFromShell } from '../../assembly/index.ts';
import { assertInvariant, type Say, success } from '../../base/index.ts';
import { measureLevels } from '../../form/index.ts';
import { phrase } from '../phrases.ts';
import type { Stage } from '../step.ts';
import { bodyStep } from './body.ts';
import { cutDesignStep, cutFlatStep, fittedStep } from './filling.ts';
import { type FormGiven, formStep } from './form-step.ts';
import { cutStep } from './seams.ts';

const printed = ({ project, options }: FormGiven) => [
  project.cloth,
  project.displayUnits,
  project.name,
  options.date,
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
    return draftPieces(
      pieceInputsFromShell(cut.shell, laid, lines, order),
      project,
      options.date ?? '',
      sayOf(given),
    );
  },
});

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
  steps: [cutFlatStep, cutDesignStep, drawnLinesStep, shellPiecesStep, insideStep],
};

import type { FittedFilling } from '../assembly/index.ts';
import { assertInvariant } from '../base/index.ts';
import { CLOTHS, findCloth, measureFreeStrain } from '../flatten/index.ts';
import {
  type Form,
  type FormFilled,
  type FormInside,
  judgeForm,
  makeReport,
  standingOfTube,
} from '../form/index.ts';
import { partsOfInside } from '../inside/index.ts';
import { type LayPlan, listToBuy } from '../laying/index.ts';
import { planMaking } from '../making/index.ts';
import type { Project } from '../project/index.ts';
import type { MakeOptions } from './make-options.ts';
import type { Harvest } from './run-stages.ts';
import { bodyStep } from './stages/body.ts';
import { insideStep, shellPiecesStep, trialPiecesStep } from './stages/cutting.ts';
import { cutFlatStep, fittedStep } from './stages/filling.ts';
import type { FormGiven } from './stages/form-step.ts';
import { laidOutStep } from './stages/laying.ts';
import { flatStep, laidStep, problemStep } from './stages/panels.ts';
import { cutStep } from './stages/seams.ts';
import type { StageId } from './stages.ts';

/** The form of what the stages made; empty where they ended sooner. With everything made, also how to sew it. */
export function assembleForm(
  { take, stages, issues, timingsMs }: Harvest<StageId, FormGiven>,
  project: Project,
  options: MakeOptions,
): Form {
  const [body, cut] = [take(bodyStep), take(cutStep)];
  assertInvariant(body !== undefined && cut !== undefined, 'pipeline', 'a form has a shell', stages);
  const { shell, closedMesh } = cut;
  const [problem, flat] = [take(problemStep), take(flatStep)];
  const free = options.compareFree && problem && flat ? measureFreeStrain(problem, flat) : undefined;
  const laid = take(laidOutStep);
  const fitted = take(fittedStep);
  const filled = fitted && filledOf(fitted);
  // Where the form was filled in space, or is to be, its sections have nothing to say.
  const isYetToFill = !options.fills && partsOfInside(project.inside) === 'fewest';
  const told = filled || isYetToFill ? issues.filter(({ code }) => code !== 'level-deviates') : issues;
  const outer = take(shellPiecesStep);
  const trial = take(trialPiecesStep);
  const inner = withListToBuy(take(insideStep), laid, project);
  const made = { body, shell, closedMesh, flat: take(cutFlatStep) ?? take(laidStep) ?? [] };
  const { kind, grain } = project.cloth;
  const report = makeReport({
    ...made,
    cloth: findCloth(kind ?? '') ?? CLOTHS[0],
    ...(grain === undefined ? {} : { grain }),
    ...(free?.ok ? { free: free.value } : {}),
    ...(inner === undefined ? {} : { inside: inner.inside }),
    ...(filled === undefined ? {} : { filled }),
    issues: [...told, ...(free?.issues ?? [])],
    timingsMs,
  });
  const form: Form = {
    project,
    ...made,
    pieces: outer?.pieces ?? [],
    drawings: [...(outer?.drawings ?? []), ...(inner?.drawings ?? [])],
    ...(inner === undefined ? {} : { inside: inner.inside }),
    ...(filled === undefined ? {} : { filled }),
    ...(trial === undefined ? {} : { trial }),
    ...(laid === undefined ? {} : { laid }),
    stages,
    report,
  };
  if (inner === undefined) return withJudgement(form);
  const { making, issues: against } = planMaking(form);
  const steps = Object.fromEntries(making.steps.map(({ id, hours }) => [id, hours]));
  const hours = { all: making.hours, steps };
  return withJudgement({
    ...form,
    making,
    report: { ...report, hours, issues: [...report.issues, ...against] },
  });
}

/** What can be said only when all of it is known. */
function withJudgement(form: Form): Form {
  const verdict = judgeForm(form.report, form.shell);
  const tube = standingOfTube(form);
  return { ...form, report: { ...form.report, ...(verdict && { verdict }), ...(tube && { tube }) } };
}

/** With everything laid, cloth is bought by the plans. */
function withListToBuy<T extends { readonly inside: FormInside }>(
  inner: T | undefined,
  laid: readonly LayPlan[] | undefined,
  project: Project,
): T | undefined {
  if (!inner || !laid) return inner;
  const materials = listToBuy(inner.inside.materials, laid, project.laying ?? {});
  return { ...inner, inside: { ...inner.inside, materials } };
}

/** What of a filling is shown and told. */
export function filledOf({
  filled,
  balance,
  measures,
  band,
}: Omit<FittedFilling, 'unknowns' | 'amounts' | 'strapsAdded'>): FormFilled {
  const { shell } = filled.given;
  const positions = balance.positions.slice(0, shell.mesh.positions.length);
  const { tensions, states } = balance;
  return { shell, positions, tensions, states, load: filled.load, measures, ...(band && { band }) };
}

import {
  type CutPieces,
  draftBare,
  seamsAcross,
  surfaceOfProject,
  trialProjectOf,
} from '../assembly/index.ts';
import { failure, type Issue, type Result, success } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import { WADDING } from '../pattern/index.ts';
import type { Project } from '../project/index.ts';
import {
  isBetterAnew,
  judgeRefit,
  layPads,
  moveToFront,
  type Pad,
  type RefitOptions,
  type RefitZone,
  refitPhrase,
  standOver,
  tellStep,
} from '../refit/index.ts';
import { makeForm } from './create-pipeline.ts';
import type { MakeForm, MakeOptions } from './make-options.ts';

/** How a form that stands is made to serve another body. */
export interface Refit {
  readonly zones: readonly RefitZone[];
  /** How far in front of the old one the new body stands in it, mm. */
  readonly toFront: number;
  readonly pads: readonly Pad[];
  /** The new cover and the pads as a form of pieces alone, to be written like any; null where a form is better made anew. */
  readonly form: Form | null;
}

/**
 * From the form of `before` to the body of `after`: pads where it is larger, seams taken in where it is smaller, and a cover, which is the
 * shell of the new body, unrolled in its own size. Beyond the limits every zone is named with an error, and nothing is to be cut.
 * `make`: of a pipeline that remembers. Two forms without filling, and some seconds.
 */
export function makeRefit(
  before: Project,
  after: Project,
  options: Omit<MakeOptions, 'isDraft' | 'fills' | 'lays' | 'isTrialShell' | 'upTo'>,
  refitOptions: RefitOptions = {},
  make: MakeForm = makeForm,
): Result<Refit> {
  const { say } = options.speaker;
  const stands = make(before, { ...options, upTo: 'seams' });
  const name = say(refitPhrase('refit.cover', { project: after.name }));
  const sewn = make({ ...after, name, inside: trialProjectOf(after).inside }, options);
  if (!stands.ok || !sewn.ok) return failure([...errorsOf(stands.issues), ...errorsOf(sewn.issues)]);
  const { body: old } = stands.value;
  const { body } = sewn.value;
  const surface = surfaceOfProject(before, old);
  const own = surfaceOfProject(after, body);
  const toFront = standOver(surface, own);
  const laid = layPads({ surface, form: old, levels: old.levels }, moveToFront(own, toFront), refitOptions);
  if (!laid.ok) return laid;
  const { pads, grids } = laid.value;
  const { wadding = WADDING.usual } = refitOptions;
  const zones = judgeRefit(old, body, grids, seamsAcross(stands.value), wadding);
  const found = { zones, toFront, pads };
  if (isBetterAnew(zones)) return success({ ...found, form: null }, zones.flatMap(issuesOfZone));
  const inputs = pads.map(({ input }) => input);
  const drafted = draftBare(inputs, 'wadding', after, options.date ?? '', say);
  if (!drafted.ok) return drafted;
  const form = coverWithPads(sewn.value, drafted.value);
  return success({ ...found, form }, [...laid.issues, ...drafted.issues]);
}

/** The shell's pieces alone, and the pads. */
function coverWithPads({ inside: _inside, making: _making, ...cover }: Form, pads: CutPieces): Form {
  const drawings = cover.drawings.filter(({ material }) => material === 'shell');
  return {
    ...cover,
    pieces: [...cover.pieces, ...pads.pieces],
    drawings: [...drawings, ...pads.drawings],
  };
}

function errorsOf(issues: readonly Issue[]): Issue[] {
  return issues.filter(({ severity }) => severity === 'error');
}

/** What passes a limit, at the measure it is about. */
function issuesOfZone({ id, level, steps }: RefitZone): Issue[] {
  const path = level ? `body.measures.${id}Girth` : 'body.measures.backWaistLength';
  return steps.flatMap((step): Issue[] => {
    if (step.kind !== 'anew') return [];
    const { measured, limit } = step;
    return [{ code: `refit-${step.why}`, path, message: tellStep(step), severity: 'error', measured, limit }];
  });
}

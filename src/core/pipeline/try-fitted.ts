import { type FittedFilling, onBody } from '../assembly/index.ts';
import { type Result, success, withUsual } from '../base/index.ts';
import { type FillingTrial, tryFilling, weighGarment } from '../filled/index.ts';
import type { TriedForm } from '../form/index.ts';
import { INSIDE_OPTIONS, type InsideOptions } from '../inside/index.ts';
import { filledOf } from './assemble-form.ts';

/** A fitted filling with something otherwise, and under the heaviest garment the options name. Issues: as `tryFilling` and `weighGarment`. */
export function tryFitted(
  { filled, balance, measures }: FittedFilling,
  options: InsideOptions,
  trial: FillingTrial,
): Result<TriedForm> {
  const tried = tryFilling(filled, balance, trial);
  if (!tried.ok) return tried;
  const { garmentMass: mass } = withUsual(INSIDE_OPTIONS, options);
  const sag = weighGarment(tried.value.filled, tried.value.balance, mass);
  if (!sag.ok) return sag;
  const { shoulders, top } = sag.value;
  const { change } = tried.value;
  const sections = Object.fromEntries(measures.levels.map(({ id, asked }) => [id, asked]));
  const shown = { ...tried.value, measures: onBody(tried.value.measures, sections) };
  return success({ filled: filledOf(shown), change, garment: { mass, shoulders, top } }, tried.issues);
}

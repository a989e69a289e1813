import { type Result, type Say, withUsual } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import { type GaugeOptions, gaugedForm, makeGauges } from '../gauge/index.ts';
import { INSIDE_OPTIONS } from '../inside/index.ts';
import { draftBare } from './draft-bare.ts';
import type { CutPieces } from './draft-pieces.ts';

/**
 * The gauges of a form as pieces, and all of them on one sheet. Fails as `makeGauges` does; drafts have gauges too, as coarse as
 * their mesh.
 */
export function draftGauges(form: Form, options: GaugeOptions, date: string, say: Say): Result<CutPieces> {
  const { coverThickness: cover } = withUsual(INSIDE_OPTIONS, form.project.inside);
  const inputs = makeGauges(gaugedForm(form.shell, form.closedMesh, cover), options);
  if (!inputs.ok) return inputs;
  const drafted = draftBare(inputs.value, 'gauge', form.project, date, say);
  return { ...drafted, issues: [...inputs.issues, ...drafted.issues] };
}

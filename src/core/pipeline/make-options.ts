import type { Result, Speaker } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import type { Project } from '../project/index.ts';
import type { Watch } from './follow-progress.ts';
import type { StepOptions } from './stages/form-step.ts';
import type { LastStage, StageId } from './stages.ts';

export interface MakeOptions extends StepOptions, Watch<StageId> {
  /** Words of all lettering on pieces; the core has none of its own. */
  readonly speaker: Speaker;
  /**
   * The last stage to run; default: all. What later ones make stays empty: `flat` and what the report tells of it, `pieces`,
   * `drawings`. For pictures while dragging: the pieces take more than half of a draft's time.
   */
  readonly upTo?: LastStage;
  /** Also unroll every panel with no length held, so that the report tells what seams and girths cost. */
  readonly compareFree?: boolean;
}

export type MakeForm = (project: Project, options: MakeOptions) => Result<Form>;

import type { Speaker } from '../../base/index.ts';
import type { Project } from '../../project/index.ts';
import { type DefineStep, defineStep } from '../step.ts';

/** What every step of a form may depend on; each tells what of it, by `dependsOn`. */
export interface FormGiven {
  readonly project: Project;
  readonly options: StepOptions;
}

export interface StepOptions {
  /** Words of all lettering on pieces; nobody letters where only a body is fitted. */
  readonly speaker?: Speaker;
  /** Aim for the whole shell; default 20 000. */
  readonly targetTriangles?: number;
  /** While dragging: start the body fit from the last body. Quicker; ends within a hair of the fit from scratch. */
  readonly isDraft?: boolean;
  /**
   * Also fill the form in space, and cut panels and braces so that it comes out as the body: some seconds more. Without, they are
   * cut as unrolled, smaller by what was typed in. The project may say that they always are (`inside.recut`).
   */
  readonly fills?: boolean;
  /** Also lay the pieces on cloth and boards, which tells how much to buy: some seconds more. */
  readonly lays?: boolean;
  /** The pieces of a trial shell instead of the form's; see `makeTrialShell`. */
  readonly isTrialShell?: boolean;
  /** Printed on pieces; passed in because core has no calendar. */
  readonly date?: string;
}

export const formStep: DefineStep<FormGiven> = defineStep;

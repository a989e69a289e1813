import type { PipelinePhrases } from '../../../core/pipeline/index.ts';
import type { Entries } from '../../catalogue.ts';

export const pipeline: Entries<PipelinePhrases> = {
  'pipeline.tape': 'Checking the measures',
  'pipeline.body': 'Shaping the body',
  'pipeline.seams': 'Drawing the seams',
  'pipeline.panels': 'Unrolling the panels',
  'pipeline.inside': 'Designing webs and plates',
  'pipeline.filling': 'Filling the form and cutting for it',
  'pipeline.cutting': 'Drafting the pieces',
  'pipeline.laying': 'Laying the pieces on the cloth',
  'pipeline.done': 'Done',
  'pipeline.cancelled': 'Stopped before the form was finished.',
  'pipeline.not-fitted': ({ reasons }, { say }) =>
    `The filled form could not be worked out, so the panels are cut as they were unrolled: ${reasons.map(say).join(' ')}`,
  'pipeline.broken-promise': ({ reason }) =>
    `Something went wrong inside the program, not in what you typed: ${reason}.`,
  'pipeline.defect': ({ reason }) =>
    `Something went wrong inside the program, not in what you typed. Undo the last step to go on. (${reason})`,
};

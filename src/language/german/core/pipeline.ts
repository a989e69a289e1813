import type { PipelinePhrases } from '../../../core/pipeline/index.ts';
import type { Entries } from '../../catalogue.ts';

export const pipeline: Entries<PipelinePhrases> = {
  'pipeline.tape': 'Die Maße werden geprüft',
  'pipeline.body': 'Der Körper wird geformt',
  'pipeline.seams': 'Die Nähte werden gezeichnet',
  'pipeline.panels': 'Die Schnittteile werden abgewickelt',
  'pipeline.inside': 'Stege und Platten werden entworfen',
  'pipeline.cutting': 'Die Schnittteile werden gezeichnet',
  'pipeline.done': 'Fertig',
  'pipeline.cancelled': 'Angehalten, bevor die Form fertig war.',
  'pipeline.broken-promise': ({ reason }) =>
    `Im Programm ging etwas schief, nicht in den Angaben: ${reason}.`,
  'pipeline.defect': ({ reason }) =>
    `Im Programm ging etwas schief, nicht in den Angaben. Den letzten Schritt zurücknehmen, um weiterzumachen. (${reason})`,
};

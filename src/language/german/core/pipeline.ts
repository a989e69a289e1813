import type { PipelinePhrases } from '../../../core/pipeline/index.ts';
import type { Entries } from '../../catalogue.ts';

export const pipeline: Entries<PipelinePhrases> = {
  'pipeline.tape': 'Die Maße werden geprüft',
  'pipeline.body': 'Der Körper wird geformt',
  'pipeline.seams': 'Die Nähte werden gezeichnet',
  'pipeline.panels': 'Die Schnittteile werden abgewickelt',
  'pipeline.inside': 'Stege und Platten werden entworfen',
  'pipeline.filling': 'Die Büste füllen und dafür zuschneiden',
  'pipeline.cutting': 'Die Schnittteile werden gezeichnet',
  'pipeline.laying': 'Die Teile werden auf den Stoff gelegt',
  'pipeline.done': 'Fertig',
  'pipeline.cancelled': 'Angehalten, bevor die Form fertig war.',
  'pipeline.not-fitted': ({ reasons }, { say }) =>
    `Die gefüllte Büste ließ sich nicht ausrechnen, die Teile sind deshalb wie abgewickelt zugeschnitten: ${reasons.map(say).join(' ')}`,
  'pipeline.broken-promise': ({ reason }) =>
    `Im Programm ging etwas schief, nicht in den Angaben: ${reason}.`,
  'pipeline.defect': ({ reason }) =>
    `Im Programm ging etwas schief, nicht in den Angaben. Den letzten Schritt zurücknehmen, um weiterzumachen. (${reason})`,
};

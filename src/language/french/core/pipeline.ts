import type { PipelinePhrases } from '../../../core/pipeline/index.ts';
import type { Entries } from '../../catalogue.ts';

export const pipeline: Entries<PipelinePhrases> = {
  'pipeline.tape': 'Contrôle des mesures',
  'pipeline.body': 'Mise en forme du corps',
  'pipeline.seams': 'Tracé des coutures',
  'pipeline.panels': 'Mise à plat des panneaux',
  'pipeline.inside': 'Dessin des cloisons et des plaques',
  'pipeline.filling': 'Rembourrage du mannequin, puis coupe d’après lui',
  'pipeline.cutting': 'Tracé des pièces',
  'pipeline.laying': 'Placement des pièces sur le tissu',
  'pipeline.done': 'Terminé',
  'pipeline.cancelled': 'Arrêté avant que le mannequin soit terminé.',
  'pipeline.not-fitted': ({ reasons }, { say }) =>
    `Le mannequin rembourré n’a pas pu être calculé ; les panneaux sont donc coupés tels que mis à plat : ${reasons.map(say).join(' ')}`,
  'pipeline.broken-promise': ({ reason }) =>
    `Quelque chose s’est mal passé dans le programme, pas dans votre saisie : ${reason}.`,
  'pipeline.defect': ({ reason }) =>
    `Quelque chose s’est mal passé dans le programme, pas dans votre saisie. Annuler la dernière étape pour continuer. (${reason})`,
};

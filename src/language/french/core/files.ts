import type { FilesPhrases } from '../../../core/files/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What stands in and over files, and what is wrong with what was asked for. */
export const files: Entries<FilesPhrases> = {
  'file.unknown-format': ({ name, known }) =>
    `Il n’y a pas de format appelé « ${name} ». Il y a : ${known.join(', ')}.`,
  'file.unknown-piece': ({ name, known }) =>
    `Il n’y a pas de pièce appelée « ${name} ». Il y a : ${known.join(', ')}.`,
  'file.model-scale': ({ scale, least, most }, { plain }) =>
    `Un modèle au 1 : ${plain(scale, 2)} n’est pas possible : donner une valeur de ${least} à ${most}.`,
  'file.model-wall': ({ wall, scale, least, most }, { plain, small, exactLength }) =>
    `Des parois de ${exactLength(wall)} ne conviennent pas à un modèle au 1 : ${plain(scale, 2)} : donner de ${exactLength(least)} à ${small(most)}.`,
  'file.letters-lacking': ({ letters }) =>
    `Il manque à l’écriture imprimée ${letters.map((letter) => `« ${letter} »`).join(', ')} : des cases les remplacent. Écrire le nom en lettres latines, grecques, cyrilliques, hébraïques ou arabes.`,
  'file.print-title': ({ project, paper }, { say }) => `${project} – ${say(paper.name)}`,
  'file.booklet-title': ({ project }) => `${project} – livret`,
  'file.lay-title': ({ project }) => `${project} – plans de placement`,
  'file.projector-title': ({ project }) => `${project} – à projeter`,
  'file.labels-title': ({ project }) => `${project} – étiquettes`,
  'file.revision': ({ revision }) => `version ${revision}`,

  'table.seam.id': 'couture',
  'table.seam.letter': 'lettre',
  'table.seam.name': 'nom',
  'table.seam.panel-1': 'panneau 1',
  'table.seam.panel-2': 'panneau 2',
  'table.seam.on-panel-1': 'sur le panneau 1 mm',
  'table.seam.on-panel-2': 'sur le panneau 2 mm',
  'table.seam.on-body': 'sur le corps mm',
  'table.seam.on-panel-1-inches': 'sur le panneau 1 in',
  'table.tape.id': 'mesure',
  'table.tape.kind': 'genre',
  'table.tape.asked': 'demandé mm',
  'table.tape.found': 'trouvé mm',
  'table.tape.off': 'écart mm',
  'table.tape.status': 'résultat',
  'table.tape.found-inches': 'trouvé in',
};

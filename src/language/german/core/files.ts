import type { FilesPhrases } from '../../../core/files/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What stands in and over files, and what is wrong with what was asked for. */
export const files: Entries<FilesPhrases> = {
  'file.unknown-format': ({ name, known }) =>
    `Ein Format „${name}“ gibt es nicht. Es gibt: ${known.join(', ')}.`,
  'file.unknown-piece': ({ name, known }) =>
    `Ein Teil „${name}“ gibt es nicht. Es gibt: ${known.join(', ')}.`,
  'file.model-scale': ({ scale, least, most }, { plain }) =>
    `Ein Modell 1 : ${plain(scale, 2)} geht nicht: ${least} bis ${most} angeben.`,
  'file.model-wall': ({ wall, scale, least, most }, { plain, small, exactLength }) =>
    `Wände von ${exactLength(wall)} gehen nicht in einem Modell 1 : ${plain(scale, 2)}: ${exactLength(least)} bis ${small(most)} angeben.`,
  'file.letters-lacking': ({ letters }) =>
    `Der Druckschrift fehlen ${letters.map((letter) => `„${letter}“`).join(', ')}: An ihrer Stelle stehen Kästchen. Den Namen in lateinischen, griechischen, kyrillischen, hebräischen oder arabischen Buchstaben schreiben.`,
  'file.print-title': ({ project, paper }, { say }) => `${project} – ${say(paper.name)}`,
  'file.booklet-title': ({ project }) => `${project} – Heft`,
  'file.lay-title': ({ project }) => `${project} – Legepläne`,
  'file.projector-title': ({ project }) => `${project} – zum Projizieren`,
  'file.labels-title': ({ project }) => `${project} – Etiketten`,
  'file.revision': ({ revision }) => `Stand ${revision}`,

  'table.seam.id': 'Naht',
  'table.seam.letter': 'Buchstabe',
  'table.seam.name': 'Name',
  'table.seam.panel-1': 'Schnittteil 1',
  'table.seam.panel-2': 'Schnittteil 2',
  'table.seam.on-panel-1': 'an Schnittteil 1 mm',
  'table.seam.on-panel-2': 'an Schnittteil 2 mm',
  'table.seam.on-body': 'am Körper mm',
  'table.seam.on-panel-1-inches': 'an Schnittteil 1 in',
  'table.tape.id': 'Maß',
  'table.tape.kind': 'Art',
  'table.tape.asked': 'verlangt mm',
  'table.tape.found': 'gefunden mm',
  'table.tape.off': 'Abweichung mm',
  'table.tape.status': 'Befund',
  'table.tape.found-inches': 'gefunden in',
};

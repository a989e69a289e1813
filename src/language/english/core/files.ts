import type { FilesPhrases } from '../../../core/files/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What stands in and over files, and what is wrong with what was asked for. */
export const files: Entries<FilesPhrases> = {
  'file.unknown-format': ({ name, known }) =>
    `There is no format called “${name}”. There are: ${known.join(', ')}.`,
  'file.unknown-piece': ({ name, known }) =>
    `There is no piece called “${name}”. There are: ${known.join(', ')}.`,
  'file.model-scale': ({ scale, least, most }) =>
    `A model of 1 : ${scale} cannot be made: give ${least} to ${most}.`,
  'file.model-wall': ({ wall, scale, least, most }, { small, exactLength }) =>
    `Walls of ${exactLength(wall)} cannot be used in a model of 1 : ${scale}: give ${exactLength(least)} to ${small(most)}.`,
  'file.letters-lacking': ({ letters }) =>
    `The letters of the print lack ${letters.map((letter) => `“${letter}”`).join(', ')}: boxes stand in their place. Write the name in Latin, Greek, Cyrillic, Hebrew or Arabic letters.`,
  'file.print-title': ({ project, paper }) => `${project} – ${paper.id}`,
  'file.booklet-title': ({ project }) => `${project} – booklet`,
  'file.lay-title': ({ project }) => `${project} – lay plans`,
  'file.projector-title': ({ project }) => `${project} – to project`,
  'file.labels-title': ({ project }) => `${project} – labels`,
  'file.revision': ({ revision }) => `rev ${revision}`,

  'table.seam.id': 'seam',
  'table.seam.letter': 'letter',
  'table.seam.name': 'name',
  'table.seam.panel-1': 'panel 1',
  'table.seam.panel-2': 'panel 2',
  'table.seam.on-panel-1': 'on panel 1 mm',
  'table.seam.on-panel-2': 'on panel 2 mm',
  'table.seam.on-body': 'on the body mm',
  'table.seam.on-panel-1-inches': 'on panel 1 in',
  'table.tape.id': 'tape',
  'table.tape.kind': 'kind',
  'table.tape.asked': 'asked mm',
  'table.tape.found': 'found mm',
  'table.tape.off': 'off mm',
  'table.tape.status': 'status',
  'table.tape.found-inches': 'found in',
};

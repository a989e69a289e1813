import { mmPerInch, wordsOf } from '../base/index.ts';
import type { CsvCell } from '../export/index.ts';
import type { Report } from '../form/index.ts';

/** Every seam with its length on both panels and on the body, mm and inches; first row the headings. */
export function seamRows({ seams }: Report): CsvCell[][] {
  return [
    [
      'seam',
      'letter',
      'name',
      'panel 1',
      'panel 2',
      'on panel 1 mm',
      'on panel 2 mm',
      'on the body mm',
      'on panel 1 in',
    ],
    ...seams.map(({ id, letter, name, panels, lengthsFlat, length3d }) => [
      ...[id, letter, wordsOf(name), ...panels, ...lengthsFlat, length3d],
      lengthsFlat[0] / mmPerInch,
    ]),
  ];
}

/** Every tape: asked for, and found on the body, mm and inches; first row the headings. */
export function tapeRows({ tapes }: Report): CsvCell[][] {
  return [
    ['tape', 'kind', 'asked mm', 'found mm', 'off mm', 'status', 'found in'],
    ...tapes.map(({ id, kind, target, got, status }) => [
      ...[id, kind, target, got, got - target, status],
      got / mmPerInch,
    ]),
  ];
}

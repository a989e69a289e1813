import { mmPerInch, type Say } from '../base/index.ts';
import type { CsvCell } from '../export/index.ts';
import type { Report } from '../form/index.ts';
import { phrase } from './phrases.ts';

/** Every seam with its length on both panels and on the body, mm and inches; first row the headings. */
export function seamRows({ seams }: Report, say: Say): CsvCell[][] {
  return [
    [
      phrase('table.seam.id'),
      phrase('table.seam.letter'),
      phrase('table.seam.name'),
      phrase('table.seam.panel-1'),
      phrase('table.seam.panel-2'),
      phrase('table.seam.on-panel-1'),
      phrase('table.seam.on-panel-2'),
      phrase('table.seam.on-body'),
      phrase('table.seam.on-panel-1-inches'),
    ].map(say),
    ...seams.map(({ id, letter, name, panels, lengthsFlat, length3d }) => [
      ...[id, letter, say(name), ...panels, ...lengthsFlat, length3d],
      lengthsFlat[0] / mmPerInch,
    ]),
  ];
}

/** Every tape: asked for, and found on the body, mm and inches; first row the headings. */
export function tapeRows({ tapes }: Report, say: Say): CsvCell[][] {
  return [
    [
      phrase('table.tape.id'),
      phrase('table.tape.kind'),
      phrase('table.tape.asked'),
      phrase('table.tape.found'),
      phrase('table.tape.off'),
      phrase('table.tape.status'),
      phrase('table.tape.found-inches'),
    ].map(say),
    ...tapes.map(({ id, kind, target, got, status }) => [
      ...[id, kind, target, got, got - target, status],
      got / mmPerInch,
    ]),
  ];
}

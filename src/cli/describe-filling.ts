import type { DisplayUnit } from '../core/base/index.ts';
import type { CheckingEntry } from '../core/project/index.ts';
import {
  compareReading,
  type FillingContext,
  type LevelTarget,
  type ReadingKind,
} from '../core/simulate/index.ts';
import type { Reader } from './create-reader.ts';
import { formatTable } from './format-table.ts';

/** What every level is to measure, beside what the latest entry of the log reads, and the filling by zone in its order. */
export function describeFilling(
  { targets, zones }: FillingContext,
  entry: CheckingEntry | undefined,
  unit: DisplayUnit,
  { say, numbers, words: allWords }: Reader,
): string {
  const { stuffing: words, range } = allWords;
  const isEmpty = entry?.state === 'empty';
  const cell = (target: LevelTarget, kind: ReadingKind): string => {
    const wanted = isEmpty && kind === 'girth' ? target.emptyGirth : target[kind];
    const read = entry?.levels[target.id]?.[kind];
    const text = numbers.length(wanted, unit);
    if (read === undefined) return text;
    const { off, standing } = compareReading(kind, read, wanted);
    const sign = off < 0 ? '-' : '+';
    return `${text} (${numbers.length(read, unit, { bare: true })}, ${sign}${numbers.fixed(Math.abs(off), 0)} mm, ${words.standing[standing]})`;
  };
  const levels = formatTable(
    [
      { title: words.level },
      { title: isEmpty ? words.girthEmpty : words.girth },
      { title: words.width },
      { title: words.depth },
      { title: words.flat, align: 'right' },
    ],
    targets.map((target) => [
      say(target.name),
      cell(target, 'girth'),
      cell(target, 'width'),
      cell(target, 'depth'),
      numbers.length(target.emptyGirth / 2, unit),
    ]),
  );
  const filling = formatTable(
    [
      { title: words.order },
      { title: words.litres, align: 'right' },
      { title: words.front, align: 'right' },
      { title: words.firm, align: 'right' },
    ],
    zones.map(({ name, volumeL, frontShare, low, high }) => [
      say(name),
      numbers.fixed(volumeL, 1),
      `${numbers.fixed(100 * frontShare, 0)} %`,
      range(numbers.mass(low, unit), numbers.mass(high, unit)),
    ]),
  );
  return `${levels}\n\n${filling}\n\n${words.stop}`;
}

import { type DisplayUnit, formatLength, wordsOf } from '../core/base/index.ts';
import type { CheckingEntry } from '../core/project/index.ts';
import {
  compareReading,
  type LevelTarget,
  type ReadingKind,
  type StuffingContext,
} from '../core/simulate/index.ts';
import { formatMass } from '../language/index.ts';
import { formatTable } from './format-table.ts';

/** What every level is to measure, beside what the latest entry of the log reads, and the filling by zone in its order. */
export function describeStuffing(
  { targets, zones }: StuffingContext,
  entry: CheckingEntry | undefined,
  unit: DisplayUnit,
): string {
  const isEmpty = entry?.state === 'empty';
  const cell = (target: LevelTarget, kind: ReadingKind): string => {
    const wanted = isEmpty && kind === 'girth' ? target.emptyGirth : target[kind];
    const read = entry?.levels[target.id]?.[kind];
    const text = formatLength(wanted, unit);
    if (read === undefined) return text;
    const { off, standing } = compareReading(kind, read, wanted);
    return `${text} (${formatLength(read, unit, { bare: true })}, ${off < 0 ? '-' : '+'}${Math.abs(off).toFixed(0)} mm, ${standing})`;
  };
  const levels = formatTable(
    [
      { title: 'level' },
      { title: isEmpty ? 'girth, empty' : 'girth -0/+5' },
      { title: 'width ±5' },
      { title: 'depth ±5' },
      { title: 'empty, flat', align: 'right' },
    ],
    targets.map((target) => [
      wordsOf(target.name),
      cell(target, 'girth'),
      cell(target, 'width'),
      cell(target, 'depth'),
      formatLength(target.emptyGirth / 2, unit),
    ]),
  );
  const filling = formatTable(
    [
      { title: 'fill in this order' },
      { title: 'litres', align: 'right' },
      { title: 'front', align: 'right' },
      { title: 'firm', align: 'right' },
    ],
    zones.map(({ name, volumeL, frontShare, low, high }) => [
      wordsOf(name),
      volumeL.toFixed(1),
      `${(100 * frontShare).toFixed(0)} %`,
      `${formatMass(low, unit)} to ${formatMass(high, unit)}`,
    ]),
  );
  return `${levels}\n\n${filling}\n\nStop when a girth is over by more than 5 mm: take filling out, do not tighten the seam.`;
}

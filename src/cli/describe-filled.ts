import type { DisplayUnit } from '../core/base/index.ts';
import type { ReportFilled, ReportFilledPlace, ReportInside } from '../core/form/index.ts';
import { nameOfPlace, type SectionSize } from '../core/inside/index.ts';
import type { Reader } from './create-reader.ts';
import { formatTable } from './format-table.ts';

const KILOPASCALS = 1000;

/** How the filled form comes out in space: its levels beside what was asked, the whole surface, what pulls most. */
export function describeFilled(
  { levels, rms, within, worst, pressure, stiffness, pulls }: ReportFilled,
  { braces }: Pick<ReportInside, 'braces'>,
  unit: DisplayUnit,
  { say, words: { filled: words }, numbers }: Reader,
): string {
  const length = (mm: number): string => numbers.length(mm, unit, { bare: true });
  const size = ({ girth, width, depth }: SectionSize) =>
    `${length(girth)}  ${length(width)} × ${length(depth)}`;
  const place = ({ distance, where, over }: ReportFilledPlace) =>
    words.place(
      (distance > 0 ? '+' : '') + numbers.fixed(distance, 0),
      say(nameOfPlace(where)),
      over ?? words.base,
    );
  const hasBand = levels.some(({ band }) => band);
  const most = pulls.toSorted((a, b) => b.pull - a.pull)[0];
  const name = braces.find(({ id }) => id === most?.id)?.name;
  return [
    formatTable(
      [
        { title: words.level },
        { title: words.asked(unit), align: 'right' },
        { title: words.found, align: 'right' },
        ...(hasBand ? [{ title: words.band, align: 'right' } as const] : []),
      ],
      levels.map(({ id, asked, found, band }) => [
        id,
        size(asked),
        size(found),
        ...(hasBand ? [band ? words.range(length(band[0]), length(band[1])) : ''] : []),
      ]),
    ),
    words.whole(numbers.fixed(rms, 1), numbers.percent(within, 1), place(worst)),
    words.load(numbers.fixed(KILOPASCALS * pressure, 1), numbers.fixed(stiffness, 0)),
    ...(most && name ? [words.pull(say(name), numbers.fixed(most.pull, 0))] : []),
  ].join('\n');
}

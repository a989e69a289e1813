import { withUsual } from '../../../core/base/index.ts';
import type { PrintGap } from '../../../core/laying/index.ts';
import { LAYING_OPTIONS } from '../../../core/laying/index.ts';
import { nameOfPlace } from '../../../core/seams/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** So much off is met, mm. */
const MEETS = 0.5;
const off = ({ along, across }: PrintGap): number => Math.hypot(along, across);

/** Where the print goes on over the seams, and where it does not. */
export function PrintGaps({ seen }: { readonly seen: LaySeen }) {
  const { print: words } = useWords().laying;
  const say = useSay();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const print = seen.plan?.print;
  if (!print || print.met.length + print.others.length === 0) return null;
  const length = (mm: number) => numbers.fineLength(Math.abs(mm), unit);
  const { level } = withUsual(LAYING_OPTIONS.print, seen.of.stock.print ?? {});
  const { met, others } = print;
  const unmet = met.filter((gap) => off(gap) > MEETS);
  const worst = (gaps: readonly PrintGap[]) => gaps.reduce((a, b) => (off(b) > off(a) ? b : a));
  const isEnd = ({ at }: PrintGap) => at === 'start' || at === 'end';
  const placeOf = (gap: PrintGap) => (isEnd(gap) ? words.atEnd : say(nameOfPlace(gap.at)).toLowerCase());
  const far = others.length > 0 ? worst(others) : null;
  return (
    <div className="lay-print-gaps">
      {met.length > 0 && (
        <p data-unmet={unmet.length > 0 || undefined}>
          {unmet.length === 0
            ? words.met(words.levels[level], met.length)
            : words.notMet(words.levels[level], unmet.length, met.length, length(off(worst(met))))}
        </p>
      )}
      {far && (
        <p className="quiet">
          {off(far) > MEETS
            ? words.elsewhere(length(off(far)), words.atSeam(far.seam, placeOf(far)))
            : words.everywhere}
        </p>
      )}
      <details>
        <summary>{words.list}</summary>
        <ScrollableTable label={words.list}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.seam}</th>
                <th scope="col">{words.place}</th>
                <th scope="col" className="number">
                  {words.offAlong}
                </th>
                <th scope="col" className="number">
                  {words.offAcross}
                </th>
              </tr>
            </thead>
            <tbody>
              {[...met, ...others].map((gap) => (
                <tr key={`${gap.seam} ${gap.at} ${gap.pieces.join(' ')}`}>
                  <th scope="row">{gap.seam}</th>
                  <td>{placeOf(gap)}</td>
                  <td className="number">{length(gap.along)}</td>
                  <td className="number">{length(gap.across)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollableTable>
      </details>
    </div>
  );
}

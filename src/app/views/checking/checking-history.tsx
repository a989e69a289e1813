import type { CheckingEntry } from '../../../core/project/index.ts';
import { compareReading, type FillingContext, judgeFilling } from '../../../core/simulate/index.ts';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { isRead } from './use-corrections.ts';

interface HistoryProps {
  readonly entries: readonly CheckingEntry[];
  readonly shown: number;
  readonly stuffing: FillingContext;
  readonly onShow: (index: number) => void;
  readonly onRemove: (index: number) => void;
}

/** Every round so far: how far each girth was off then, newest first. */
export function CheckingHistory({ entries, shown, stuffing, onShow, onRemove }: HistoryProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { checking: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const levels = stuffing.targets.toSorted((a, b) => b.z - a.z);
  const offOf = (entry: CheckingEntry, levelId: string): string => {
    const target = levels.find(({ id }) => id === levelId);
    const girth = entry.levels[levelId]?.girth;
    if (!target || girth === undefined) return '–';
    const wanted = entry.state === 'empty' ? target.emptyGirth : target.girth;
    return numbers.signedLength(compareReading('girth', girth, wanted).off, unit);
  };
  return (
    <section aria-labelledby="history-title">
      <h3 id="history-title">{words.soFar}</h3>
      <ScrollableTable label={words.soFar}>
        <table className="table checking-history stacked">
          <thead>
            <tr>
              <th scope="col">{words.measured}</th>
              {levels.map(({ id, name }) => (
                <th scope="col" className="number" key={id}>
                  {say(name)}
                </th>
              ))}
              <th scope="col" className="number">
                {words.toMend}
              </th>
              <td />
            </tr>
          </thead>
          <tbody>
            {entries
              .map((entry, index) => ({ entry, index }))
              .filter(({ entry, index }) => index === shown || isRead(entry))
              .reverse()
              .map(({ entry, index }) => (
                <tr key={index} data-chosen={index === shown || undefined}>
                  <th scope="row">
                    <button
                      type="button"
                      aria-current={index === shown || undefined}
                      onClick={() => onShow(index)}
                    >
                      {numbers.day(entry.date)}
                    </button>
                    <span className="measure-how">
                      {entry.state === 'empty' ? words.emptyShort : words.filledShort}
                      {entry.fillMass !== undefined && `, ${numbers.mass(entry.fillMass, unit)}`}
                    </span>
                  </th>
                  {levels.map(({ id, name }) => (
                    <td className="number" key={id} data-name={say(name)}>
                      {offOf(entry, id)}
                    </td>
                  ))}
                  <td className="number" data-name={words.toMend}>
                    {judgeFilling(entry.levels, entry.state, stuffing).length}
                  </td>
                  <td>
                    <button
                      type="button"
                      aria-label={words.removeOf(numbers.day(entry.date))}
                      onClick={() => onRemove(index)}
                    >
                      {words.remove}
                    </button>
                  </td>
                </tr>
              ))}
          </tbody>
        </table>
      </ScrollableTable>
      <p className="measure-how">{words.historyHow}</p>
    </section>
  );
}

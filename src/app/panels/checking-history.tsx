import type { CheckingEntry } from '../../core/project/index.ts';
import {
  compareReading,
  formatMass,
  judgeStuffing,
  type StuffingContext,
} from '../../core/simulate/index.ts';
import { signedLength } from './say-numbers.ts';
import { ScrollableTable } from './scrollable-table.tsx';
import { useApp } from './workroom-context.tsx';

interface HistoryProps {
  readonly entries: readonly CheckingEntry[];
  readonly shown: number;
  readonly stuffing: StuffingContext;
  readonly onShow: (index: number) => void;
  readonly onRemove: (index: number) => void;
}

/** Every round so far: how far each girth was off then, newest first. */
export function CheckingHistory({ entries, shown, stuffing, onShow, onRemove }: HistoryProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const levels = stuffing.targets.toSorted((a, b) => b.z - a.z);
  const offOf = (entry: CheckingEntry, levelId: string): string => {
    const target = levels.find(({ id }) => id === levelId);
    const girth = entry.levels[levelId]?.girth;
    if (!target || girth === undefined) return '–';
    const wanted = entry.state === 'empty' ? target.emptyGirth : target.girth;
    return signedLength(compareReading('girth', girth, wanted).off, unit);
  };
  return (
    <section aria-labelledby="history-title">
      <h3 id="history-title">So far</h3>
      <ScrollableTable label="So far">
        <table className="table checking-history">
          <thead>
            <tr>
              <th scope="col">Measured</th>
              {levels.map(({ id, name }) => (
                <th scope="col" className="number" key={id}>
                  {name}
                </th>
              ))}
              <th scope="col" className="number">
                To mend
              </th>
              <td />
            </tr>
          </thead>
          <tbody>
            {entries
              .map((entry, index) => ({ entry, index }))
              .reverse()
              .map(({ entry, index }) => (
                <tr key={index} data-lit={index === shown || undefined}>
                  <th scope="row">
                    <button
                      type="button"
                      aria-current={index === shown || undefined}
                      onClick={() => onShow(index)}
                    >
                      {entry.date}
                    </button>
                    <span className="measure-how">
                      {entry.state === 'empty' ? 'empty shell' : 'filled'}
                      {entry.fillMass !== undefined && `, ${formatMass(entry.fillMass, unit)}`}
                    </span>
                  </th>
                  {levels.map(({ id }) => (
                    <td className="number" key={id}>
                      {offOf(entry, id)}
                    </td>
                  ))}
                  <td className="number">{judgeStuffing(entry.levels, entry.state, stuffing).length}</td>
                  <td>
                    <button
                      type="button"
                      aria-label={`Remove the readings of ${entry.date}`}
                      onClick={() => onRemove(index)}
                    >
                      Remove
                    </button>
                  </td>
                </tr>
              ))}
          </tbody>
        </table>
      </ScrollableTable>
      <p className="measure-how">How far each girth was off, all round.</p>
    </section>
  );
}

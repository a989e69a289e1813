import { formatLength } from '../../core/base/index.ts';
import { findMeasure } from '../../core/body/index.ts';
import { signedLength } from './say-numbers.ts';
import { useActions, useApp } from './workroom-context.tsx';

const STATUS_WORDS = { met: 'met', conflict: 'conflict', estimated: 'estimated' } as const;

/** Every tape: asked for, read off the body, and the difference. Pointing at a row lights the tape. */
export function TapeTable() {
  const tapes = useApp((state) => state.form?.report.tapes);
  const highlight = useApp((state) => state.highlight);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  if (!tapes) return null;
  return (
    <table className="table tape-table">
      <thead>
        <tr>
          <th scope="col">Tape</th>
          <th scope="col" className="number">
            Asked
          </th>
          <th scope="col" className="number">
            Body
          </th>
          <th scope="col">Standing</th>
        </tr>
      </thead>
      <tbody>
        {tapes.map((tape) => (
          <tr
            key={tape.id}
            className={tape.status}
            data-lit={(highlight?.kind === 'tape' && highlight.id === tape.id) || undefined}
            onPointerEnter={() => actions.pointAt({ kind: 'tape', id: tape.id })}
            onPointerLeave={() => actions.pointAt(null)}
          >
            <th scope="row">{nameOfTape(tape.id)}</th>
            <td className="number">{tape.status === 'estimated' ? '–' : formatLength(tape.target, unit)}</td>
            <td className="number">{formatLength(tape.got, unit)}</td>
            <td>
              {tape.status === 'conflict'
                ? signedLength(tape.got - tape.target, unit)
                : STATUS_WORDS[tape.status]}
              {tape.status === 'estimated' && tape.spread ? ` ± ${formatLength(tape.spread, unit)}` : ''}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function nameOfTape(id: string): string {
  const [measureId, side] = id.split('.');
  const name = findMeasure(measureId)?.name ?? measureId;
  return side ? `${name}, ${side}` : name;
}

import { formatLength } from '../../core/base/index.ts';
import { findMeasure } from '../../core/body/index.ts';
import type { ReportTape } from '../../core/pipeline/index.ts';
import { signedLength } from './say-numbers.ts';
import { useActions, useApp } from './workroom-context.tsx';

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
            <td className="standing">
              <Standing tape={tape} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Standing({ tape }: { readonly tape: ReportTape }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (tape.status === 'met') return 'met';
  if (tape.status === 'conflict') return `conflict, ${signedLength(tape.got - tape.target, unit)}`;
  return tape.spread ? `estimate ± ${formatLength(tape.spread, unit, { bare: true })}` : 'estimate';
}

function nameOfTape(id: string): string {
  const [measureId, side] = id.split('.');
  const name = findMeasure(measureId)?.name ?? measureId;
  return side ? `${name}, ${side}` : name;
}

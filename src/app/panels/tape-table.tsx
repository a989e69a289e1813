import { formatLength } from '../../core/base/index.ts';
import { findMeasure } from '../../core/body/index.ts';
import type { ReportTape } from '../../core/pipeline/index.ts';
import { isTapeLit } from '../store/index.ts';
import { LitRow } from './lit-row.tsx';
import { signedLength } from './say-numbers.ts';
import { useApp } from './workroom-context.tsx';

/** Every tape: asked for, read off the body, and the difference. Pointing at a row lights the tape. */
export function TapeTable() {
  const tapes = useApp((state) => state.form?.report.tapes);
  const highlight = useApp((state) => state.highlight);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
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
          <LitRow
            key={tape.id}
            className={tape.status}
            points={{ kind: 'tape', id: tape.id }}
            isLit={isTapeLit(highlight, tape.id)}
          >
            <th scope="row">{nameOfTape(tape.id)}</th>
            <td className="number">{tape.status === 'estimated' ? '–' : formatLength(tape.target, unit)}</td>
            <td className="number">{formatLength(tape.got, unit)}</td>
            <td className="standing">
              <Standing tape={tape} />
            </td>
          </LitRow>
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

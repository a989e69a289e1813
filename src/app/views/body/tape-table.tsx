import type { Say } from '../../../core/base/index.ts';
import { findMeasure } from '../../../core/body/index.ts';
import type { ReportTape } from '../../../core/form/index.ts';
import type { Words } from '../../../language/index.ts';
import { isTapeLit } from '../../store/index.ts';
import { LitRow } from '../parts/lit-row.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** Every tape: asked for, read off the body, and the difference. Pointing at a row lights the tape. */
export function TapeTable() {
  const tapes = useApp((state) => state.form?.report.tapes);
  const highlight = useApp((state) => state.highlight);
  const words = useWords();
  const say = useSay();
  const { tapeTable } = words;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (!tapes) return null;
  return (
    <table className="table tape-table">
      <thead>
        <tr>
          <th scope="col">{tapeTable.tape}</th>
          <th scope="col" className="number">
            {tapeTable.typed}
          </th>
          <th scope="col" className="number">
            {tapeTable.body}
          </th>
          <th scope="col">{tapeTable.result}</th>
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
            <th scope="row">{nameOfTape(tape.id, words, say)}</th>
            <td className="number">
              {tape.status === 'estimated' ? '–' : numbers.length(tape.target, unit)}
            </td>
            <td className="number">{numbers.length(tape.got, unit)}</td>
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
  const words = useWords().tapeTable;
  const numbers = useNumbers();
  if (tape.status === 'met') return words.met;
  if (tape.status === 'conflict') return words.conflict(numbers.signedLength(tape.got - tape.target, unit));
  return tape.spread
    ? words.estimateWithin(numbers.length(tape.spread, unit, { bare: true }))
    : words.estimate;
}

function nameOfTape(id: string, { tapeTable }: Words, say: Say): string {
  const [measureId, side] = id.split('.');
  const measure = findMeasure(measureId);
  const name = measure ? say(measure.name) : measureId;
  return side === 'left' || side === 'right' ? tapeTable.sided[side](name) : name;
}

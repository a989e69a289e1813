import { correctionFromBars, PAPERS } from '../../core/sheet/index.ts';
import { LengthInput } from './length-input.tsx';
import { signedPercent } from './say-numbers.ts';
import { useActions, useApp } from './workroom-context.tsx';

/** mm; wide enough for every printed bar, so that a wrong scale is told and not refused. */
const BAR_LIMITS = { min: 50, max: 250 };

/** How this printer must be corrected; null until both bars are measured. */
export function usePrintCorrection() {
  const { across, up } = useApp((state) => state.print);
  return across === null || up === null ? null : correctionFromBars({ x: across, y: up });
}

/** Paper, and the two bars that tell whether the printer keeps to the scale. */
export function PrintChoices() {
  const { paper, across, up } = useApp((state) => state.print);
  const actions = useActions();
  return (
    <>
      <div className="field-row">
        <label className="measure-name" htmlFor="paper">
          Paper
        </label>
        <select
          id="paper"
          value={paper}
          onChange={(event) => actions.setPrint({ paper: event.target.value })}
        >
          {PAPERS.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <details className="printer" open={across !== null || up !== null}>
        <summary>My printer does not print true</summary>
        <p className="measure-how">
          Print the first page, measure the long bar across and the long bar up, and print again with what you
          measured typed here.
        </p>
        {(['across', 'up'] as const).map((way) => (
          <div className="field-row" key={way}>
            <span className="measure-name">Bar {way}</span>
            <LengthInput
              fieldId={`print.${way}`}
              label={`Bar ${way} measures`}
              value={way === 'across' ? across : up}
              limits={BAR_LIMITS}
              isOptional
              onValue={(mm) => actions.setPrint({ [way]: mm })}
            />
          </div>
        ))}
        <CorrectionVerdict />
      </details>
    </>
  );
}

function CorrectionVerdict() {
  const correction = usePrintCorrection();
  if (!correction) return null;
  return correction.ok ? (
    <p className="quiet" role="status">
      Pages will be stretched {signedPercent(correction.value.x - 1, 2)} across and{' '}
      {signedPercent(correction.value.y - 1, 2)} up.
    </p>
  ) : (
    <ul role="alert" className="readings-differ">
      {correction.issues.map((issue) => (
        <li key={issue.path}>{issue.message}</li>
      ))}
    </ul>
  );
}

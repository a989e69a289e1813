import { INCH_ALLOWANCES, PATTERN_OPTIONS } from '../../../core/pattern/index.ts';
import { LengthInput } from './length-input.tsx';
import { useNumbers, useWords } from './use-words.ts';
import { useActions, useApp } from './workroom-context.tsx';

const ALLOWANCE = PATTERN_OPTIONS.allowance;

/** Cloth beyond the seam line; where lengths are inches, with the fractions sewing machines are marked in. */
export function SeamAllowance() {
  const allowance = useApp((state) => state.project?.cloth.allowance ?? ALLOWANCE.usual);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const words = useWords().panels;
  const numbers = useNumbers();
  return (
    <div className="field-row">
      <span className="measure-name">{words.seamAllowance}</span>
      <LengthInput
        fieldId="cloth.allowance"
        label={words.seamAllowance}
        value={allowance}
        limits={ALLOWANCE}
        isOptional={false}
        isExact
        onValue={(mm) => mm !== null && actions.setAllowance(mm)}
      />
      {unit === 'in' && (
        <span className="allowance-offers">
          {INCH_ALLOWANCES.map((mm) => (
            <button
              key={mm}
              type="button"
              className="plain"
              aria-pressed={allowance === mm}
              onClick={() => actions.setAllowance(mm)}
            >
              {numbers.length(mm, 'in', { fraction: 16 })}
            </button>
          ))}
        </span>
      )}
    </div>
  );
}

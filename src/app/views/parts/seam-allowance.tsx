import { PATTERN_OPTIONS } from '../../../core/pattern/index.ts';
import { LengthInput } from './length-input.tsx';
import { useWords } from './use-words.ts';
import { useActions, useApp } from './workroom-context.tsx';

const ALLOWANCE = PATTERN_OPTIONS.allowance;

/** Cloth beyond the seam line. */
export function SeamAllowance() {
  const allowance = useApp((state) => state.project?.cloth.allowance ?? ALLOWANCE.usual);
  const actions = useActions();
  const words = useWords().panels;
  return (
    <div className="field-row">
      <span className="measure-name">{words.seamAllowance}</span>
      <LengthInput
        fieldId="cloth.allowance"
        label={words.seamAllowance}
        value={allowance}
        limits={ALLOWANCE}
        isOptional={false}
        onValue={(mm) => mm !== null && actions.setAllowance(mm)}
      />
    </div>
  );
}

import { LengthInput } from './length-input.tsx';
import { useWords } from './use-words.ts';
import { useActions, useApp } from './workroom-context.tsx';

const DEFAULT_ALLOWANCE = 10;

/** Cloth beyond the seam line. */
export function SeamAllowance() {
  const allowance = useApp((state) => state.project?.cloth.allowance ?? DEFAULT_ALLOWANCE);
  const actions = useActions();
  const words = useWords().panels;
  return (
    <div className="field-row">
      <span className="measure-name">{words.seamAllowance}</span>
      <LengthInput
        fieldId="cloth.allowance"
        label={words.seamAllowance}
        value={allowance}
        limits={{ min: 0, max: 50 }}
        isOptional={false}
        onValue={(mm) => mm !== null && actions.setAllowance(mm)}
      />
    </div>
  );
}

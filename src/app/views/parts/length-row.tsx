import { LengthInput, showLength } from './length-input.tsx';
import type { Limits } from './read-length.ts';
import { useNumbers } from './use-words.ts';
import { useApp } from './workroom-context.tsx';

interface LengthRowProps {
  readonly name: string;
  readonly fieldId: string;
  /** mm; undefined = the usual. */
  readonly value: number | undefined;
  /** Shown while nothing is typed, mm. */
  readonly usual: number;
  readonly limits: Limits;
  readonly isExact?: boolean;
  /** `undefined` when the field was emptied. */
  readonly onValue: (mm: number | undefined) => void;
}

/** A named length that may be left at its usual value. */
export function LengthRow({ name, fieldId, value, usual, limits, isExact = false, onValue }: LengthRowProps) {
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  return (
    <div className="field-row">
      <span className="measure-name">{name}</span>
      <LengthInput
        fieldId={fieldId}
        label={name}
        value={value ?? null}
        placeholder={showLength(usual, unit, isExact, numbers)}
        isExact={isExact}
        limits={limits}
        isOptional
        onValue={(mm) => onValue(mm ?? undefined)}
      />
    </div>
  );
}

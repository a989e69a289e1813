import type { Limits } from './read-length.ts';

interface MassRowProps {
  readonly name: string;
  /** kg; undefined = the usual. */
  readonly value: number | undefined;
  /** kg. */
  readonly limits: Limits;
  /** What is typed: a unit's short name, and how many kg it has. */
  readonly unit: { readonly name: string; readonly kg: number };
  readonly usual?: number;
  /** `undefined` when the field was emptied; not called for what is no mass within the limits. */
  readonly onValue: (kg: number | undefined) => void;
}

/** A named mass that may be left at its usual value; taken when the field is left. */
export function MassRow({ name, value, limits, unit, usual, onValue }: MassRowProps) {
  const show = (kg: number) => `${Number((kg / unit.kg).toFixed(2))}`;
  const shown = value === undefined ? '' : show(value);
  const set = (text: string) => {
    // Leaving the field as it was must not round what is kept.
    if (text.trim() === shown) return;
    const kg = Number(text.replace(',', '.')) * unit.kg;
    if (text.trim() === '') onValue(undefined);
    else if (kg >= limits.min && kg <= limits.max) onValue(kg);
  };
  const label = `${name}, ${unit.name}`;
  return (
    <label className="field-row">
      <span className="measure-name">{label}</span>
      <input
        key={`${unit.name} ${shown}`}
        type="number"
        min={limits.min / unit.kg}
        max={limits.max / unit.kg}
        step="any"
        inputMode="decimal"
        placeholder={usual === undefined ? undefined : show(usual)}
        defaultValue={shown}
        onBlur={(event) => set(event.target.value)}
      />
    </label>
  );
}

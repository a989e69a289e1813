import { kgPerPound } from '../../../core/base/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import type { EntryProps } from './entry-props.ts';

/** Most that can be weighed in, kg. */
const MOST = 100;

/** What has been filled in so far, in kilograms or pounds, beside what a firm form takes. */
export function FillMass({ entry, stuffing, onChange }: EntryProps) {
  const { checking: words, steps } = useWords();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const kgPerUnit = unit === 'in' ? kgPerPound : 1;
  const shown = entry.fillMass === undefined ? '' : `${Number((entry.fillMass / kgPerUnit).toFixed(2))}`;
  const sum = (key: 'low' | 'high') => stuffing.zones.reduce((total, zone) => total + zone[key], 0);
  const set = (text: string) => {
    // Leaving the field as it was must not round what is kept.
    if (text.trim() === shown) return;
    const kilograms = Number(text.replace(',', '.')) * kgPerUnit;
    const { fillMass: _before, ...others } = entry;
    if (text.trim() === '') onChange(others, steps.things.fill);
    else if (kilograms >= 0 && kilograms <= MOST)
      onChange({ ...others, fillMass: kilograms }, steps.things.fill);
  };
  return (
    <label>
      <span className="measure-name">{words.fillSoFar(unit === 'in' ? 'lb' : 'kg')}</span>
      <input
        key={unit}
        type="number"
        min="0"
        max={Math.floor(MOST / kgPerUnit)}
        step="0.01"
        inputMode="decimal"
        defaultValue={shown}
        onBlur={(event) => set(event.target.value)}
      />
      <span className="measure-how">
        {words.firm(numbers.mass(sum('low'), unit), numbers.mass(sum('high'), unit))}
      </span>
    </label>
  );
}

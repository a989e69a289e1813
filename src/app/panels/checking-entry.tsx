import { formatLength } from '../../core/base/index.ts';
import type { CheckingEntry } from '../../core/project/index.ts';
import {
  compareReading,
  formatMass,
  type LevelTarget,
  type ReadingKind,
  type StuffingContext,
} from '../../core/simulate/index.ts';
import { LengthInput } from './length-input.tsx';
import { useActions, useApp } from './workroom-context.tsx';

const LIMITS = { min: 20, max: 2500 } as const;
const KINDS = ['girth', 'width', 'depth'] as const;

interface EntryProps {
  readonly entry: CheckingEntry;
  readonly stuffing: StuffingContext;
  readonly onChange: (entry: CheckingEntry, label: string) => void;
}

/** One round of measuring: a row of fields per level from the top down, each with its target and its verdict. */
export function CheckingEntryFields({ entry, stuffing, onChange }: EntryProps) {
  const isEmpty = entry.state === 'empty';
  const levels = stuffing.targets.toSorted((a, b) => b.z - a.z);
  return (
    <section className="checking-entry" aria-labelledby="readings-title">
      <h3 id="readings-title">{isEmpty ? 'The empty shell' : 'The filled form'}</h3>
      <div className="checking-when">
        <label>
          <span className="measure-name">Measured on</span>
          <input
            type="date"
            value={entry.date}
            onChange={(event) => onChange({ ...entry, date: event.target.value }, 'day of measuring')}
          />
        </label>
        {!isEmpty && <FillMass entry={entry} stuffing={stuffing} onChange={onChange} />}
      </div>
      <p className="measure-how">
        {isEmpty
          ? 'Lay the shell flat, level line on level line, and measure across.'
          : 'Width and depth between two set squares held against the form.'}
      </p>
      <ul className="checking-levels">
        {levels.map((target) => (
          <LevelFields key={target.id} target={target} entry={entry} onChange={onChange} />
        ))}
      </ul>
    </section>
  );
}

interface LevelProps extends Omit<EntryProps, 'stuffing'> {
  readonly target: LevelTarget;
}

function LevelFields({ target, entry, onChange }: LevelProps) {
  const reading = entry.levels[target.id] ?? {};
  const isEmpty = entry.state === 'empty';
  const actions = useActions();
  const isLit = useApp(({ highlight }) => highlight?.kind === 'level' && highlight.id === target.id);
  const set = (kind: ReadingKind, mm: number | null) => {
    const { [kind]: _before, ...others } = reading;
    const next = mm === null ? others : { ...others, [kind]: mm };
    const label = `${target.name.toLowerCase()} ${isEmpty ? 'of the shell' : kind}`;
    onChange({ ...entry, levels: { ...entry.levels, [target.id]: next } }, label);
  };
  return (
    <li
      data-lit={isLit || undefined}
      onPointerEnter={() => actions.pointAt({ kind: 'level', id: target.id })}
      onPointerLeave={() => actions.pointAt(null)}
    >
      <span className="measure-name">{target.name}</span>
      {isEmpty ? (
        <ReadingField
          fieldId={`checking.${target.id}.flat`}
          label={`${target.name}, laid flat`}
          word="flat"
          kind="girth"
          value={reading.girth === undefined ? null : reading.girth / 2}
          target={target.emptyGirth / 2}
          onValue={(mm) => set('girth', mm === null ? null : 2 * mm)}
        />
      ) : (
        KINDS.map((kind) => (
          <ReadingField
            key={kind}
            fieldId={`checking.${target.id}.${kind}`}
            label={`${target.name} ${kind}`}
            word={kind}
            kind={kind}
            value={reading[kind] ?? null}
            target={target[kind]}
            onValue={(mm) => set(kind, mm)}
          />
        ))
      )}
    </li>
  );
}

interface ReadingFieldProps {
  readonly fieldId: string;
  readonly label: string;
  readonly word: string;
  readonly kind: ReadingKind;
  readonly value: number | null;
  readonly target: number;
  readonly onValue: (mm: number | null) => void;
}

/** An empty shell may be off by this across, mm. */
const FLAT_TOLERANCE = 2;

function ReadingField({ fieldId, label, word, kind, value, target, onValue }: ReadingFieldProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const found = value === null ? null : compareReading(kind, value, target);
  const isFlat = word === 'flat';
  const standing = found && (isFlat ? standingFlat(found.off) : found.standing);
  return (
    <div className="reading-field" data-standing={standing ?? undefined}>
      <LengthInput
        fieldId={fieldId}
        label={label}
        value={value}
        placeholder={formatLength(target, unit, { bare: true })}
        limits={LIMITS}
        isOptional
        describedBy={`${fieldId}-verdict`}
        onValue={(mm) => mm !== value && onValue(mm)}
      />
      <p className="reading-verdict" id={`${fieldId}-verdict`}>
        <span className="quiet">{word}</span>
        {found && standing && <span>{`${signedSmall(found.off, unit)}, ${standing}`}</span>}
      </p>
    </div>
  );
}

function standingFlat(off: number): 'good' | 'over' | 'under' {
  return Math.abs(off) <= FLAT_TOLERANCE ? 'good' : off > 0 ? 'over' : 'under';
}

function signedSmall(mm: number, unit: 'cm' | 'in'): string {
  const size = Math.abs(mm);
  const text = unit === 'in' ? formatLength(size, 'in', { fraction: 16 }) : `${size.toFixed(0)} mm`;
  return /[1-9]/.test(text) ? `${mm < 0 ? '−' : '+'}${text}` : `±0`;
}

function FillMass({ entry, stuffing, onChange }: EntryProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const sum = (key: 'low' | 'high') => stuffing.zones.reduce((total, zone) => total + zone[key], 0);
  const set = (text: string) => {
    const kilograms = Number(text.replace(',', '.'));
    const { fillMass: _before, ...others } = entry;
    if (text.trim() === '') onChange(others, 'filling weighed in');
    else if (kilograms >= 0 && kilograms <= 100)
      onChange({ ...others, fillMass: kilograms }, 'filling weighed in');
  };
  return (
    <label>
      <span className="measure-name">Filling so far, kg</span>
      <input
        type="number"
        min="0"
        max="100"
        step="0.01"
        inputMode="decimal"
        defaultValue={entry.fillMass ?? ''}
        onBlur={(event) => set(event.target.value)}
      />
      <span className="measure-how">
        Firm is {formatMass(sum('low'), unit)} to {formatMass(sum('high'), unit)} in all.
      </span>
    </label>
  );
}

import { compareReading, type LevelTarget, type ReadingKind } from '../../../core/simulate/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { usePointing } from '../parts/use-pointing.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import type { EntryProps } from './entry-props.ts';
import { FillMass } from './fill-mass.tsx';
import { rowOfLevel, type WordedCorrection } from './use-corrections.ts';

const LIMITS = { min: 20, max: 2500 } as const;
const KINDS = ['girth', 'width', 'depth'] as const;

interface EntryFieldsProps extends EntryProps {
  readonly corrections: readonly WordedCorrection[];
}

/** One round of measuring: a row of fields per level from the top down, each with its target and its verdict. */
export function CheckingEntryFields({ entry, stuffing, corrections, onChange }: EntryFieldsProps) {
  const isEmpty = entry.state === 'empty';
  const { checking: words, steps } = useWords();
  const levels = stuffing.targets.toSorted((a, b) => b.z - a.z);
  return (
    <section className="checking-entry" aria-labelledby="readings-title">
      <h3 id="readings-title">{isEmpty ? words.empty : words.filled}</h3>
      <div className="checking-when">
        <label>
          <span className="measure-name">{words.on}</span>
          <input
            type="date"
            value={entry.date}
            onChange={(event) => onChange({ ...entry, date: event.target.value }, steps.things.day)}
          />
        </label>
        {!isEmpty && <FillMass entry={entry} stuffing={stuffing} onChange={onChange} />}
      </div>
      <p className="measure-how">{isEmpty ? words.howEmpty : words.howFilled}</p>
      <ul className="checking-levels">
        {levels.map((target) => (
          <LevelFields
            key={target.id}
            target={target}
            entry={entry}
            corrections={corrections}
            onChange={onChange}
          />
        ))}
      </ul>
    </section>
  );
}

interface LevelProps extends Omit<EntryFieldsProps, 'stuffing'> {
  readonly target: LevelTarget;
}

/** What is read at one level, each beside its target, and what to do about it. */
export function LevelFields({ target, entry, corrections, onChange }: LevelProps) {
  const reading = entry.levels[target.id] ?? {};
  const isEmpty = entry.state === 'empty';
  const { checking: words, steps } = useWords();
  const say = useSay();
  const name = say(target.name);
  const pointing = usePointing({ kind: 'level', id: target.id });
  const isLit = useApp(({ highlight }) => highlight?.kind === 'level' && highlight.id === target.id);
  const set = (kind: ReadingKind, mm: number | null) => {
    const { [kind]: _before, ...others } = reading;
    const next = mm === null ? others : { ...others, [kind]: mm };
    const label = isEmpty ? steps.things.ofShell(name) : steps.things.kindOf(name, words.kinds[kind]);
    onChange({ ...entry, levels: { ...entry.levels, [target.id]: next } }, label);
  };
  return (
    <li id={rowOfLevel(target.id)} data-lit={isLit || undefined} {...pointing}>
      <span className="measure-name">{name}</span>
      {isEmpty ? (
        <ReadingField
          fieldId={`checking.${target.id}.flat`}
          label={words.laidFlat(name)}
          isFlat
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
            label={words.kindOf(name, words.kinds[kind])}
            kind={kind}
            value={reading[kind] ?? null}
            target={target[kind]}
            onValue={(mm) => set(kind, mm)}
          />
        ))
      )}
      {corrections
        .filter(({ levelId }) => levelId === target.id)
        .map(({ correction, text }) => (
          <p key={correction.kind} className="reading-remedy">
            {text}
          </p>
        ))}
    </li>
  );
}

interface ReadingFieldProps {
  readonly fieldId: string;
  readonly label: string;
  /** Of an empty shell laid flat: half its girth. */
  readonly isFlat?: boolean;
  readonly kind: ReadingKind;
  readonly value: number | null;
  readonly target: number;
  readonly onValue: (mm: number | null) => void;
}

/** An empty shell may be off by this across, mm. */
const FLAT_TOLERANCE = 2;

function ReadingField(props: ReadingFieldProps) {
  const { fieldId, label, isFlat = false, kind, value, target, onValue } = props;
  const words = useWords().checking;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const found = value === null ? null : compareReading(kind, value, target);
  const standing = found && (isFlat ? standingFlat(found.off) : found.standing);
  return (
    <div className="reading-field" data-standing={standing ?? undefined}>
      <LengthInput
        fieldId={fieldId}
        label={label}
        value={value}
        limits={LIMITS}
        isOptional
        refusesEmpty={words.nothingRead(label)}
        describedBy={`${fieldId}-verdict`}
        onValue={(mm) => mm !== value && onValue(mm)}
      />
      <p className="reading-verdict" id={`${fieldId}-verdict`}>
        <span>
          {words.toBe(
            isFlat ? words.flat : words.kinds[kind],
            numbers.length(target, unit).replaceAll(' ', '\u00a0'),
          )}
        </span>
        {found && standing && (
          <strong>{`${numbers.signedLength(found.off, unit, { fraction: 16 })}, ${words.standing[standing]}`}</strong>
        )}
      </p>
    </div>
  );
}

function standingFlat(off: number): 'good' | 'over' | 'under' {
  return Math.abs(off) <= FLAT_TOLERANCE ? 'good' : off > 0 ? 'over' : 'under';
}

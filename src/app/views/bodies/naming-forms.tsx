import { type ReactNode, useId, useState } from 'react';
import type { Project } from '../../../core/project/index.ts';
import { type BodyCard, today } from '../../store/index.ts';
import { useNumbers } from '../parts/use-words.ts';
import { useWardrobe } from './wardrobe-context.tsx';

type Names = Pick<Project, 'name' | 'person'>;

interface NamesFormProps {
  readonly card: BodyCard;
  /** What it is called now. */
  readonly shown: string;
  readonly persons: readonly string[];
  readonly onKeep: (names: Names) => void;
  readonly onCancel: () => void;
}

/** A body's name, and whose of several it is. */
export function NamesForm({ card, shown, persons, onKeep, onCancel }: NamesFormProps) {
  const words = useWardrobe().words;
  const [name, setName] = useState(card.body.name);
  const [person, setPerson] = useState(card.person ?? '');
  const [label, setLabel] = useState(card.label);
  const keep = () => {
    const owner = person.trim();
    const apart = label.trim() === '' ? {} : { label: label.trim() };
    const names = { name: name.trim() || card.body.name };
    onKeep(owner === '' ? names : { ...names, person: { name: owner, ...apart } });
  };
  return (
    <SmallForm label={words.renameOne(shown)} onKeep={keep} onCancel={onCancel}>
      <TextField label={words.name} value={name} onChange={setName} isFirst />
      <TextField label={words.person} value={person} onChange={setPerson} known={persons} />
      {person.trim() !== '' && (
        <TextField label={words.label} value={label} onChange={setLabel} known={words.labels} />
      )}
      <p className="quiet">{words.aboutPerson}</p>
    </SmallForm>
  );
}

interface VersionFormProps {
  /** Whose card the new body comes to. */
  readonly person: string;
  readonly onKeep: (label: string) => void;
  readonly onCancel: () => void;
}

/** What sets another body of the same person apart. */
export function VersionForm({ person, onKeep, onCancel }: VersionFormProps) {
  const words = useWardrobe().words;
  const { day } = useNumbers();
  const [label, setLabel] = useState('');
  return (
    <SmallForm
      label={words.versionOne(person)}
      // A date sets it apart when nothing else does.
      onKeep={() => onKeep(label.trim() || day(today()))}
      onCancel={onCancel}
    >
      <TextField
        label={words.label}
        value={label}
        onChange={setLabel}
        known={words.labels}
        placeholder={day(today())}
        isFirst
      />
      <p className="quiet">{words.aboutVersion(person)}</p>
    </SmallForm>
  );
}

interface SmallFormProps {
  readonly label: string;
  readonly onKeep: () => void;
  readonly onCancel: () => void;
  readonly children: ReactNode;
}

/** Enter keeps what was typed, Escape leaves it; the dialog around it stays open. */
function SmallForm({ label, onKeep, onCancel, children }: SmallFormProps) {
  const words = useWardrobe().words;
  return (
    <form
      className="naming-form"
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault();
        onKeep();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        event.stopPropagation();
        onCancel();
      }}
    >
      {children}
      <p className="naming-ends">
        <button type="submit" className="main">
          {words.keep}
        </button>
        <button type="button" className="plain" onClick={onCancel}>
          {words.cancel}
        </button>
      </p>
    </form>
  );
}

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** What may be taken as it is. */
  readonly known?: readonly string[];
  readonly placeholder?: string;
  /** Takes the focus when it comes. */
  readonly isFirst?: boolean;
}

function TextField({ label, value, onChange, known = [], placeholder, isFirst = false }: TextFieldProps) {
  const [takeFocus] = useState(() => (field: HTMLInputElement | null) => field?.focus());
  const id = useId();
  return (
    <div className="naming-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={value}
        maxLength={200}
        list={known.length > 0 ? `${id}-known` : undefined}
        placeholder={placeholder}
        spellCheck={false}
        ref={isFirst ? takeFocus : undefined}
        onChange={(event) => onChange(event.target.value)}
      />
      <datalist id={`${id}-known`}>
        {known.map((text) => (
          <option key={text} value={text} />
        ))}
      </datalist>
    </div>
  );
}

import {
  type ChangeEvent,
  type FocusEvent,
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useId,
  useRef,
  useState,
} from 'react';
import { isInchFraction, type Numbers } from '../../../language/index.ts';
import { type Limits, readLength } from './read-length.ts';
import { useNumbers, useWords } from './use-words.ts';
import { useActions, useApp } from './workroom-context.tsx';

/** How long a person may stay on unusable text before being told, ms. */
const PATIENCE_MS = 900;

interface LengthInputProps {
  /** Key of the draft kept while the text cannot be used. */
  readonly fieldId: string;
  readonly label: string;
  /** mm; null = not given. */
  readonly value: number | null;
  readonly limits: Limits;
  readonly placeholder?: string;
  /** The field may be left empty. */
  readonly isOptional: boolean;
  /** What is said when Enter is pressed in the empty field, where a value may come later but none is not one. */
  readonly refusesEmpty?: string;
  /** Shown in mm where it is no fraction of an inch: what is cut by it must be read as it is. */
  readonly isExact?: boolean;
  readonly onValue: (value: number | null) => void;
  readonly onFocus?: () => void;
  readonly onBlur?: () => void;
  /** More to read out with the field, by id. */
  readonly describedBy?: string;
  readonly children?: ReactNode;
}

/**
 * A length as people type it, in either unit. Usable text takes effect at once; unusable text stays in the field with
 * a message naming field and limit.
 */
export function LengthInput(props: LengthInputProps) {
  const { label, placeholder } = props;
  const { unit, text, message, handlers } = useTypedLength(props);
  const messageId = useId();
  return (
    <div className="length-input" data-bad={message !== '' || undefined}>
      <span className="input-with-unit">
        <input
          type="text"
          inputMode={unit === 'cm' ? 'decimal' : 'text'}
          autoComplete="off"
          spellCheck={false}
          aria-label={label}
          aria-invalid={message !== '' || undefined}
          aria-describedby={`${message ? messageId : ''} ${props.describedBy ?? ''}`.trim() || undefined}
          placeholder={placeholder}
          value={text}
          {...handlers}
        />
        <span className="unit" aria-hidden="true">
          {/[a-z]/i.test(text) ? '' : unit}
        </span>
        {props.children}
      </span>
      {message && (
        <p className="field-message" id={messageId} role="alert">
          {message}
        </p>
      )}
    </div>
  );
}

/** As it stands in a field. */
export function showLength(mm: number, unit: 'cm' | 'in', isExact: boolean, numbers: Numbers): string {
  if (unit === 'in' && isExact && !isInchFraction(mm)) return `${numbers.plain(mm, 2)} mm`;
  return numbers.length(mm, unit, { bare: true, fraction: 16 });
}

/** What is said when a field that is empty is to be left by Enter, where that is not allowed. */
function useRefusalOfNone(refusesEmpty: string | undefined, isEmpty: boolean) {
  const [said, setSaid] = useState('');
  return {
    said,
    forget: () => setSaid(''),
    refuses() {
      if (refusesEmpty === undefined || !isEmpty) return false;
      setSaid(refusesEmpty);
      return true;
    },
  };
}

/** The text in the field, what is wrong with it, and the handlers that read what is typed. */
function useTypedLength(props: LengthInputProps) {
  const { fieldId, label, value, limits, isOptional, isExact = false, refusesEmpty, onValue } = props;
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const draft = useApp((state) => state.drafts[fieldId]);
  const actions = useActions();
  const { length: words } = useWords();
  const numbers = useNumbers();
  const read = (typed: string) => readLength(typed, unit, label, limits, { words, numbers });
  const [typing, setTyping] = useState<string | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);

  const shown = value === null ? '' : showLength(value, unit, isExact, numbers);
  const text = typing ?? draft?.text ?? shown;
  const refusal = useRefusalOfNone(refusesEmpty, text.trim() === '' && value === null);

  // Undo, or another field, may change what is shown while this one has the focus.
  const isOwnText =
    typing === null || typing.trim() === '' || draft?.text === typing || isReadAs(typing, value);
  useEffect(() => {
    if (!isOwnText) setTyping(shown);
  }, [isOwnText, shown]);

  function isReadAs(typed: string, mm: number | null): boolean {
    const reading = read(typed);
    return typed === shown || (reading.ok && reading.value === mm);
  }
  /** False when it stays as text that cannot be used. */
  const settle = (typed: string) => {
    const isEmpty = typed.trim() === '';
    // Where nothing stood before, nothing is wrong with none yet.
    if (isEmpty && (isOptional || value === null)) {
      actions.setDraft(fieldId, null);
      if (isOptional) onValue(null);
      return true;
    }
    const reading = read(typed);
    if (!reading.ok) actions.setDraft(fieldId, { text: typed, message: reading.message });
    return reading.ok;
  };
  const change = (typed: string) => {
    setTyping(typed);
    refusal.forget();
    clearTimeout(timer.current);
    const reading = read(typed);
    if (reading.ok) {
      actions.setDraft(fieldId, null);
      onValue(reading.value);
    } else if (typed.trim() !== '') {
      actions.setDraft(fieldId, { text: typed, message: draft?.message ?? '' });
      if (!reading.isShort) timer.current = setTimeout(() => settle(typed), PATIENCE_MS);
    }
  };
  const handlers = {
    onFocus(event: FocusEvent<HTMLInputElement>) {
      setTyping(text);
      actions.beginEdit();
      event.target.select();
      props.onFocus?.();
    },
    onChange: (event: ChangeEvent<HTMLInputElement>) => change(event.target.value),
    onBlur() {
      clearTimeout(timer.current);
      refusal.forget();
      if (typing !== null && typing !== shown) settle(typing);
      setTyping(null);
      actions.endEdit();
      props.onBlur?.();
    },
    onKeyDown(event: KeyboardEvent) {
      if (event.key === 'Enter' && (refusal.refuses() || !settle(text))) event.preventDefault();
      if (event.key !== 'Escape' || !draft) return;
      actions.setDraft(fieldId, null);
      setTyping(shown);
    },
  };
  return { unit, text, message: refusal.said || (draft?.message ?? ''), handlers };
}

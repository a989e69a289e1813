import { useId, useState } from 'react';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { MOST_TURN } from './turn-of-grain.ts';
import { useTurn } from './use-turn.ts';

interface GrainFieldProps {
  /** Degrees, positive to the left. */
  readonly turn: number;
  readonly name: string;
  readonly onTurn: (turn: number) => void;
}

/** The turn as a number. Text that is none stays in the field and is told. */
export function GrainField({ turn, name, onTurn }: GrainFieldProps) {
  const words = useWords().grain;
  const numbers = useNumbers();
  const sayTurn = useTurn();
  const [typed, setTyped] = useState<string | null>(null);
  const [isBad, setIsBad] = useState(false);
  const message = useId();
  const settle = () => {
    if (typed === null) return;
    const deg = readDegrees(typed);
    setIsBad(deg === null);
    if (deg === null) return;
    setTyped(null);
    onTurn(deg);
  };
  return (
    <div className="grain-field" data-bad={isBad || undefined}>
      <label className="field-row">
        <span className="measure-name">{words.turned}</span>
        <span className="input-with-unit">
          <input
            type="text"
            inputMode="text"
            autoComplete="off"
            aria-label={words.degrees(name)}
            aria-invalid={isBad || undefined}
            aria-describedby={message}
            value={typed ?? numbers.plain(turn, 1).replace('-', '−')}
            onFocus={(event) => event.target.select()}
            onChange={(event) => {
              setTyped(event.target.value);
              setIsBad(false);
            }}
            onBlur={settle}
            onKeyDown={(event) => {
              if (event.key === 'Enter') settle();
              if (event.key !== 'Escape') return;
              setTyped(null);
              setIsBad(false);
            }}
          />
          <span className="unit" aria-hidden="true">
            °
          </span>
        </span>
      </label>
      <p
        className={isBad ? 'field-message' : 'measure-how'}
        id={message}
        role={isBad ? 'alert' : undefined}
        aria-live={isBad ? undefined : 'off'}
      >
        {isBad ? words.bad(MOST_TURN) : turn < 0 ? words.lessThanZero(sayTurn(turn)) : sayTurn(turn)}
      </p>
    </div>
  );
}

/** Degrees as people type them; null when it is no number, or more than a quarter turn. */
export function readDegrees(text: string): number | null {
  const plain = text.trim().replace(/°$/, '').replace('−', '-').replace(',', '.').trim();
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  const deg = Number(plain);
  return Math.abs(deg) <= MOST_TURN ? deg || 0 : null;
}

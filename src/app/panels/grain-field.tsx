import { useId, useState } from 'react';
import { MOST_TURN, sayTurn } from './turn-of-grain.ts';

interface GrainFieldProps {
  /** Degrees, positive to the left. */
  readonly turn: number;
  readonly name: string;
  readonly onTurn: (turn: number) => void;
}

/** The turn as a number. Text that is none stays in the field and is told. */
export function GrainField({ turn, name, onTurn }: GrainFieldProps) {
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
        <span className="measure-name">Turned to the left</span>
        <span className="input-with-unit">
          <input
            type="text"
            inputMode="text"
            autoComplete="off"
            aria-label={`Degrees to the left, grain of ${name}`}
            aria-invalid={isBad || undefined}
            aria-describedby={message}
            value={typed ?? Number(turn.toFixed(1)).toString().replace('-', '−')}
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
        {isBad
          ? `Degrees from −${MOST_TURN} to ${MOST_TURN}, such as 12 or −7.5.`
          : turn < 0
            ? `${sayTurn(turn)} (less than 0)`
            : sayTurn(turn)}
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

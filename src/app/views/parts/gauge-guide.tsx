import { howToHoldGauges } from '../../../core/gauge/index.ts';
import { CoreText } from './core-text.tsx';
import { useSay } from './use-words.ts';

/** What is done with gauges, and what is seen. */
export function GaugeGuide() {
  const say = useSay();
  return (
    <ul className="gauge-guide">
      {howToHoldGauges().map((how) => (
        <li key={how.id}>
          <CoreText said={say(how)} />
        </li>
      ))}
    </ul>
  );
}

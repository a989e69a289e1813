import { SLACK, TAUT, WRINKLED } from '../../../core/statics/index.ts';
import {
  distanceColour,
  filledInView,
  looseness,
  loosenessColour,
  MOST_DISTANCE,
  MOST_TENSION,
  sharesOfStates,
  tensionColour,
} from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

const STEPS = 21;
const PER_CM = 10;

/** The key to the colours of the filled form. */
export function FilledLegend() {
  const filled = useApp(filledInView);
  const look = useApp((state) => state.filledView.look);
  if (!filled) return null;
  if (look === 'wrinkles') return <WrinkleKey shares={sharesOfStates(filled)} />;
  return look === 'distance' ? <DistanceKey /> : <TensionKey />;
}

function DistanceKey() {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const words = useWords().picture;
  const numbers = useNumbers();
  const most = numbers.small(MOST_DISTANCE, unit);
  return (
    <figure className="strain-legend">
      <Bar colourAt={(share) => distanceColour((2 * share - 1) * MOST_DISTANCE)} />
      <figcaption>
        <span>{words.insideBody(most)}</span>
        <span>0</span>
        <span>{words.outsideBody(most)}</span>
      </figcaption>
    </figure>
  );
}

function TensionKey() {
  const words = useWords().picture;
  const most = `${useNumbers().fixed(PER_CM * MOST_TENSION, 0)}\u00a0N/cm`;
  return (
    <figure className="strain-legend">
      <Bar colourAt={(share) => tensionColour(share * MOST_TENSION)} />
      <figcaption>
        <span>{words.noPull}</span>
        <span />
        <span>{words.pullFrom(most)}</span>
      </figcaption>
    </figure>
  );
}

interface BarProps {
  /** From one end, 0, to the other, 1. */
  readonly colourAt: (share: number) => readonly number[];
}

function Bar({ colourAt }: BarProps) {
  const shares = Array.from({ length: STEPS }, (_, i) => i / (STEPS - 1));
  return (
    <svg viewBox={`0 0 ${STEPS} 1`} preserveAspectRatio="none" aria-hidden="true">
      {shares.map((share, i) => (
        <rect key={share} x={i} width={1.05} height={1} fill={cssOf(colourAt(share))} />
      ))}
    </svg>
  );
}

/** With how much there is of each. */
function WrinkleKey({ shares }: { readonly shares: ReturnType<typeof sharesOfStates> }) {
  const words = useWords().picture;
  const { percent } = useNumbers();
  const entries = [
    { said: words.tautCloth(percent(shares.taut, 0)), state: TAUT },
    { said: words.wrinkledCloth(percent(shares.wrinkled, 0)), state: WRINKLED },
    { said: words.slackCloth(percent(shares.slack, 0)), state: SLACK },
  ];
  return (
    <figure className="strain-legend wrinkle-legend">
      <ul>
        {entries.map(({ said, state }) => (
          <li key={said}>
            <span
              className="swatch"
              style={{ background: cssOf(loosenessColour(looseness(state))) }}
              aria-hidden="true"
            />
            {said}
          </li>
        ))}
      </ul>
    </figure>
  );
}

function cssOf(rgb: readonly number[]): string {
  return `rgb(${rgb.map((channel) => Math.round(channel * 255)).join(' ')})`;
}

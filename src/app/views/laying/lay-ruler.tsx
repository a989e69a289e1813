import { mmPerInch } from '../../../core/base/index.ts';
import { useNumbers } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

interface LayRulerProps {
  readonly length: number;
  readonly bottom: number;
  /** Pixels per mm. */
  readonly scale: number;
}

/** Steps of a ruler, in the unit's own lengths: marks as near as can be told apart. */
const STEPS = { cm: [1, 5, 10, 50, 100], in: [1, 3, 6, 12, 36] } as const;
const LEAST_PIXELS = 7;
const LEAST_BETWEEN_LETTERS = 46;

/** Lengths along the cloth, from its cut end. */
export function LayRuler({ length, bottom, scale }: LayRulerProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const numbers = useNumbers();
  const one = unit === 'cm' ? 10 : mmPerInch;
  const stepOf = (pixels: number) => {
    const step = STEPS[unit].find((count) => count * one * scale >= pixels);
    return one * (step ?? 5 * STEPS[unit][STEPS[unit].length - 1]);
  };
  const fine = stepOf(LEAST_PIXELS);
  const lettered = stepOf(LEAST_BETWEEN_LETTERS);
  const count = (step: number) => Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => i * step);
  const top = bottom + 14 / scale;
  const size = 11 / scale;
  return (
    <g className="lay-ruler">
      <path
        d={`M0 ${top}H${length}${count(fine)
          .map((x) => `M${x} ${top}v${5 / scale}`)
          .join('')}`}
      />
      <path
        d={count(lettered)
          .map((x) => `M${x} ${top}v${9 / scale}`)
          .join('')}
      />
      {count(lettered).map((x) => (
        // What stands near the far end is written towards the middle, where the picture ends.
        <text
          key={x}
          x={x}
          y={top + 10 / scale + size}
          fontSize={size}
          textAnchor={x > 0 && (length - x) * scale < LEAST_BETWEEN_LETTERS / 2 ? 'end' : 'start'}
        >
          {x === 0 ? '0' : numbers.length(x, unit, { decimals: 0 })}
        </text>
      ))}
    </g>
  );
}

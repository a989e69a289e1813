import { LAYING_OPTIONS } from '../../../core/laying/index.ts';
import { Icon } from '../parts/icon.tsx';
import { LengthInput } from '../parts/length-input.tsx';
import { useWords } from '../parts/use-words.ts';

type Point = readonly [number, number];

interface PointFieldsProps {
  readonly fieldId: string;
  readonly points: readonly Point[];
  /** Fewer are no outline, or no line. */
  readonly least: 2 | 3;
  readonly onPoints: (points: readonly Point[]) => void;
}

const WAYS = ['along', 'across'] as const;

/** Corners of an outline, or ends of a line, each by its two lengths from the lower left. */
export function PointFields({ fieldId, points, least, onPoints }: PointFieldsProps) {
  const { cloth: words } = useWords().laying;
  const nameOf = (i: number) => (least === 2 ? words.end(i + 1) : words.corner(i + 1));
  const limits = {
    along: { min: 0, max: LAYING_OPTIONS.stockLength.max },
    across: { min: 0, max: LAYING_OPTIONS.stockWidth.max },
  };
  const set = (i: number, way: 0 | 1, mm: number) =>
    onPoints(
      points.map((point, k): Point => (k !== i ? point : way === 0 ? [mm, point[1]] : [point[0], mm])),
    );
  return (
    <ul className="point-fields">
      {points.map((point, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: corners go by their number
        <li key={i}>
          <span className="measure-name">{nameOf(i)}</span>
          {WAYS.map((way, k) => (
            <LengthInput
              key={way}
              fieldId={`${fieldId}.${i}.${way}`}
              label={`${nameOf(i)}, ${words[way]}`}
              value={point[k as 0 | 1]}
              limits={limits[way]}
              isOptional={false}
              onValue={(mm) => mm !== null && set(i, k as 0 | 1, mm)}
            />
          ))}
          {points.length > least && (
            <button
              type="button"
              className="icon-only"
              aria-label={words.removeOf(nameOf(i))}
              onClick={() => onPoints(points.filter((_, other) => other !== i))}
            >
              <Icon name="close" />
            </button>
          )}
        </li>
      ))}
      <li>
        <button
          type="button"
          className="plain"
          onClick={() => {
            const [a, b] = [points[points.length - 1], points[0]];
            onPoints([...points, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]]);
          }}
        >
          {words.addCorner}
        </button>
      </li>
    </ul>
  );
}

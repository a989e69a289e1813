import { useState } from 'react';
import { withUsual } from '../../../core/base/index.ts';
import {
  findHomography,
  PRINT_OPTIONS,
  PROJECTED_LENGTH,
  PROJECTED_SIDES,
  type ProjectedSquare,
} from '../../../core/sheet/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { LengthInput } from '../parts/length-input.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { useCutting } from './print-choices.tsx';

const LINES = ['top', 'right', 'bottom', 'left', 'diagonal'] as const;
type Lengths = Partial<Record<keyof ProjectedSquare, number>>;

/** The projector: its ground, and what its large square measures on the table. */
export function ProjectorChoices() {
  const cutting = useCutting();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { ground } = withUsual(PRINT_OPTIONS, cutting);
  const { projectedSquare } = cutting;
  const { projector: words, steps } = useWords();
  const numbers = useNumbers();
  const actions = useActions();
  // All five are wanted before anything is corrected; till then they wait here.
  const [half, setHalf] = useState<Lengths>({});
  const lengths: Lengths = projectedSquare ?? half;
  const measure = (line: keyof ProjectedSquare, mm: number | null) => {
    const { [line]: _before, ...others } = lengths;
    const next: Lengths = mm === null ? others : { ...others, [line]: mm };
    setHalf(next);
    const isWhole = LINES.every((one) => next[one] !== undefined);
    actions.setCutting(
      { projectedSquare: isWhole ? (next as ProjectedSquare) : undefined },
      steps.things.projectedSquare,
    );
  };
  return (
    <details className="printer">
      <summary>{words.title}</summary>
      <div className="field-row">
        <label className="measure-name" htmlFor="ground">
          {words.ground}
        </label>
        <select
          id="ground"
          value={ground}
          onChange={(event) =>
            actions.setCutting(
              { ground: event.target.value === 'dark' ? 'dark' : 'light' },
              steps.things.ground,
            )
          }
        >
          <option value="light">{words.light}</option>
          <option value="dark">{words.dark}</option>
        </select>
      </div>
      <p className="measure-how">{words.how(numbers.length(PROJECTED_SIDES[unit], unit))}</p>
      {LINES.map((line) => (
        <div className="field-row" key={line}>
          <span className="measure-name">{words.lines[line]}</span>
          <LengthInput
            fieldId={`cutting.projectedSquare.${line}`}
            label={words.lines[line]}
            value={lengths[line] ?? null}
            limits={PROJECTED_LENGTH}
            isOptional
            isExact
            onValue={(mm) => measure(line, mm)}
          />
        </div>
      ))}
      {projectedSquare && <Verdict square={projectedSquare} side={PROJECTED_SIDES[unit]} />}
    </details>
  );
}

function Verdict({ square, side }: { readonly square: ProjectedSquare; readonly side: number }) {
  const { projector: words } = useWords();
  const say = useSay();
  const found = findHomography(square, 0, 0, side);
  return found.ok ? (
    <p className="quiet" role="status">
      {words.corrected}
    </p>
  ) : (
    <ul role="alert" className="readings-differ">
      {found.issues.map((issue) => (
        <li key={issue.path}>
          <CoreText said={say(issue.message)} />
        </li>
      ))}
    </ul>
  );
}

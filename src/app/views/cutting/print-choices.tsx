import { useState } from 'react';
import { withUsual } from '../../../core/base/index.ts';
import type { Project } from '../../../core/project/index.ts';
import { correctionFromBars, MEASURED_BAR, PAPERS, PRINT_OPTIONS } from '../../../core/sheet/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { LengthInput } from '../parts/length-input.tsx';
import { LengthRow } from '../parts/length-row.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

const NOTHING: Project['cutting'] = {};

/** What the project says about paper and machines. */
export function useCutting(): Project['cutting'] {
  return useApp((state) => state.project?.cutting ?? NOTHING);
}

/** Paper, how its pages join, and the two bars that tell whether the printer keeps to the scale. */
export function PrintChoices() {
  const cutting = useCutting();
  const { paper, joint } = withUsual(PRINT_OPTIONS, cutting);
  const { print: words, steps } = useWords();
  const say = useSay();
  const actions = useActions();
  return (
    <>
      <div className="field-row">
        <label className="measure-name" htmlFor="paper">
          {words.paper}
        </label>
        <select
          id="paper"
          value={paper}
          onChange={(event) => actions.setCutting({ paper: event.target.value }, steps.things.paper)}
        >
          {PAPERS.map(({ id, name }) => (
            <option key={id} value={id}>
              {say(name)}
            </option>
          ))}
        </select>
      </div>
      <details className="printer">
        <summary>{words.marginsAndJoints}</summary>
        <LengthRow
          name={words.margin}
          fieldId="cutting.margin"
          value={cutting.margin}
          usual={PRINT_OPTIONS.margin.usual}
          limits={PRINT_OPTIONS.margin}
          onValue={(mm) => actions.setCutting({ margin: mm }, steps.things.margin)}
        />
        <div className="field-row">
          <label className="measure-name" htmlFor="joint">
            {words.meet}
          </label>
          <select
            id="joint"
            value={joint}
            onChange={(event) =>
              actions.setCutting(
                { joint: event.target.value === 'butt' ? 'butt' : 'overlap' },
                steps.things.joints,
              )
            }
          >
            <option value="overlap">{words.overlap}</option>
            <option value="butt">{words.butt}</option>
          </select>
        </div>
      </details>
      <PrinterBars />
    </>
  );
}

/** Both bars are wanted before anything is corrected; a single one waits here. */
function PrinterBars() {
  const { measuredBars } = useCutting();
  const { print: words, steps } = useWords();
  const actions = useActions();
  const [half, setHalf] = useState<{ across: number | null; up: number | null }>({ across: null, up: null });
  const across = measuredBars?.across ?? half.across;
  const up = measuredBars?.up ?? half.up;
  const measure = (way: 'across' | 'up', mm: number | null) => {
    const next = { across, up, [way]: mm };
    setHalf(next);
    const isWhole = next.across !== null && next.up !== null;
    const bars = isWhole ? { across: next.across as number, up: next.up as number } : undefined;
    actions.setCutting({ measuredBars: bars }, steps.things.correction);
  };
  return (
    <details className="printer" open={across !== null || up !== null}>
      <summary>{words.notTrue}</summary>
      <p className="measure-how">{words.how}</p>
      {(['across', 'up'] as const).map((way) => (
        <div className="field-row" key={way}>
          <span className="measure-name">{words.bar[way]}</span>
          <LengthInput
            fieldId={`cutting.measuredBars.${way}`}
            label={words.barMeasures[way]}
            value={way === 'across' ? across : up}
            limits={MEASURED_BAR}
            isOptional
            onValue={(mm) => measure(way, mm)}
          />
        </div>
      ))}
      <CorrectionVerdict />
    </details>
  );
}

function CorrectionVerdict() {
  const { measuredBars } = useCutting();
  const { print } = useWords();
  const say = useSay();
  const { signedPercent } = useNumbers();
  if (!measuredBars) return null;
  const correction = correctionFromBars({ x: measuredBars.across, y: measuredBars.up });
  return correction.ok ? (
    <p className="quiet" role="status">
      {print.stretched(signedPercent(correction.value.x - 1, 2), signedPercent(correction.value.y - 1, 2))}
    </p>
  ) : (
    <ul role="alert" className="readings-differ">
      {correction.issues.map((issue) => (
        <li key={issue.path}>
          <CoreText said={say(issue.message)} />
        </li>
      ))}
    </ul>
  );
}

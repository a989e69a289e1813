import { kgPerPound } from '../../../core/base/index.ts';
import {
  ASSUMED_DENSITY,
  INSIDE_OPTIONS,
  limitsOfTestTube,
  measuredGrowthOf,
  sewnGirthOfTestTube,
  TEST_TUBE_LINES,
} from '../../../core/inside/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { MassRow } from '../parts/mass-row.tsx';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Girths of the stuffed test tube, and the growth they show: the panels are cut smaller by it. */
export function TestTubeFields() {
  const inside = useApp((state) => state.project?.inside);
  const { inside: ofInside, core } = useWords();
  const words = ofInside.tube;
  const actions = useActions();
  const limits = limitsOfTestTube(inside?.clothThickness);
  return (
    <section className="inside-choices" aria-labelledby="tube-title">
      <h3 id="tube-title">{words.title}</h3>
      <p className="measure-how">{words.about}</p>
      {TEST_TUBE_LINES.map((line, k) => (
        <div className="field-row" key={line}>
          <span className="measure-name">{words.measure(k + 1)}</span>
          <LengthInput
            fieldId={`inside.testTube.${line}`}
            label={words.measure(k + 1)}
            value={inside?.testTube?.[line] ?? null}
            limits={limits}
            isOptional
            onValue={(mm) => actions.setTestTube(line, mm, core.inSentence(words.measure(k + 1)))}
          />
        </div>
      ))}
      <Growth />
      <TubeFilling />
    </section>
  );
}

/** What the tube's filling weighs, by which all filling is told. */
function TubeFilling() {
  const inside = useApp((state) => state.project?.inside);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const fill = useApp((state) => state.form?.inside?.fill);
  const { inside: ofInside, core } = useWords();
  const words = ofInside.tube;
  const numbers = useNumbers();
  const actions = useActions();
  const small = unit === 'in' ? { name: 'oz', kg: kgPerPound / 16 } : { name: 'g', kg: 0.001 };
  return (
    <>
      <MassRow
        name={words.filling}
        value={inside?.testTubeFill}
        limits={INSIDE_OPTIONS.testTubeFill}
        unit={small}
        onValue={(kg) => actions.setInside('testTubeFill', kg ?? null, core.inSentence(words.filling))}
      />
      {fill && (
        <p className="measure-how">
          {(fill.isAssumed ? words.fillAssumed : words.fillWeighed)(
            numbers.mass(fill.low, unit),
            numbers.mass(fill.high, unit),
            ASSUMED_DENSITY,
          )}
        </p>
      )}
    </>
  );
}

function Growth() {
  const inside = useApp((state) => state.project?.inside) ?? {};
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { inside: ofInside, steps } = useWords();
  const words = ofInside.tube;
  const numbers = useNumbers();
  const actions = useActions();
  const growth = measuredGrowthOf(inside);
  const isGiven = inside.measuredGrowth !== undefined;
  const share = growth === undefined ? '' : numbers.percent(growth, 2);
  return (
    <>
      <p className="measure-how">
        {words.sewn(numbers.length(sewnGirthOfTestTube(inside.clothThickness), unit))}
      </p>
      <p aria-live="polite">
        {growth === undefined ? words.nothing : isGiven ? words.given(share) : words.growth(share)}
      </p>
      {isGiven && (
        <button
          type="button"
          className="plain"
          onClick={() => actions.setInside('measuredGrowth', null, steps.things.growth)}
        >
          {words.forget}
        </button>
      )}
    </>
  );
}

import { useEffect } from 'react';
import type { FormFilled } from '../../../core/form/index.ts';
import { nameOfPlace } from '../../../core/inside/index.ts';
import { AS_FORETOLD, isFormBehind, trialIn, trialOf, triedIn } from '../../store/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';
import { TrialZone } from './trial-zone.tsx';

interface FilledTrialProps {
  /** As foretold. */
  readonly filled: FormFilled;
}

/** The filled form with one thing and another otherwise: chosen here, answered at once. */
export function FilledTrial({ filled }: FilledTrialProps) {
  const isTrying = useTrying(filled);
  const isBehind = useApp(isFormBehind);
  const isTried = useApp((state) => trialIn(state) !== AS_FORETOLD);
  const { inside } = useWords();
  const actions = useActions();
  const words = inside.trial;
  return (
    <section className="filled-trial" aria-labelledby="trial-title" aria-busy={isTrying}>
      <h4 id="trial-title">{words.title}</h4>
      <p className="measure-how">{words.about}</p>
      <fieldset disabled={isBehind} aria-labelledby="trial-title">
        <TrialZone />
        <ClothTried />
        <LeftOut />
      </fieldset>
      <p role="status">{isTried && <WhatChanges filled={filled} />}</p>
      {isTried && (
        <button type="button" className="section-off" onClick={() => actions.dropTrial()}>
          {words.back}
        </button>
      )}
      <Garment />
    </section>
  );
}

/** Asks for what is chosen, and once for the form as it is: how it bears a garment. True while it is awaited. */
function useTrying(filled: FormFilled): boolean {
  const trial = useApp(trialIn);
  const isBehind = useApp(isFormBehind);
  const answered = useApp((state) => trialOf(state)?.answered);
  const { worker } = useServices();
  const actions = useActions();
  useEffect(() => {
    if (isBehind) return;
    worker.tryFilling(trial).then((found) => {
      if (found) actions.receiveTrial(filled, trial, found);
    });
  }, [filled, trial, isBehind, worker, actions]);
  return answered !== trial;
}

const CLOTHS = [0.5, 1, 2] as const;

function ClothTried() {
  const stiffness = useApp((state) => trialIn(state).stiffness ?? 1);
  const actions = useActions();
  const words = useWords().inside.trial;
  const names = { 0.5: words.half, 1: words.asItIs, 2: words.twice };
  return (
    <fieldset className="segments">
      <legend>{words.cloth}</legend>
      {CLOTHS.map((factor) => (
        <label key={factor}>
          <input
            type="radio"
            name="trial-cloth"
            checked={stiffness === factor}
            onChange={() => actions.changeTrial({ stiffness: factor })}
          />
          <span>{names[factor]}</span>
        </label>
      ))}
    </fieldset>
  );
}

function LeftOut() {
  const without = useApp((state) => trialIn(state).without);
  const braces = useApp((state) => state.form?.inside?.shape.braces);
  const actions = useActions();
  const words = useWords().inside.trial;
  const say = useSay();
  return (
    <div className="field-row">
      <label className="measure-name" htmlFor="trial-without">
        {words.without}
      </label>
      <select
        id="trial-without"
        value={without ?? ''}
        onChange={({ target }) => actions.changeTrial({ without: target.value || undefined })}
      >
        <option value="">{words.nothing}</option>
        {braces?.map(({ id, name }) => (
          <option key={id} value={id}>
            {say(name)}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Changes smaller than this are not told, mm. */
const LEAST_CHANGE = 0.1;

/** Where it changes most, or why nothing came of it. */
function WhatChanges({ filled }: FilledTrialProps) {
  const failure = useApp((state) => trialOf(state)?.failure);
  const change = useApp(triedIn)?.change;
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { inside, core } = useWords();
  const words = inside.trial;
  const numbers = useNumbers();
  const say = useSay();
  if (failure)
    return (
      <>
        {words.fails} <CoreText said={failure.map(({ message }) => say(message)).join(' ')} />
      </>
    );
  if (!change) return words.working;
  if (Math.abs(change.distance) < LEAST_CHANGE) return words.same;
  const over = filled.shell.levels.find(({ id }) => id === change.over)?.name;
  const tell = change.distance > 0 ? words.comesOut : words.fallsIn;
  return tell(
    numbers.small(Math.abs(change.distance), unit),
    say(nameOfPlace(change.where)),
    over ? core.inSentence(say(over)) : inside.form.base,
  );
}

function Garment() {
  const garment = useApp((state) => trialOf(state)?.tried?.garment);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const words = useWords().inside.trial;
  const numbers = useNumbers();
  if (!garment) return null;
  const { mass, shoulders, top } = garment;
  const [most, neck] = [shoulders, top].map((mm) => numbers.small(mm, unit));
  return <p>{words.garment(numbers.mass(mass, unit), most, neck)}</p>;
}

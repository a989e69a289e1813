import { ARM_STATES } from '../../../core/body/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** How the arms were held when measured: it is written where sleeves are fitted by it. */
export function ArmChoice() {
  const arms = useApp((state) => state.project?.body.arms);
  const actions = useActions();
  const words = useWords().tape.armsHeld;
  return (
    <div className="waist-choice">
      <fieldset className="segments">
        <legend>{words.which}</legend>
        {ARM_STATES.map((id) => (
          <label key={id}>
            <input type="radio" name="arms-held" checked={arms === id} onChange={() => actions.setArms(id)} />
            <span>{words.states[id]}</span>
          </label>
        ))}
      </fieldset>
      <p className="quiet">{words.why}</p>
    </div>
  );
}

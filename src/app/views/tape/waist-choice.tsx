import { USUAL_WAIST, WAIST_KINDS } from '../../../core/body/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Which waist was measured: all lengths from the waist and all estimates follow. */
export function WaistChoice() {
  const waist = useApp((state) => state.project?.body.waist ?? USUAL_WAIST);
  const actions = useActions();
  const words = useWords().tape.waist;
  return (
    <div className="waist-choice">
      <fieldset className="segments">
        <legend>{words.which}</legend>
        {WAIST_KINDS.map((id) => (
          <label key={id}>
            <input type="radio" name="waist" checked={waist === id} onChange={() => actions.setWaist(id)} />
            <span>{words.kinds[id]}</span>
          </label>
        ))}
      </fieldset>
      <p className="quiet">{words.why}</p>
    </div>
  );
}

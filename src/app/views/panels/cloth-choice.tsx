import { CLOTHS } from '../../../core/flatten/index.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** The cloth of the shell, by whose limits strain, grain and seams are judged. */
export function ClothChoice() {
  const kind = useApp((state) => state.project?.cloth.kind ?? CLOTHS[0].id);
  const actions = useActions();
  const { panels: words, steps } = useWords();
  const say = useSay();
  return (
    <>
      <div className="field-row">
        <label className="measure-name" htmlFor="cloth-kind">
          {words.cloth}
        </label>
        <select
          id="cloth-kind"
          aria-describedby="cloth-how"
          value={kind}
          onChange={(event) => actions.setCloth({ kind: event.target.value }, steps.things.cloth)}
        >
          {CLOTHS.map((cloth) => (
            <option key={cloth.id} value={cloth.id}>
              {say(cloth.name)}
            </option>
          ))}
        </select>
      </div>
      <p className="measure-how" id="cloth-how">
        {words.clothHow}
      </p>
    </>
  );
}

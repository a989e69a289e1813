import table from '../../../../shared/layers.json' with { type: 'json' };
import { withUsual } from '../../../core/base/index.ts';
import { CUTTER_OPTIONS, MAT_SIDE, MATS } from '../../../core/sheet/index.ts';
import { LengthRow } from '../parts/length-row.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions } from '../parts/workroom-context.tsx';
import { useCutting } from './print-choices.tsx';

const OWN_MAT = { width: 600, height: 400 };
const LENGTHS = ['kerf', 'bladeOffset', 'overcut'] as const;
const LAYERS = ['cut', 'sew', 'mark', 'text'] as const;

/** The cutting machine: how large, how wide it cuts, what it follows and by which colours. */
export function MachineChoices() {
  const cutting = useCutting();
  const { strokeText, divides } = withUsual(CUTTER_OPTIONS, cutting);
  const actions = useActions();
  const { machine: words, steps } = useWords();
  return (
    <details className="printer">
      <summary>{words.title}</summary>
      <MatChoice />
      {LENGTHS.map((id) => (
        <LengthRow
          key={id}
          name={words[id]}
          fieldId={`cutting.${id}`}
          value={cutting[id]}
          usual={CUTTER_OPTIONS[id].usual}
          limits={CUTTER_OPTIONS[id]}
          onValue={(mm) => actions.setCutting({ [id]: mm }, steps.things[id])}
        />
      ))}
      <p className="measure-how">{words.about}</p>
      <label className="check-row">
        <input
          type="checkbox"
          checked={strokeText}
          onChange={(event) =>
            actions.setCutting({ strokeText: event.target.checked || undefined }, steps.things.letters)
          }
        />
        {words.strokes}
      </label>
      <label className="check-row">
        <input
          type="checkbox"
          checked={divides}
          onChange={(event) =>
            actions.setCutting({ divides: event.target.checked || undefined }, steps.things.parts)
          }
        />
        {words.divides}
      </label>
      <LayerColours />
    </details>
  );
}

/** The mat of the machine: none, one that is known, or another by its sides. */
function MatChoice() {
  const { mat } = useCutting();
  const actions = useActions();
  const { machine: words, steps } = useWords();
  const say = useSay();
  const known = MATS.find(({ width, height }) => width === mat?.width && height === mat?.height);
  const choose = (id: string) => {
    const { width, height } = MATS.find((entry) => entry.id === id) ?? { ...OWN_MAT };
    actions.setCutting(
      { mat: id === 'none' ? undefined : { width, height: height ?? width } },
      steps.things.mat,
    );
  };
  return (
    <>
      <div className="field-row">
        <label className="measure-name" htmlFor="mat">
          {words.mat}
        </label>
        <select
          id="mat"
          value={mat ? (known?.id ?? 'own') : 'none'}
          onChange={(event) => choose(event.target.value)}
        >
          <option value="none">{words.asLarge}</option>
          {MATS.map(({ id, name }) => (
            <option key={id} value={id}>
              {say(name)}
            </option>
          ))}
          <option value="own">{words.another}</option>
        </select>
      </div>
      {mat &&
        !known &&
        (['width', 'height'] as const).map((side) => (
          <LengthRow
            key={side}
            name={words.size[side]}
            fieldId={`cutting.mat.${side}`}
            value={mat[side]}
            usual={OWN_MAT[side]}
            limits={MAT_SIDE}
            onValue={(mm) =>
              actions.setCutting({ mat: { ...mat, [side]: mm ?? OWN_MAT[side] } }, steps.things.matSize[side])
            }
          />
        ))}
    </>
  );
}

function LayerColours() {
  const { colours = {} } = useCutting();
  const actions = useActions();
  const { machine: words, steps } = useWords();
  const set = (id: string, colour: string) =>
    actions.setCutting({ colours: { ...colours, [id]: colour } }, steps.things.colours);
  return (
    <fieldset className="layer-colours">
      <legend>{words.colours}</legend>
      {LAYERS.map((id) => {
        const usual = table.cutter[id].colour;
        const colour = colours[id] ?? usual;
        const isLeftOut = colour === 'none';
        return (
          <div className="field-row" key={id}>
            <label className="check-row">
              <input
                type="checkbox"
                checked={!isLeftOut}
                onChange={(event) => set(id, event.target.checked ? usual : 'none')}
              />
              {words.layers[id]}
            </label>
            <input
              type="color"
              aria-label={words.colourOf(words.layers[id])}
              disabled={isLeftOut}
              value={isLeftOut ? usual : colour}
              onChange={(event) => set(id, event.target.value)}
            />
          </div>
        );
      })}
    </fieldset>
  );
}

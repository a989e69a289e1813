import { MATS } from '../../core/sheet/index.ts';
import { LengthRow } from './length-row.tsx';
import { useCutting } from './print-choices.tsx';
import { useActions } from './workroom-context.tsx';

const MAT_LIMITS = { min: 150, max: 5000 };
const OWN_MAT = { width: 600, height: 400 };
const LAYERS = [
  { id: 'cut', name: 'Cut lines', usual: '#ff0000' },
  { id: 'sew', name: 'Sew lines', usual: '#0000ff' },
  { id: 'mark', name: 'Marks', usual: '#00a000' },
  { id: 'text', name: 'Letters', usual: '#000000' },
] as const;

/** The cutting machine: how large, how wide it cuts, what it follows and by which colours. */
export function MachineChoices() {
  const { mat, kerf, bladeOffset, overcut, strokeText = false } = useCutting();
  const actions = useActions();
  const known = MATS.find(({ width, height }) => width === mat?.width && height === mat?.height);
  const choose = (id: string) => {
    const { width, height } = MATS.find((entry) => entry.id === id) ?? { ...OWN_MAT };
    actions.setCutting({ mat: id === 'none' ? undefined : { width, height: height ?? width } }, 'mat');
  };
  return (
    <details className="printer">
      <summary>My cutting machine</summary>
      <div className="field-row">
        <label className="measure-name" htmlFor="mat">
          Mat or bed
        </label>
        <select
          id="mat"
          value={mat ? (known?.id ?? 'own') : 'none'}
          onChange={(event) => choose(event.target.value)}
        >
          <option value="none">as large as needed</option>
          {MATS.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
          <option value="own">another size</option>
        </select>
      </div>
      {mat &&
        !known &&
        (['width', 'height'] as const).map((side) => (
          <LengthRow
            key={side}
            name={`Mat ${side}`}
            fieldId={`cutting.mat.${side}`}
            value={mat[side]}
            usual={OWN_MAT[side]}
            limits={MAT_LIMITS}
            onValue={(mm) =>
              actions.setCutting({ mat: { ...mat, [side]: mm ?? OWN_MAT[side] } }, `mat ${side}`)
            }
          />
        ))}
      <LengthRow
        name="Width of the cut"
        fieldId="cutting.kerf"
        value={kerf}
        usual={0}
        limits={{ min: 0, max: 3 }}
        onValue={(mm) => actions.setCutting({ kerf: mm }, 'width of the cut')}
      />
      <LengthRow
        name="Blade offset"
        fieldId="cutting.bladeOffset"
        value={bladeOffset}
        usual={0}
        limits={{ min: 0, max: 2 }}
        onValue={(mm) => actions.setCutting({ bladeOffset: mm }, 'blade offset')}
      />
      <LengthRow
        name="Overcut"
        fieldId="cutting.overcut"
        value={overcut}
        usual={0}
        limits={{ min: 0, max: 5 }}
        onValue={(mm) => actions.setCutting({ overcut: mm }, 'overcut')}
      />
      <p className="measure-how">
        A laser burns a width of cut away; a dragged knife trails its axis by the blade offset. Give one of
        them, unless the machine's own program sees to it.
      </p>
      <label className="check-row">
        <input
          type="checkbox"
          checked={strokeText}
          onChange={(event) =>
            actions.setCutting({ strokeText: event.target.checked || undefined }, 'letters')
          }
        />
        Letters of single strokes, for a pen
      </label>
      <LayerColours />
    </details>
  );
}

function LayerColours() {
  const { colours = {} } = useCutting();
  const actions = useActions();
  const set = (id: string, colour: string) =>
    actions.setCutting({ colours: { ...colours, [id]: colour } }, 'colours of the layers');
  return (
    <fieldset className="layer-colours">
      <legend>Colours by which the machine tells lines apart</legend>
      {LAYERS.map(({ id, name, usual }) => {
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
              {name}
            </label>
            <input
              type="color"
              aria-label={`Colour of ${name.toLowerCase()}`}
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

import { formatLength } from '../../core/base/index.ts';
import type { FormInside } from '../../core/pipeline/index.ts';
import { CAUTIONS } from '../../core/supports/index.ts';
import { isFormBehind } from '../store/index.ts';
import { CautionList } from './caution-list.tsx';
import { LengthInput } from './length-input.tsx';
import { signedLength } from './say-numbers.ts';
import { ScrollableTable } from './scrollable-table.tsx';
import { useActions, useApp } from './workroom-context.tsx';

const CARES = ['blades', 'iron', 'glue', 'dust', 'magnets', 'tipping', 'lifting', 'fire', 'rigging'];

/** What holds the filled form in shape and carries it: webs, pole, plates, stand, and what to buy. */
export function InsideStage() {
  const inside = useApp((state) => state.form?.inside);
  const isBehind = useApp(isFormBehind);
  return (
    <div className="stage inside-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <h2>Inside</h2>
        <p>Cloth filled hard wants to be round. Webs and ties inside pull it back to the body.</p>
      </header>
      <InsideChoices />
      {inside ? (
        <>
          <LevelsFilled inside={inside} />
          <Braces inside={inside} />
          <Stand inside={inside} />
          <Materials inside={inside} />
        </>
      ) : (
        <p className="quiet">Working out webs, pole and plates…</p>
      )}
      <CautionList cautions={CAUTIONS.filter(({ id }) => CARES.includes(id))} />
    </div>
  );
}

const CHOICES = [
  { id: 'tubeDiameter', label: 'Pole, outside', usual: 25, limits: { min: 5, max: 200 } },
  { id: 'boardThickness', label: 'Plate thickness', usual: 8, limits: { min: 1, max: 30 } },
  { id: 'coverThickness', label: 'Layers over the shell', usual: 0, limits: { min: 0, max: 40 } },
] as const;

function InsideChoices() {
  const inside = useApp((state) => state.project?.inside);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  return (
    <section className="inside-choices" aria-label="Pole and plates">
      {CHOICES.map(({ id, label, usual, limits }) => (
        <div className="field-row" key={id}>
          <span className="measure-name">{label}</span>
          <LengthInput
            fieldId={`inside.${id}`}
            label={label}
            value={inside?.[id] ?? null}
            limits={limits}
            isOptional
            placeholder={formatLength(usual, unit, { bare: true })}
            onValue={(mm) => actions.setInside(id, mm, label.toLowerCase())}
          />
        </div>
      ))}
    </section>
  );
}

interface InsideProps {
  readonly inside: FormInside;
}

function LevelsFilled({ inside }: InsideProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  return (
    <section aria-labelledby="filled-title">
      <h3 id="filled-title">Once filled</h3>
      <ScrollableTable label="Once filled">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Level</th>
              <th scope="col" className="number">
                Girth
              </th>
              <th scope="col" className="number">
                Off the body
              </th>
              <th scope="col" className="number">
                Without webs
              </th>
            </tr>
          </thead>
          <tbody>
            {inside.levels.map(({ id, name, finished, held, free }) => (
              <tr key={id}>
                <th scope="row">{name}</th>
                <td className="number">{formatLength(finished.girth, unit)}</td>
                <td className="number">{signedLength(held.deviation, unit)}</td>
                <td className="number">{signedLength(free.deviation, unit)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollableTable>
      <p className="measure-how">
        Foretold, with the cloth’s growth under filling; measure your own form to know.
      </p>
    </section>
  );
}

function Braces({ inside }: InsideProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { braces } = inside.shape;
  return (
    <section aria-labelledby="braces-title">
      <h3 id="braces-title">Webs, ties and straps</h3>
      <ul className="seam-list">
        {braces.map(({ id, name, kind, rungs }) => {
          const lengths = rungs.map(({ length }) => length);
          const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
          return (
            <li key={id}>
              <span className={`brace-mark ${kind}`} aria-hidden="true" />
              <span>{name}</span>
              <span className="number quiet">
                {formatLength(least, unit, { bare: true })} to {formatLength(most, unit)}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function Stand({ inside }: InsideProps) {
  const { stand, fill } = inside;
  return (
    <section aria-labelledby="stand-title">
      <h3 id="stand-title">Stand</h3>
      <dl className="numbers">
        <div>
          <dt>Tips at</dt>
          <dd>{stand.tipAngleDeg.toFixed(1)}°</dd>
        </div>
        <div>
          <dt>Whole mass</dt>
          <dd>{stand.totalMass.toFixed(1)} kg</dd>
        </div>
        <div>
          <dt>Ballast</dt>
          <dd>{stand.ballast > 0 ? `${stand.ballast.toFixed(1)} kg` : 'none'}</dd>
        </div>
        <div>
          <dt>Filling</dt>
          <dd>
            {fill.low.toFixed(1)} to {fill.high.toFixed(1)} kg
          </dd>
        </div>
      </dl>
    </section>
  );
}

function Materials({ inside }: InsideProps) {
  return (
    <section aria-labelledby="materials-title">
      <h3 id="materials-title">To buy</h3>
      <ScrollableTable label="To buy">
        <table className="table">
          <tbody>
            {inside.materials.map(({ id, name, quantity, unit, note }) => (
              <tr key={id}>
                <th scope="row">
                  {name}
                  {note && <span className="measure-how">{note}</span>}
                </th>
                <td className="number">
                  {Number(quantity.toFixed(2))} {unit}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollableTable>
    </section>
  );
}

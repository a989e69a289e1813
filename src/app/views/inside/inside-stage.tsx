import { type DisplayUnit, kgPerPound, withUsual } from '../../../core/base/index.ts';
import type { FormInside } from '../../../core/form/index.ts';
import { CAUTIONS, INSIDE_OPTIONS, type MaterialLine } from '../../../core/inside/index.ts';
import type { Numbers } from '../../../language/index.ts';
import { isFormBehind } from '../../store/index.ts';
import { StageTitle } from '../guide/stage-title.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { CoreText } from '../parts/core-text.tsx';
import { FillingAwaited } from '../parts/filling-awaited.tsx';
import { LengthInput } from '../parts/length-input.tsx';
import { MassRow } from '../parts/mass-row.tsx';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { StageDoubts } from '../parts/stage-doubts.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { FilledForces } from './filled-forces.tsx';
import { FilledForm } from './filled-form.tsx';
import { FurtherParts } from './further-parts.tsx';
import { TestTubeFields } from './test-tube-fields.tsx';

const CARES = ['blades', 'iron', 'glue', 'dust', 'magnets', 'tipping', 'lifting', 'fire', 'rigging'];

/** What holds the filled form in shape and carries it: webs, pole, plates, stand, and what to buy. */
export function InsideStage() {
  const form = useApp((state) => state.form);
  const inside = form?.inside;
  const isBehind = useApp(isFormBehind);
  const words = useWords();
  return (
    <div className="stage inside-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <StageTitle stage="inside" />
        <p>{words.inside.about}</p>
      </header>
      <FillingAwaited />
      {form?.filled ? <FilledForm filled={form.filled} /> : inside && <LevelsFilled inside={inside} />}
      <TestTubeFields />
      <InsideChoices />
      <StageDoubts stage="inside" />
      {inside ? (
        <>
          {form?.filled && <FilledForces form={form} filled={form.filled} />}
          <FurtherParts parts={inside.parts} />
          <Braces inside={inside} />
          <Stand inside={inside} />
          <Materials inside={inside} />
        </>
      ) : (
        <p className="quiet">{words.inside.working}</p>
      )}
      <CautionList cautions={CAUTIONS.filter(({ id }) => CARES.includes(id))} />
    </div>
  );
}

const CHOICES = ['tubeDiameter', 'boardThickness', 'coverThickness'] as const;
const SWITCHES = ['recut'] as const;

function InsideChoices() {
  const inside = useApp((state) => state.project?.inside);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const { inside: words, core } = useWords();
  const numbers = useNumbers();
  return (
    <section className="inside-choices" aria-label={words.choices}>
      {CHOICES.map((id) => (
        <div className="field-row" key={id}>
          <span className="measure-name">{words[id]}</span>
          <LengthInput
            fieldId={`inside.${id}`}
            label={words[id]}
            value={inside?.[id] ?? null}
            limits={INSIDE_OPTIONS[id]}
            isOptional
            placeholder={numbers.length(INSIDE_OPTIONS[id].usual, unit, { bare: true })}
            onValue={(mm) => actions.setInside(id, mm, core.inSentence(words[id]))}
          />
        </div>
      ))}
      {SWITCHES.map((id) => (
        <label className="part-switch" key={id}>
          <input
            type="checkbox"
            checked={withUsual(INSIDE_OPTIONS, inside ?? {})[id]}
            onChange={(event) =>
              actions.setInsidePart(id, event.target.checked, core.inSentence(words[id].name))
            }
          />
          {words[id].name}
          <span className="quiet">{words[id].what}</span>
        </label>
      ))}
    </section>
  );
}

interface InsideProps {
  readonly inside: FormInside;
}

function LevelsFilled({ inside }: InsideProps) {
  const { inside: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  return (
    <section aria-labelledby="filled-title">
      <h3 id="filled-title">{words.filled}</h3>
      <ScrollableTable label={words.filled}>
        <table className="table stacked">
          <thead>
            <tr>
              <th scope="col">{words.level}</th>
              <th scope="col" className="number">
                {words.girth}
              </th>
              <th scope="col" className="number">
                {words.offBody}
              </th>
              <th scope="col" className="number">
                {words.withoutWebs}
              </th>
            </tr>
          </thead>
          <tbody>
            {inside.levels.map(({ id, name, finished, held, free }) => (
              <tr key={id}>
                <th scope="row">{say(name)}</th>
                <td className="number" data-name={words.girth}>
                  {numbers.length(finished.girth, unit)}
                </td>
                <td className="number" data-name={words.offBody}>
                  {numbers.signedLength(held.deviation, unit)}
                </td>
                <td className="number" data-name={words.withoutWebs}>
                  {numbers.signedLength(free.deviation, unit)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollableTable>
      <p className="measure-how">{words.foretold}</p>
    </section>
  );
}

function Braces({ inside }: InsideProps) {
  const { inside: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { braces, strapGains } = inside.shape;
  return (
    <section aria-labelledby="braces-title">
      <h3 id="braces-title">{words.braces}</h3>
      <ul className="seam-list">
        {braces.map(({ id, name, kind, rungs }) => {
          const lengths = rungs.map(({ length }) => length);
          const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
          return (
            <li key={id}>
              <span className={`brace-mark ${kind}`} aria-hidden="true" />
              <span>{say(name)}</span>
              <span className="number quiet">
                {words.range(numbers.length(least, unit, { bare: true }), numbers.length(most, unit))}
              </span>
            </li>
          );
        })}
      </ul>
      {strapGains.map(({ levelId, text }) => (
        <p className="measure-how" key={levelId}>
          <CoreText said={say(text)} />
        </p>
      ))}
    </section>
  );
}

const STAND_LENGTHS = ['garmentOffset', 'garmentHeight', 'waistHeight', 'stemDiameter'] as const;

/** What hangs on the form, how high it stands and on what. */
function StandChoices({ stand }: { readonly stand: FormInside['stand'] }) {
  const inside = useApp((state) => state.project?.inside);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const { inside: words, core } = useWords();
  const numbers = useNumbers();
  const usual = {
    garmentOffset: INSIDE_OPTIONS.garmentOffset.usual,
    garmentHeight: stand.load.height,
    waistHeight: stand.waistHeight,
    stemDiameter: null,
  };
  return (
    <>
      <MassRow
        name={words.stands.garmentMass}
        value={inside?.garmentMass}
        usual={INSIDE_OPTIONS.garmentMass.usual}
        limits={INSIDE_OPTIONS.garmentMass}
        unit={unit === 'in' ? { name: 'lb', kg: kgPerPound } : { name: 'kg', kg: 1 }}
        onValue={(kg) =>
          actions.setInside('garmentMass', kg ?? null, core.inSentence(words.stands.garmentMass))
        }
      />
      {STAND_LENGTHS.map((id) => {
        const placeholder = usual[id];
        return (
          <div className="field-row" key={id}>
            <span className="measure-name">{words.stands[id]}</span>
            <LengthInput
              fieldId={`inside.${id}`}
              label={words.stands[id]}
              value={inside?.[id] ?? null}
              limits={INSIDE_OPTIONS[id]}
              isOptional
              {...(placeholder !== null && {
                placeholder: numbers.length(placeholder, unit, { bare: true }),
              })}
              onValue={(mm) => actions.setInside(id, mm, core.inSentence(words.stands[id]))}
            />
          </div>
        );
      })}
      {stand.isHeightAssumed && <p className="measure-how">{words.stands.heightAssumed}</p>}
    </>
  );
}

function Stand({ inside }: InsideProps) {
  const { stand, fill } = inside;
  const words = useWords().inside;
  const { fixed, mass, length } = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  return (
    <section aria-labelledby="stand-title">
      <h3 id="stand-title">{words.stand}</h3>
      <StandChoices stand={stand} />
      <dl className="numbers">
        <div>
          <dt>{words.tipsAt}</dt>
          <dd>
            {fixed(stand.tipAngleDeg, 1)}°
            <span className="measure-how">
              {words.stands.under(
                mass(stand.load.mass, unit),
                length(stand.load.offset, unit),
                length(stand.load.height, unit),
              )}
            </span>
          </dd>
        </div>
        <div>
          <dt>{words.stands.push}</dt>
          <dd>{fixed(stand.pushForce, 0)} N</dd>
        </div>
        <div>
          <dt>{words.wholeMass}</dt>
          <dd>{mass(stand.totalMass, unit)}</dd>
        </div>
        <div>
          <dt>{words.ballast}</dt>
          <dd>{stand.ballast > 0 ? mass(stand.ballast, unit) : words.none}</dd>
        </div>
        <div>
          <dt>{words.filling}</dt>
          <dd>{words.range(mass(fill.low, unit), mass(fill.high, unit))}</dd>
        </div>
      </dl>
    </section>
  );
}

function Materials({ inside }: InsideProps) {
  const { inside: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const shown = useApp((state) => state.project?.displayUnits ?? 'cm');
  return (
    <section aria-labelledby="materials-title">
      <h3 id="materials-title">{words.toBuy}</h3>
      <ScrollableTable label={words.toBuy}>
        <table className="table">
          <tbody>
            {inside.materials.map((material) => {
              const note = say(material.note);
              return (
                <tr key={material.id}>
                  <th scope="row">
                    {say(material.name)}
                    {note && <span className="measure-how">{numbers.mark(note)}</span>}
                  </th>
                  <td className="number">
                    {sayQuantity({ ...material, word: words.count }, shown, numbers)}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollableTable>
    </section>
  );
}

/** An amount to buy in the units shown; `word`: what is counted, where it is neither length, area nor mass. */
function sayQuantity(
  { quantity, unit, word }: Pick<MaterialLine, 'quantity' | 'unit'> & { readonly word: string },
  shown: DisplayUnit,
  numbers: Numbers,
): string {
  switch (unit) {
    case 'mm':
      return numbers.length(quantity, shown);
    case 'm':
      return numbers.longLength(quantity, shown);
    case 'm²':
      return numbers.clothArea(quantity, shown);
    case 'kg':
      return numbers.mass(quantity, shown);
    default:
      return `${numbers.plain(quantity, 2)} ${word}`;
  }
}

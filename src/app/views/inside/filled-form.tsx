import type { FormFilled } from '../../../core/form/index.ts';
import { nameOfPlace } from '../../../core/inside/index.ts';
import { FILLED_LOOKS, filledOrTried, MOST_DISTANCE } from '../../store/index.ts';
import { LitRow } from '../parts/lit-row.tsx';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { FilledSection } from './filled-section.tsx';
import { FilledTrial } from './filled-trial.tsx';

interface FilledFormProps {
  readonly filled: FormFilled;
}

/** How the form comes out once filled: to be looked at, cut and read level by level. */
export function FilledForm({ filled }: FilledFormProps) {
  const { inside: words } = useWords();
  const shown = useApp(filledOrTried) ?? filled;
  return (
    <section className="filled-form" aria-labelledby="filled-title">
      <h3 id="filled-title">{words.filled}</h3>
      <Findings filled={filled} />
      <FilledLooks />
      <FilledTrial filled={filled} />
      <FilledLevels filled={shown} foretold={shown === filled ? null : filled} />
      <FilledSection filled={shown} />
      <Load filled={filled} />
    </section>
  );
}

/** The whole surface in two sentences. */
function Findings({ filled: { measures, shell } }: FilledFormProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { inside, core } = useWords();
  const words = inside.form;
  const numbers = useNumbers();
  const say = useSay();
  const { rms, within, worst } = measures.distance;
  const over = shell.levels.find(({ id }) => id === worst.over)?.name;
  const tell = worst.distance > 0 ? words.farthestOutside : words.farthestInside;
  return (
    <p className="filled-findings">
      {words.whole(numbers.small(rms, unit), numbers.percent(within, 1), numbers.small(MOST_DISTANCE, unit))}{' '}
      {tell(
        numbers.small(Math.abs(worst.distance), unit),
        say(nameOfPlace(worst.where)),
        over ? core.inSentence(say(over)) : words.base,
      )}
    </p>
  );
}

/** What of it is looked at in the picture. */
function FilledLooks() {
  const view = useApp((state) => state.filledView);
  const actions = useActions();
  const words = useWords().inside.form;
  const numbers = useNumbers();
  const isCoat = view.look !== 'webs';
  const fullness =
    view.share === 0
      ? words.empty
      : view.share === 1
        ? words.full
        : words.partly(numbers.percent(view.share, 0));
  return (
    <div className="filled-looks">
      <fieldset className="segments">
        <legend>{words.looks}</legend>
        {FILLED_LOOKS.map((look) => (
          <label key={look}>
            <input
              type="radio"
              name="filled-look"
              checked={view.look === look}
              onChange={() => actions.lookAtFilled({ look })}
            />
            <span>{words.look[look]}</span>
          </label>
        ))}
      </fieldset>
      {isCoat && (
        <>
          <label className="section-slider">
            <span>{words.filling}</span>
            <input
              type="range"
              min={0}
              max={100}
              step={1}
              value={Math.round(100 * view.share)}
              aria-valuetext={fullness}
              onChange={(event) => actions.lookAtFilled({ share: Number(event.target.value) / 100 })}
            />
            <output>{fullness}</output>
          </label>
          <div className="filled-switches">
            <label className="check-row">
              <input
                type="checkbox"
                checked={view.isEnlarged}
                onChange={(event) => actions.lookAtFilled({ isEnlarged: event.target.checked })}
              />
              {words.enlarged}
            </label>
            <label className="check-row">
              <input
                type="checkbox"
                checked={view.hasBody}
                onChange={(event) => actions.lookAtFilled({ hasBody: event.target.checked })}
              />
              {words.bodyOver}
            </label>
          </div>
        </>
      )}
    </div>
  );
}

const SIZES = ['girth', 'width', 'depth'] as const;

/** What every level measures over the cloth, and what was asked. */
function FilledLevels({ filled, foretold }: FilledFormProps & { readonly foretold: FormFilled | null }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const lit = useApp((state) => (state.highlight?.kind === 'level' ? state.highlight.id : null));
  const { inside: words, section } = useWords();
  const numbers = useNumbers();
  const say = useSay();
  const bare = (mm: number) => numbers.length(mm, unit, { bare: true });
  const titles = { girth: words.girth, width: section.width, depth: section.depth };
  return (
    <>
      <ScrollableTable label={words.filled}>
        <table className="table stacked">
          <thead>
            <tr>
              <th scope="col">{words.level}</th>
              {SIZES.map((size) => (
                <th key={size} scope="col" className="number">
                  {titles[size]} {unit}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {filled.measures.levels.map(({ id, name, asked, found }, k) => (
              <LitRow key={id} points={{ kind: 'level', id }} isLit={lit === id}>
                <th scope="row">{say(name)}</th>
                {SIZES.map((size) => {
                  const usual = foretold?.measures.levels[k].found[size];
                  return (
                    <td key={size} className="number" data-name={`${titles[size]} ${unit}`}>
                      {bare(found[size])}{' '}
                      <span className="difference">
                        {usual === undefined
                          ? words.form.asked(bare(asked[size]))
                          : words.trial.foretold(
                              bare(usual),
                              numbers.signedLength(found[size] - usual, unit),
                            )}
                      </span>
                    </td>
                  );
                })}
              </LitRow>
            ))}
          </tbody>
        </table>
      </ScrollableTable>
      <p className="measure-how">{words.form.aboutLevels}</p>
    </>
  );
}

const KILOPASCALS = 1000;

function Load({ filled: { load } }: FilledFormProps) {
  const words = useWords().inside.form;
  const { fixed } = useNumbers();
  return (
    <p className="measure-how">
      {words.load(fixed(KILOPASCALS * load.pressure, 1), fixed(load.shell.weft, 0))}
    </p>
  );
}

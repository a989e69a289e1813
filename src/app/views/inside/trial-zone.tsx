import { MOST_SHARE } from '../../../core/filled/index.ts';
import { trialIn } from '../../store/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** What a zone just chosen is filled to, of the usual: less, as a maker soon does. */
const FIRST_SHARE = 0.7;
const STEP = 5;

/** Which zone is filled otherwise, and how hard. */
export function TrialZone() {
  const chosen = useApp((state) => trialIn(state).zone);
  const zones = useApp((state) => state.form?.making?.stuffing.zones) ?? [];
  const actions = useActions();
  const words = useWords().inside.trial;
  const { percent } = useNumbers();
  const say = useSay();
  const isChosen = ({ upper, lower }: { upper?: string; lower?: string }) =>
    chosen !== undefined && chosen.upper === upper && chosen.lower === lower;
  const choose = (wanted: string) => {
    const zone = zones.find(({ id }) => id === wanted);
    if (!zone) return actions.changeTrial({ zone: undefined });
    const { upper, lower } = zone;
    const share = chosen?.share ?? FIRST_SHARE;
    actions.changeTrial({ zone: { ...(upper && { upper }), ...(lower && { lower }), share } });
  };
  const amount = chosen && words.ofUsual(percent(chosen.share, 0));
  return (
    <>
      <div className="field-row">
        <label className="measure-name" htmlFor="trial-zone">
          {words.zone}
        </label>
        <select
          id="trial-zone"
          value={zones.find(isChosen)?.id ?? ''}
          onChange={({ target }) => choose(target.value)}
        >
          <option value="">{words.nowhere}</option>
          {zones.map(({ id, name }) => (
            <option key={id} value={id}>
              {say(name)}
            </option>
          ))}
        </select>
      </div>
      {chosen && (
        <label className="section-slider">
          <span>{words.share}</span>
          <input
            type="range"
            min={0}
            max={100 * MOST_SHARE}
            step={STEP}
            value={Math.round(100 * chosen.share)}
            aria-valuetext={amount}
            onChange={({ target }) =>
              actions.changeTrial({ zone: { ...chosen, share: Number(target.value) / 100 } })
            }
          />
          <output>{amount}</output>
        </label>
      )}
    </>
  );
}

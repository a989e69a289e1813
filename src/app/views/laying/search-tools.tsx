import type { UseId } from '../../../core/laying/index.ts';
import { keptPlaces, type LaySeen } from '../../store/index.ts';
import { useNumbers, useSayInUnits, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

/** Looking for a better plan, stopping, and keeping the one in view. */
export function SearchTools({ use, seen }: { readonly use: UseId; readonly seen: LaySeen }) {
  const { search: words, steps } = useWords().laying;
  const search = useApp(({ layWork }) => (layWork.search?.use === use ? layWork.search : null));
  const services = useServices();
  const actions = useActions();
  const { plan, isKept, of } = seen;
  const kept = of.stock.placed ?? [];
  const isAnyHeld = kept.some(({ isHeld }) => isHeld);
  return (
    <div className="lay-search">
      {search ? (
        <>
          <label className="lay-progress">
            <span>{words.looking}</span>
            <progress value={search.share} max={1} />
          </label>
          <button type="button" className="plain" onClick={services.stopLaying}>
            {words.stop}
          </button>
        </>
      ) : (
        plan && (
          <>
            <button type="button" className="plain" onClick={() => services.layFurther(use)}>
              {words.further}
            </button>
            <button type="button" className="plain" onClick={() => services.layRest(use)}>
              {isAnyHeld ? words.rest : words.all}
            </button>
          </>
        )
      )}
      {!search && plan && !isKept && (
        <button
          type="button"
          className="main"
          onClick={() => actions.placePieces(use, keptPlaces(plan.placed), steps.keep)}
        >
          {words.keep}
        </button>
      )}
      {!search && plan && !isKept && seen.keptLength !== null && (
        <button type="button" className="plain" onClick={() => actions.forgetLay(use)}>
          {words.back}
        </button>
      )}
      <p className="quiet" role="status">
        {plan && !search ? (isKept ? words.kept : words.notKept) : ''} <Shortened seen={seen} />
      </p>
      <Refusals seen={seen} />
    </div>
  );
}

/** How much shorter than the kept plan the one in view is. */
function Shortened({ seen }: { readonly seen: LaySeen }) {
  const { search: words } = useWords().laying;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { plan, keptLength } = seen;
  if (!plan || keptLength === null || seen.isKept || plan.ground.kind !== 'roll') return null;
  const saved = keptLength - plan.length;
  return saved >= 1 ? words.saved(numbers.length(saved, unit)) : null;
}

/** Why nothing was laid, or what is to be minded about what was. */
function Refusals({ seen: { issues, plan } }: { readonly seen: LaySeen }) {
  const say = useSayInUnits();
  // Seams at which the print does not go on are told beneath.
  const told = issues.filter(({ code }) => code !== 'print-does-not-meet' && code !== 'no-room');
  if (told.length === 0) return null;
  return (
    <ul role="alert" className="lay-refusals" data-none={plan === null || undefined}>
      {told.map(({ path, message }) => (
        <li key={path}>{say(message)}</li>
      ))}
    </ul>
  );
}

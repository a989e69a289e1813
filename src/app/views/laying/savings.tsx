import { useState } from 'react';
import { withUsual } from '../../../core/base/index.ts';
import {
  LAYING_OPTIONS,
  type LayPlan,
  type Stock,
  type UseId,
  wayOfMeeting,
} from '../../../core/laying/index.ts';
import type { LayKey, LaySeen } from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

/** Off the grain by so much is common for cloth that does not show it (common practice, no source). */
const OFF_GRAIN = (3 * Math.PI) / 180;

type Saving = 'both' | 'offGrain' | 'noGap' | 'noMeeting';

interface Offer {
  readonly id: Saving;
  readonly change: Partial<Stock>;
}

interface SavingsProps {
  readonly use: UseId;
  readonly seen: LaySeen;
}

/** What each freedom that is not taken yet would save, told on request. */
export function Savings({ use, seen }: SavingsProps) {
  const { savings: words } = useWords().laying;
  const offers = offersFor(seen);
  if (seen.plan?.ground.kind !== 'roll' || offers.length === 0) return null;
  return (
    <section className="lay-savings" aria-labelledby="savings-title">
      <h3 id="savings-title">{words.title}</h3>
      <p className="measure-how">{words.about}</p>
      <ul>
        {offers.map((offer) => (
          <li key={offer.id}>
            <OneSaving use={use} seen={seen} plan={seen.plan as LayPlan} offer={offer} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function offersFor({ of: { stock }, rules: { use } }: LaySeen): Offer[] {
  const { ways, leastGap, grainTolerance } = withUsual(LAYING_OPTIONS, stock);
  const print = stock.print ?? {};
  const isPrinted = withUsual(LAYING_OPTIONS.print, print).kind !== 'plain';
  const isOneWay = (ways ?? (isPrinted ? 'one' : 'both')) === 'one';
  return [
    ...(isOneWay ? [{ id: 'both' as const, change: { ways: 'both' as const } }] : []),
    ...(grainTolerance < OFF_GRAIN
      ? [{ id: 'offGrain' as const, change: { grainTolerance: OFF_GRAIN } }]
      : []),
    ...((leastGap ?? use.gap) > 0 ? [{ id: 'noGap' as const, change: { leastGap: 0 } }] : []),
    ...(wayOfMeeting(print)
      ? [{ id: 'noMeeting' as const, change: { print: { ...print, meets: 'no' as const } } }]
      : []),
  ];
}

interface OneSavingProps extends SavingsProps {
  readonly plan: LayPlan;
  readonly offer: Offer;
}

function OneSaving({ use, seen, plan, offer: { id, change } }: OneSavingProps) {
  const { savings: words, steps } = useWords().laying;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const services = useServices();
  const actions = useActions();
  const [tried, setTried] = useState<{ readonly of: LayKey; readonly found: LayPlan | null | undefined }>();
  // What was told of other cloth or other pieces is over.
  const isPresent = tried?.of === seen.of;
  const found = isPresent ? tried.found : undefined;
  const isTrying = isPresent && found === undefined;
  const start = async () => {
    const { of } = seen;
    setTried({ of, found: undefined });
    const answer = await services.tryStock(use, change);
    setTried((now) => (now?.of === of ? { of, found: answer } : now));
  };
  const saved = found ? plan.length - found.length : 0;
  const name = words[id];
  return (
    <div className="lay-saving">
      <span>{name}</span>
      <span role="status">
        {isTrying
          ? words.trying
          : found === null
            ? words.failed
            : found && (saved >= 1 ? `−${numbers.length(saved, unit)}` : words.nothing)}
      </span>
      {found && saved >= 1 ? (
        <button
          type="button"
          className="plain"
          aria-label={words.takeOne(name)}
          onClick={() => actions.setStock(use, change, steps.cloth)}
        >
          {words.take}
        </button>
      ) : (
        <button
          type="button"
          className="plain"
          aria-label={words.tryOne(name)}
          disabled={isTrying}
          onClick={() => void start()}
        >
          {words.try}
        </button>
      )}
    </div>
  );
}

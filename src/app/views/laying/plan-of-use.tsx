import { useMemo } from 'react';
import {
  findFaults,
  type LaidPiece,
  type LayPlan,
  tellOfPlan,
  type UseId,
} from '../../../core/laying/index.ts';
import { isFillingAwaited, keptPlaces, type LaySeen } from '../../store/index.ts';
import { useNumbers, useSayInUnits, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { ByHand } from './by-hand.tsx';
import { FaultList } from './fault-list.tsx';
import { LayView } from './lay-view.tsx';
import { PrintGaps } from './print-gaps.tsx';
import { SearchTools } from './search-tools.tsx';

interface PlanOfUseProps {
  readonly use: UseId;
  readonly seen: LaySeen;
  readonly name: string;
}

/** The plan of one use, what it takes, and how to make it better. */
export function PlanOfUse({ use, seen, name }: PlanOfUseProps) {
  const actions = useActions();
  const { laying: words } = useWords();
  const isAwaited = useApp(isFillingAwaited);
  const { plan, rules } = seen;
  // Panels that are still to be cut for the filling lie a little otherwise than those that were laid.
  const faults = useMemo(
    () => (plan && seen.isKept && !isAwaited ? findFaults(rules, plan.placed) : []),
    [plan, rules, seen.isKept, isAwaited],
  );
  const put = (place: LaidPiece, step: string) => {
    if (plan) actions.placePieces(use, keptPlaces(plan.placed, place), step);
  };
  return (
    <section className="lay-plan" aria-label={`${words.plan.title}: ${name}`}>
      <LayView use={use} seen={seen} faults={faults} onPut={put} />
      <div className="lay-beside">
        <SearchTools use={use} seen={seen} />
        {plan && <WhatItTakes plan={plan} seen={seen} />}
        <FaultList seen={seen} faults={faults} />
        <PrintGaps seen={seen} />
        {plan && <ByHand use={use} seen={seen} plan={plan} onPut={put} />}
      </div>
    </section>
  );
}

function WhatItTakes({ plan, seen }: { readonly plan: LayPlan; readonly seen: LaySeen }) {
  const say = useSayInUnits();
  return (
    <ul className="lay-facts">
      {tellOfPlan(plan, seen.task.pieces, seen.of.stock).map((phrase) => (
        <li key={phrase.id}>{say(phrase)}</li>
      ))}
      <Bound plan={plan} />
    </ul>
  );
}

/** How far the plan is from what no plan can beat. */
function Bound({ plan: { bound, length, ground } }: { readonly plan: LayPlan }) {
  const { laying: words } = useWords();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (ground.kind !== 'roll' || bound <= 0) return null;
  const over = length - bound;
  return (
    <li>
      {over < 0.5 ? words.reached : words.over(numbers.length(over, unit), numbers.length(bound, unit))}
    </li>
  );
}

import type { UseId } from '../../../core/laying/index.ts';
import { isLaid, layInView } from '../../store/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** What is cut from what; each says what it takes. */
export function UseChoice({ uses, use }: { readonly uses: readonly UseId[]; readonly use: UseId }) {
  const words = useWords().laying;
  const say = useSay();
  const actions = useActions();
  return (
    <fieldset className="lay-uses">
      <legend className="visually-hidden">{words.uses}</legend>
      {uses.map((id) => (
        <button
          key={id}
          type="button"
          aria-pressed={id === use}
          className="lay-use"
          onClick={() => actions.lookAtUse(id)}
        >
          <span>{say({ id: `use.${id}`, values: {} })}</span>
          <Standing use={id} />
        </button>
      ))}
    </fieldset>
  );
}

function Standing({ use }: { readonly use: UseId }) {
  const words = useWords().laying;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const isOn = useApp((state) => isLaid(state.project?.laying, use));
  const isSearched = useApp((state) => state.layWork.search?.use === use);
  const seen = useApp((state) => layInView(state, use));
  const { useState: standing } = words;
  const follows = seen?.rules.use.follows && seen.of.stock.isLaid !== false && !seen.rules.use.isExtra;
  const plan = seen?.plan;
  const text = !isOn
    ? follows
      ? standing.follows
      : standing.off
    : plan
      ? plan.ground.kind === 'roll'
        ? numbers.length(plan.length, unit)
        : words.sheets(plan.sheetsUsed)
      : isSearched
        ? standing.working
        : seen?.isSearched
          ? standing.failed
          : standing.notYet;
  return <span className="lay-use-standing">{text}</span>;
}

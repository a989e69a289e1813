import { withUsual } from '../../../core/base/index.ts';
import { findUse, LAYING_OPTIONS, type UseId } from '../../../core/laying/index.ts';
import { stockOf } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Whether a use is laid at all, and whether it is laid for itself. */
export function UseSwitch({ use: id }: { readonly use: UseId }) {
  const stock = useApp((state) => stockOf(state.project, id));
  const { laying: words } = useWords();
  const actions = useActions();
  const use = findUse(id);
  const isWanted = use.isExtra ? stock.isLaid === true : stock.isLaid !== false;
  const { follows } = withUsual(LAYING_OPTIONS, stock);
  const name = id === 'lining' || id === 'trial' ? words.isLaid[id] : words.isLaid.other;
  return (
    <div className="lay-switches">
      <label className="check-row">
        <input
          type="checkbox"
          checked={isWanted}
          onChange={(event) => {
            const isLaid = event.target.checked === !use.isExtra ? undefined : event.target.checked;
            actions.setStock(id, { isLaid }, words.steps.wanted);
          }}
        />
        {name}
      </label>
      {use.follows && isWanted && (
        <>
          <label className="check-row">
            <input
              type="checkbox"
              checked={follows}
              onChange={(event) =>
                actions.setStock(
                  id,
                  { follows: event.target.checked ? undefined : false },
                  words.steps.wanted,
                )
              }
            />
            {words.followsShell}
          </label>
          {follows && <p className="quiet">{words.followsAbout}</p>}
        </>
      )}
    </div>
  );
}

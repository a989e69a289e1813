import type { LayFault } from '../../../core/laying/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions } from '../parts/workroom-context.tsx';

/** Pieces that lie over each other or beyond the cloth, and those without a place, by name. */
export function FaultList({
  seen,
  faults,
}: {
  readonly seen: LaySeen;
  readonly faults: readonly LayFault[];
}) {
  const { faults: words } = useWords().laying;
  const say = useSay();
  const actions = useActions();
  const nameOf = (id: string) => {
    const piece = seen.rules.pieces.find((other) => other.id === id);
    return piece ? say(piece.name) : id;
  };
  const left = seen.plan?.left ?? [];
  if (faults.length === 0 && left.length === 0) return null;
  return (
    <div className="lay-faults" role="status">
      <h3>{words.title}</h3>
      <ul>
        {faults.map(({ kind, pieces }) => (
          <li key={`${kind} ${pieces.join(' ')}`}>
            <button type="button" className="as-text" onClick={() => actions.choosePiece(pieces[0])}>
              {kind === 'overlap'
                ? words.overlap(nameOf(pieces[0]), nameOf(pieces[1]))
                : words.outside(nameOf(pieces[0]))}
            </button>
          </li>
        ))}
        {left.length > 0 && <li>{words.left(left.map(nameOf).join(', '))}</li>}
      </ul>
    </div>
  );
}

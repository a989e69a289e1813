import { isFillingAwaited } from '../../store/index.ts';
import { useWords } from './use-words.ts';
import { useApp } from './workroom-context.tsx';

/** That what is told here is not yet as it will be cut, while it is not. */
export function FillingAwaited() {
  const isAwaited = useApp(isFillingAwaited);
  const isStopped = useApp((state) => state.isStopped && state.work === null);
  const { status: words } = useWords();
  if (!isAwaited) return null;
  return <p className="quiet filling-awaited">{isStopped ? words.notCutForFilling : words.cutForFilling}</p>;
}

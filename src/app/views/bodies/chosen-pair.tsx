import { useState } from 'react';
import type { KeptBody } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { useWardrobe } from './wardrobe-context.tsx';

/** Bodies chosen to be compared, two at most. */
export interface Pair {
  readonly chosen: readonly KeptBody[];
  readonly isChosen: (id: string) => boolean;
  /** A third takes the place of the first. */
  readonly choose: (id: string, isChosen: boolean) => void;
  readonly clear: () => void;
}

export function usePair(bodies: readonly KeptBody[] | null): Pair {
  const [ids, setIds] = useState<readonly string[]>([]);
  return {
    chosen: ids.flatMap((id) => bodies?.find((body) => body.id === id) ?? []),
    isChosen: (id) => ids.includes(id),
    choose: (id, isChosen) =>
      setIds((known) => [...known.filter((other) => other !== id), ...(isChosen ? [id] : [])].slice(-2)),
    clear: () => setIds([]),
  };
}

/** What is chosen, in sight while it is, and the way to compare. */
export function ChosenPair({ pair, onClose }: { readonly pair: Pair; readonly onClose: () => void }) {
  const services = useServices();
  const { top } = useWords();
  const { words } = useWardrobe();
  const [first, second] = pair.chosen;
  if (!first) return null;
  const nameOf = ({ name }: KeptBody) => name || top.untitled;
  return (
    <div className="chosen-pair" role="status">
      <span>{second ? words.both(nameOf(first), nameOf(second)) : words.oneMore(nameOf(first))}</span>
      {second && (
        <button
          type="button"
          className="main"
          onClick={() => {
            onClose();
            void services.compareKept([first, second]);
          }}
        >
          {words.compareBoth}
        </button>
      )}
      <button type="button" className="plain" onClick={pair.clear}>
        {words.clearChoice}
      </button>
    </div>
  );
}

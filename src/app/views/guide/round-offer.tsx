import { useEffect, useState } from 'react';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

/** Offers the round of the page, once, to who has opened nothing yet: gone with the first change, and next time. */
export function RoundOffer() {
  const { recall, remember } = useServices();
  const actions = useActions();
  const { showRound } = useWords().stages;
  const hasOnlyLooked = useApp(({ project, asOpened }) => project !== null && project === asOpened);
  const isTouring = useApp((state) => state.roundAt !== null);
  const [isNew, setIsNew] = useState(() => hasOnlyLooked && recall('round') === null);
  useEffect(() => remember('round', 'offered'), [remember]);
  useEffect(() => {
    if (isTouring) setIsNew(false);
  }, [isTouring]);
  if (!isNew || !hasOnlyLooked) return null;
  return (
    <p className="round-offer">
      <button type="button" className="as-text" onClick={() => actions.showRound(0)}>
        {showRound}
      </button>
    </p>
  );
}

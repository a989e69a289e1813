import { useRef, useState } from 'react';
import { withUsual } from '../../../core/base/index.ts';
import { findPaper, PAPERS, PRINT_OPTIONS } from '../../../core/sheet/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

const NOTHING = {};

/** The booklet: how its pages lie on paper, and its drawing, which takes some seconds and can be stopped. */
export function BookletMaker() {
  const { making: words } = useWords();
  const { percent } = useNumbers();
  const services = useServices();
  const [drawn, setDrawn] = useState<number | null>(null);
  const isWanted = useRef(false);
  const make = async () => {
    isWanted.current = true;
    setDrawn(0);
    await services.download({ formats: ['booklet'] }, (share) => {
      setDrawn(share);
      return isWanted.current;
    });
    setDrawn(null);
  };
  return (
    <section className="booklet-maker" aria-label={words.bookletTitle}>
      <BookletPages />
      {drawn === null ? (
        <button type="button" className="plain" onClick={() => void make()}>
          {words.booklet}
        </button>
      ) : (
        <p className="booklet-drawn">
          <progress aria-label={words.drawing} value={drawn} max={1} />
          <span className="quiet">{`${words.drawing} ${percent(drawn, 0)}`}</span>
          <button
            type="button"
            className="plain"
            onClick={() => {
              isWanted.current = false;
            }}
          >
            {words.stop}
          </button>
        </p>
      )}
    </section>
  );
}

/** As large as the pattern's paper, of A5, or two on a side. */
function BookletPages() {
  const cutting = useApp((state) => state.project?.cutting ?? NOTHING);
  const { booklet, paper } = withUsual(PRINT_OPTIONS, cutting);
  const { making: words, steps } = useWords();
  const actions = useActions();
  const say = useSay();
  const name = say((findPaper(paper) ?? PAPERS[0]).name);
  const choose = (id: string): void => {
    const choice = PRINT_OPTIONS.booklet.choices.find((one) => one === id);
    actions.setCutting({ booklet: choice }, steps.things.booklet);
  };
  return (
    <div className="booklet-pages">
      <label className="measure-name" htmlFor="booklet-pages">
        {words.pages}
      </label>
      <select
        id="booklet-pages"
        value={booklet}
        aria-describedby="booklet-how"
        onChange={(event) => choose(event.target.value)}
      >
        {PRINT_OPTIONS.booklet.choices.map((id) => (
          <option key={id} value={id}>
            {words.pageKinds[id](name)}
          </option>
        ))}
      </select>
      <p className="measure-how" id="booklet-how">
        {words.pageHow[booklet]}
      </p>
    </div>
  );
}

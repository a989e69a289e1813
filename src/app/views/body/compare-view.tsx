import { useEffect, useMemo, useRef } from 'react';
import { compareBodies } from '../../../core/body/index.ts';
import { readProjectFile } from '../parts/open-file.ts';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useDemoCards } from '../parts/use-demo-cards.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';
import { DistanceMap } from './distance-map.tsx';
import { RefitView } from './refit-view.tsx';

/** Another body over this one, and what differs level by level. */
export function CompareView() {
  const ghost = useApp((state) => state.ghost);
  const allWords = useWords();
  const words = allWords.compare;
  const services = useServices();
  const actions = useActions();
  const cards = useDemoCards(services.demos);
  const input = useRef<HTMLInputElement>(null);
  const awaited = useApp((state) => state.ghostAwaited);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // Whoever chose it elsewhere is brought here.
    if (awaited === null) return;
    title.current?.scrollIntoView({ block: 'start' });
    title.current?.focus({ preventScroll: true });
  }, [awaited]);
  const choose = (id: string) => {
    const card = cards.find(({ demo }) => demo.id === id);
    if (card) void card.demo.load().then((text) => services.compareWith(text, card.name));
  };
  const compareWithFile = async (file: File) => {
    const text = await readProjectFile(file, actions, allWords);
    if (text !== null) await services.compareWith(text, file.name);
  };
  return (
    <section className="compare-view" aria-labelledby="compare-title">
      <h3 id="compare-title" ref={title} tabIndex={-1}>
        {words.title}
      </h3>
      <div className="compare-tools">
        <select aria-label={words.demo} value="" onChange={(event) => choose(event.target.value)}>
          <option value="" disabled>
            {words.aDemo}
          </option>
          {cards.map(({ demo, name }) => (
            <option key={demo.id} value={demo.id}>
              {name}
            </option>
          ))}
        </select>
        <button type="button" className="plain" onClick={() => input.current?.click()}>
          {words.aProject}
        </button>
        <input
          ref={input}
          type="file"
          accept=".json,application/json"
          hidden
          aria-label={words.project}
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) void compareWithFile(file);
          }}
        />
        {ghost && (
          <button type="button" className="plain" onClick={() => actions.compareWith(null)}>
            {words.stop}
          </button>
        )}
      </div>
      {awaited !== null && !ghost && (
        <p className="quiet" role="status">
          {words.awaited(awaited)}
        </p>
      )}
      {ghost && <Differences />}
      {ghost && <DistanceMap />}
      {ghost && <RefitView />}
    </section>
  );
}

const NO_POINTS = new Float64Array(0);
const SIZES = ['girth', 'width', 'depth'] as const;

function Differences() {
  const ghost = useApp((state) => state.ghost);
  const body = useApp((state) => state.form?.body);
  const { compare: words, body: bodyWords } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const sections = useMemo(
    () => (ghost && body ? compareBodies(body, ghost.body, NO_POINTS).sections : []),
    [ghost, body],
  );
  if (!ghost) return null;
  return (
    <>
      <p className="quiet">{words.about(ghost.name)}</p>
      <ScrollableTable label={words.differences}>
        <table className="table stacked">
          <thead>
            <tr>
              <th scope="col">{bodyWords.level}</th>
              {SIZES.map((size) => (
                <th key={size} scope="col" className="number">
                  {words.sizes[size]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sections.map(({ level, name, before, after }) => (
              <tr key={level}>
                <th scope="row">{say(name)}</th>
                {SIZES.map((size) => (
                  <td key={size} className="number" data-name={words.sizes[size]}>
                    {numbers.length(after[size], unit, { bare: true })}{' '}
                    <span className="difference">
                      {numbers.signedLength(after[size] - before[size], unit)}
                    </span>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollableTable>
    </>
  );
}

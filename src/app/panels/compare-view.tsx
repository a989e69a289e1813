import { useMemo, useRef } from 'react';
import { formatLength } from '../../core/base/index.ts';
import { compareBodies } from '../../core/body/index.ts';
import { DistanceMap } from './distance-map.tsx';
import { readProjectFile } from './open-file.ts';
import { signedLength } from './say-numbers.ts';
import { ScrollableTable } from './scrollable-table.tsx';
import { useDemoCards } from './use-demo-cards.ts';
import { useActions, useApp, useServices } from './workroom-context.tsx';

/** Another body over this one, and what differs level by level. */
export function CompareView() {
  const ghost = useApp((state) => state.ghost);
  const services = useServices();
  const actions = useActions();
  const cards = useDemoCards(services.demos);
  const input = useRef<HTMLInputElement>(null);
  const choose = (id: string) => {
    const card = cards.find(({ demo }) => demo.id === id);
    if (card) void card.demo.load().then((text) => services.compareWith(text, card.name));
  };
  const compareWithFile = async (file: File) => {
    const text = await readProjectFile(file, actions);
    if (text !== null) await services.compareWith(text, file.name);
  };
  return (
    <section className="compare-view" aria-labelledby="compare-title">
      <h3 id="compare-title">Compare with another body</h3>
      <div className="compare-tools">
        <select
          aria-label="Demo body to compare with"
          value=""
          onChange={(event) => choose(event.target.value)}
        >
          <option value="" disabled>
            A demo body…
          </option>
          {cards.map(({ demo, name }) => (
            <option key={demo.id} value={demo.id}>
              {name}
            </option>
          ))}
        </select>
        <button type="button" className="plain" onClick={() => input.current?.click()}>
          A saved project…
        </button>
        <input
          ref={input}
          type="file"
          accept=".json,application/json"
          hidden
          aria-label="Saved project to compare with"
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) void compareWithFile(file);
          }}
        />
        {ghost && (
          <button type="button" className="plain" onClick={() => actions.compareWith(null)}>
            Stop comparing
          </button>
        )}
      </div>
      {ghost && <Differences />}
      {ghost && <DistanceMap />}
    </section>
  );
}

const NO_POINTS = new Float64Array(0);
const SIZES = ['girth', 'width', 'depth'] as const;

function Differences() {
  const ghost = useApp((state) => state.ghost);
  const body = useApp((state) => state.form?.body);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const sections = useMemo(
    () => (ghost && body ? compareBodies(body, ghost.body, NO_POINTS).sections : []),
    [ghost, body],
  );
  if (!ghost) return null;
  return (
    <>
      <p className="quiet">
        {ghost.name} is drawn over this body. Its sizes, and how far they are from these:
      </p>
      <ScrollableTable label="Differences">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Level</th>
              {SIZES.map((size) => (
                <th key={size} scope="col" className="number">
                  {size}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sections.map(({ level, name, before, after }) => (
              <tr key={level}>
                <th scope="row">{name}</th>
                {SIZES.map((size) => (
                  <td key={size} className="number">
                    {formatLength(after[size], unit, { bare: true })}{' '}
                    <span className="difference">{signedLength(after[size] - before[size], unit)}</span>
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

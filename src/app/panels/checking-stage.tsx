import { useState } from 'react';
import type { CheckingEntry } from '../../core/project/index.ts';
import type { StuffingContext } from '../../core/simulate/index.ts';
import { isFormBehind } from '../store/index.ts';
import { CheckingCorrections } from './checking-corrections.tsx';
import { CheckingEntryFields } from './checking-entry.tsx';
import { CheckingHistory } from './checking-history.tsx';
import { useActions, useApp } from './workroom-context.tsx';

const NONE: readonly CheckingEntry[] = [];

/** The form against the body: readings as they are taken, what they say, and what to do about it. */
export function CheckingStage() {
  const stuffing = useApp((state) => state.form?.workshop?.stuffing);
  const isBehind = useApp(isFormBehind);
  return (
    <div className="stage checking-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <h2>Checking</h2>
        <p>
          Measure the empty shell once, then the form after every zone you fill, and a day later. A girth may
          be over by 5 mm and never under; width and depth may be off by 5 mm either way.
        </p>
      </header>
      {stuffing ? (
        <CheckingLog stuffing={stuffing} />
      ) : (
        <p className="quiet">Working out what it is to measure…</p>
      )}
    </div>
  );
}

function CheckingLog({ stuffing }: { readonly stuffing: StuffingContext }) {
  const entries = useApp((state) => state.project?.checking?.entries ?? NONE);
  const actions = useActions();
  const [chosen, setChosen] = useState<number | null>(null);
  const index = Math.min(chosen ?? entries.length - 1, entries.length - 1);
  const entry = entries[index];
  const begin = (state: CheckingEntry['state']) => {
    actions.setChecking([...entries, { date: today(), state, levels: {} }], 'new readings');
    setChosen(null);
  };
  const change = (next: CheckingEntry, label: string) =>
    actions.setChecking(entries.with(index, next), label);
  return (
    <>
      <section className="checking-begin" aria-label="Begin measuring">
        <button type="button" className={entry ? 'plain' : 'main'} onClick={() => begin('empty')}>
          Measure the empty shell
        </button>
        <button type="button" className={entry ? 'plain' : 'main'} onClick={() => begin('filled')}>
          Measure the filled form
        </button>
      </section>
      {entry ? (
        <>
          <CheckingEntryFields key={index} entry={entry} stuffing={stuffing} onChange={change} />
          <CheckingCorrections entry={entry} stuffing={stuffing} />
          <CheckingHistory
            entries={entries}
            shown={index}
            stuffing={stuffing}
            onShow={setChosen}
            onRemove={(k) => {
              actions.setChecking(entries.toSpliced(k, 1), 'fewer readings');
              setChosen(null);
            }}
          />
        </>
      ) : (
        <p className="quiet">Nothing measured yet. What you enter is kept with the body.</p>
      )}
    </>
  );
}

function today(): string {
  const now = new Date();
  const two = (n: number) => `${n}`.padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

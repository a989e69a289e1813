import { useState } from 'react';
import { CAUTIONS } from '../../../core/inside/index.ts';
import type { CheckingEntry } from '../../../core/project/index.ts';
import type { FillingContext } from '../../../core/simulate/index.ts';
import { isFormBehind, today } from '../../store/index.ts';
import { StageTitle } from '../guide/stage-title.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { FillingAwaited } from '../parts/filling-awaited.tsx';
import { GaugeGuide } from '../parts/gauge-guide.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { CheckingCorrections } from './checking-corrections.tsx';
import { CheckingEntryFields } from './checking-entry.tsx';
import { CheckingHistory } from './checking-history.tsx';
import type { EntryProps } from './entry-props.ts';
import { TrialPins } from './trial-pins.tsx';
import { isRead, useCorrections } from './use-corrections.ts';

const NONE: readonly CheckingEntry[] = [];
const CARES = ['dust', 'tipping', 'fire'];

/** The form against the body: readings as they are taken, what they say, and what to do about it. */
export function CheckingStage() {
  const stuffing = useApp((state) => state.form?.making?.stuffing);
  const isBehind = useApp(isFormBehind);
  const words = useWords();
  return (
    <div className="stage checking-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <StageTitle stage="checking" />
        <p>{words.checking.about}</p>
      </header>
      <FillingAwaited />
      {stuffing ? <CheckingLog stuffing={stuffing} /> : <p className="quiet">{words.checking.working}</p>}
      <Gauges />
      <TrialPins />
      <CautionList cautions={CAUTIONS.filter(({ id }) => CARES.includes(id))} />
    </div>
  );
}

/** For what a tape cannot tell. */
function Gauges() {
  const words = useWords().checking.gauges;
  return (
    <details className="printer">
      <summary>{words.title}</summary>
      <p className="quiet">{words.about}</p>
      <GaugeGuide />
    </details>
  );
}

function CheckingLog({ stuffing }: { readonly stuffing: FillingContext }) {
  const entries = useApp((state) => state.project?.checking?.entries ?? NONE);
  const actions = useActions();
  const { checking: words, steps } = useWords();
  const [chosen, setChosen] = useState<number | null>(null);
  const index = Math.min(chosen ?? entries.length - 1, entries.length - 1);
  const entry = entries[index];
  const [refused, setRefused] = useState(false);
  const begin = (state: CheckingEntry['state']) => {
    const last = entries.at(-1);
    const isUnread = last !== undefined && !isRead(last);
    setRefused(isUnread && last.state === state);
    setChosen(null);
    if (isUnread && last.state === state) return;
    // A round in which nothing was read makes way.
    const kept = isUnread ? entries.slice(0, -1) : entries;
    actions.setChecking([...kept, { date: today(), state, levels: {} }], steps.things.newReadings);
  };
  const change = (next: CheckingEntry, label: string) =>
    actions.setChecking(entries.with(index, next), label);
  return (
    <>
      <section className="checking-begin" aria-label={words.begin}>
        <button type="button" className={entry ? 'plain' : 'main'} onClick={() => begin('empty')}>
          {words.measureEmpty}
        </button>
        <button type="button" className={entry ? 'plain' : 'main'} onClick={() => begin('filled')}>
          {words.measureFilled}
        </button>
      </section>
      {entry ? (
        <>
          <Round
            key={index}
            entry={entry}
            stuffing={stuffing}
            onChange={change}
            isRefused={refused && !isRead(entry)}
          />
          <CheckingHistory
            entries={entries}
            shown={index}
            stuffing={stuffing}
            onShow={setChosen}
            onRemove={(k) => {
              actions.setChecking(entries.toSpliced(k, 1), steps.things.fewerReadings);
              setChosen(null);
            }}
          />
        </>
      ) : (
        <p className="quiet">{words.nothing}</p>
      )}
    </>
  );
}

interface RoundProps extends EntryProps {
  /** Another round was asked for while nothing is read in this one. */
  readonly isRefused: boolean;
}

/** The round of measuring shown: its fields, and what they say. */
function Round({ isRefused, ...round }: RoundProps) {
  const { entry, stuffing } = round;
  const corrections = useCorrections(entry, stuffing);
  const { checking: words } = useWords();
  const say = useSay();
  const top = stuffing.targets.reduce((highest, target) => (target.z > highest.z ? target : highest));
  const name = say(top.name);
  const field = entry.state === 'empty' ? words.laidFlat(name) : words.kindOf(name, words.kinds.girth);
  return (
    <>
      {isRefused && (
        <p className="field-message" role="alert">
          {words.roundUnread(field)}
        </p>
      )}
      <CheckingEntryFields {...round} corrections={corrections} />
      <CheckingCorrections entry={entry} corrections={corrections} />
    </>
  );
}

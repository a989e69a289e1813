import type { WorkStep } from '../../../core/form/index.ts';
import type { CheckingEntry } from '../../../core/project/index.ts';
import type { FillingContext } from '../../../core/simulate/index.ts';
import { today } from '../../store/index.ts';
import { CheckingCorrections } from '../checking/checking-corrections.tsx';
import { LevelFields } from '../checking/checking-entry.tsx';
import { FillMass } from '../checking/fill-mass.tsx';
import { TrialPins } from '../checking/trial-pins.tsx';
import { useCorrections } from '../checking/use-corrections.ts';
import { TestTubeFields } from '../inside/test-tube-fields.tsx';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

const NONE: readonly CheckingEntry[] = [];

/** Where the step asks for something that the project keeps: the fields for it, the same as under Inside and Checking. */
export function BenchReadings({ step }: { readonly step: WorkStep }) {
  const stuffing = useApp((app) => app.form?.making?.stuffing);
  if (step.id === 'test-tube') return <TestTubeFields />;
  if (step.id === 'trial') return <TrialPins />;
  if (!stuffing) return null;
  const filled = levelsAsked(step, /^girth-/);
  if (filled.length > 0) return <LevelReadings state="filled" levels={filled} stuffing={stuffing} />;
  const empty = levelsAsked(step, /^flat-/);
  return empty.length > 0 ? <LevelReadings state="empty" levels={empty} stuffing={stuffing} /> : null;
}

/** Levels whose measures the step's checks of this kind ask for. */
function levelsAsked({ checks }: WorkStep, kind: RegExp): string[] {
  return checks.flatMap(({ id }) => (kind.test(id) ? [id.replace(kind, '')] : []));
}

interface LevelReadingsProps {
  readonly state: CheckingEntry['state'];
  readonly levels: readonly string[];
  readonly stuffing: FillingContext;
}

/** Readings go into today's round of measuring, which begins with the first of them. */
function LevelReadings({ state, levels, stuffing }: LevelReadingsProps) {
  const entries = useApp((app) => app.project?.checking?.entries ?? NONE);
  const actions = useActions();
  const { bench: words } = useWords();
  const last = entries.length - 1;
  const isGoingOn = entries[last]?.state === state && entries[last].date === today();
  const entry = isGoingOn ? entries[last] : { date: today(), state, levels: {} };
  const corrections = useCorrections(entry, stuffing);
  const change = (next: CheckingEntry, label: string): void => {
    actions.setChecking(isGoingOn ? entries.with(last, next) : [...entries, next], label);
  };
  const asked = stuffing.targets.filter(({ id }) => levels.includes(id)).toSorted((a, b) => b.z - a.z);
  return (
    <section className="bench-readings" aria-labelledby="bench-readings-title">
      <h3 id="bench-readings-title">{words.readings}</h3>
      <ul className="checking-levels">
        {asked.map((target) => (
          <LevelFields
            key={target.id}
            target={target}
            entry={entry}
            corrections={corrections}
            onChange={change}
          />
        ))}
      </ul>
      {state === 'filled' && (
        <div className="checking-when">
          <FillMass entry={entry} stuffing={stuffing} onChange={change} />
        </div>
      )}
      <CheckingCorrections entry={entry} corrections={corrections} />
    </section>
  );
}

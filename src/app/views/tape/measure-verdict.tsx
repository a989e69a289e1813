import type { MeasureDefinition, TapeReading } from '../../../core/body/index.ts';
import { type AppState, issuesOf, issuesOfMeasure, tapesOfMeasure } from '../../store/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** How the body answers a measure, and what is doubtful about it. */
export function MeasureVerdict({ measure }: { readonly measure: MeasureDefinition }) {
  const form = useApp((state) => state.form);
  const issues = useApp(issuesOf);
  const say = useSay();
  const isBehind = useApp((state) => state.formOf !== state.project);
  const isGiven = useApp((state) => state.project?.body.measures[measure.id] !== undefined);
  const tapes = tapesOfMeasure({ form } as AppState, measure.id);
  const doubts = issuesOfMeasure(issues, measure.id);
  if (tapes.length === 0 && doubts.length === 0) return null;
  return (
    <div className="verdict" data-behind={isBehind || undefined}>
      {tapes.map((tape) => (
        <Verdict key={tape.id} tape={tape} isGiven={isGiven} />
      ))}
      {doubts.map((issue) => (
        <p key={issue.code + issue.path} className={`doubt ${issue.severity}`}>
          <CoreText said={say(issue.message)} />
        </p>
      ))}
    </div>
  );
}

function Verdict({ tape, isGiven }: { readonly tape: TapeReading; readonly isGiven: boolean }) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const words = useWords().measure;
  const numbers = useNumbers();
  const side = tape.id.endsWith('.left')
    ? `${words.left} `
    : tape.id.endsWith('.right')
      ? `${words.right} `
      : '';
  const got = numbers.length(tape.got, unit);
  if (tape.status === 'met') {
    return <span className="badge met">{words.met(side, got)}</span>;
  }
  if (tape.status === 'conflict') {
    return (
      <span className="badge conflict">
        {words.conflict(side, got, numbers.signedLength(tape.got - tape.target, unit))}
      </span>
    );
  }
  return isGiven ? null : <span className="badge estimated">{words.estimated(side)}</span>;
}

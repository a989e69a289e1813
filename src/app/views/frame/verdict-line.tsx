import { useRef } from 'react';
import type { Issue } from '../../../core/base/index.ts';
import type { Verdict, VerdictPlace } from '../../../core/form/index.ts';
import { isFormBehind, stageOfIssue, type ViewName } from '../../store/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Code of the core's issue for a measure without which there is no body: only begun, not wrong. */
const MISSING = 'measure-missing';

/** Whether the form can be sewn, in every stage at the same place; with the worst place, and what may mend it. */
export function VerdictLine() {
  const failure = useApp((state) => state.failure);
  if (!failure) return <FormVerdict />;
  return failure.every((issue) => issue.code === MISSING) ? null : <NoForm failure={failure} />;
}

/** Why is told in the notice above. */
function NoForm({ failure }: { readonly failure: readonly Issue[] }) {
  const { verdict: words } = useWords();
  const reason = failure.find(({ severity }) => severity === 'error') ?? failure[0];
  return (
    <section className="verdict-line" aria-label={words.title} data-kind="cannot">
      <p>
        <span className="verdict-mark" aria-hidden="true" />
        {words.cannot}
      </p>
      {reason && <GoThere path={reason.path} code={reason.code} />}
    </section>
  );
}

function FormVerdict() {
  const shown = useLastVerdict();
  const isBehind = useApp(isFormBehind);
  const { verdict: words } = useWords();
  const say = useSay();
  if (!shown) return null;
  const { kind, message, worst, path, code } = shown;
  return (
    <section className="verdict-line" aria-label={words.title} data-kind={kind}>
      <p data-behind={isBehind || undefined}>
        <span className="verdict-mark" aria-hidden="true" />
        <CoreText said={say(message)} />
        {worst && <WorstPlace worst={worst} />}
      </p>
      {kind === 'wrinkles' && <SeekAdvice />}
      {code !== undefined && <GoThere path={path} code={code} />}
    </section>
  );
}

/** A rough form that was not unrolled has none: what was told of the same body before stays until the next. */
function useLastVerdict(): Verdict | null {
  const made = useApp((state) => state.form?.report.verdict);
  const bodyId = useApp((state) => state.bodyId);
  const last = useRef<{ readonly bodyId: string; readonly verdict: Verdict } | null>(null);
  if (made) last.current = { bodyId, verdict: made };
  return last.current?.bodyId === bodyId ? last.current.verdict : null;
}

/** Lights the piece among those laid flat, and turns the body to it. */
function WorstPlace({ worst }: { readonly worst: VerdictPlace }) {
  const actions = useActions();
  const { verdict: words } = useWords();
  const say = useSay();
  const show = () => {
    actions.goTo('panels');
    actions.turnTo(viewOf(worst.place.u));
    actions.pointAt({ kind: 'panel', id: worst.panelId });
  };
  return (
    <span className="verdict-place">
      {' '}
      {words.worst}{' '}
      <button type="button" className="link" onClick={show}>
        <CoreText said={say(worst.name)} />
      </button>
    </span>
  );
}

/** From where a place of the chart, an angle from the wearer's right, is seen. */
function viewOf(u: number): ViewName {
  const toFront = Math.sin(u);
  if (Math.abs(toFront) < 0.5) return 'side';
  return toFront > 0 ? 'front' : 'back';
}

function SeekAdvice() {
  const actions = useActions();
  const { verdict: words } = useWords();
  const seek = () => {
    actions.goTo('seams');
    actions.wantAdvice(true);
  };
  return (
    <button type="button" className="plain" onClick={seek}>
      {words.mend}
    </button>
  );
}

function GoThere(issue: { readonly path: string; readonly code: string }) {
  const actions = useActions();
  const { verdict: words, stages } = useWords();
  const present = useApp((state) => state.stage);
  const stage = stageOfIssue(issue);
  if (stage === present) return null;
  return (
    <button type="button" className="plain" onClick={() => actions.goTo(stage)}>
      {words.goTo(stages.names[stage])}
    </button>
  );
}

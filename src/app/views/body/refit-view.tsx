import { useState } from 'react';
import { WADDING } from '../../../core/pattern/index.ts';
import type { RefitAnswer } from '../../calls/index.ts';
import { CoreText, Issues } from '../parts/core-text.tsx';
import { LengthRow } from '../parts/length-row.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';

type Answer = Awaited<ReturnType<ReturnType<typeof useServices>['worker']['refitForm']>>;

/** A form of the other project stands: what makes it serve this body. Worked out when asked, in some seconds. */
export function RefitView() {
  const ghost = useApp((state) => state.ghost);
  const project = useApp((state) => state.project);
  const unit = project?.displayUnits ?? 'cm';
  const words = useWords().compare.refit;
  const services = useServices();
  const say = useSay();
  const numbers = useNumbers();
  const [wadding, setWadding] = useState<number>();
  const [isBusy, setIsBusy] = useState(false);
  const [found, setFound] = useState<{ readonly answer: Answer; readonly of: unknown } | null>(null);
  if (!ghost || !project) return null;
  const workOut = async () => {
    setIsBusy(true);
    const answer = await services.worker.refitForm(ghost.project, project, wadding);
    setFound({ answer, of: project });
    setIsBusy(false);
  };
  // What was found for other measures is not shown for these.
  const answer = found?.of === project ? found.answer : null;
  return (
    <details className="printer refit-view">
      <summary>{words.title}</summary>
      <p className="quiet">{words.about(ghost.name)}</p>
      <LengthRow
        name={words.wadding}
        fieldId="refit.wadding"
        value={wadding}
        usual={WADDING.usual}
        limits={WADDING}
        onValue={setWadding}
      />
      <button type="button" disabled={isBusy} onClick={() => void workOut()}>
        {isBusy ? words.working : words.workOut}
      </button>
      {answer && !answer.ok && (
        <p role="alert">
          <Issues issues={answer.issues} />
        </p>
      )}
      {answer?.ok && (
        <div role="status" className="refit-found">
          <p>
            <CoreText said={say(answer.value.verdict)} />
          </p>
          <Zones zones={answer.value.zones} />
          {answer.value.toFront !== 0 && (
            <p className="quiet">
              {words.stands(
                numbers.fineLength(Math.abs(answer.value.toFront), unit),
                answer.value.toFront > 0,
              )}
            </p>
          )}
          <Pads pads={answer.value.pads} />
          <Archive archive={answer.value.archive} />
        </div>
      )}
    </details>
  );
}

function Zones({ zones }: Pick<RefitAnswer, 'zones'>) {
  const say = useSay();
  return (
    <dl className="refit-zones">
      {zones.map(({ id, name, steps }) => (
        <div key={id}>
          <dt>{say(name)}</dt>
          {steps.map((step) => (
            <dd key={step.id}>
              <CoreText said={say(step)} />
            </dd>
          ))}
        </div>
      ))}
    </dl>
  );
}

function Pads({ pads }: Pick<RefitAnswer, 'pads'>) {
  const say = useSay();
  if (pads.length === 0) return null;
  return (
    <ul className="gauge-guide">
      {pads.map(({ number, name, notes }) => (
        <li key={number}>
          <strong>{say(name)}.</strong> <CoreText said={notes.map(say).join(' ')} />
        </li>
      ))}
    </ul>
  );
}

function Archive({ archive }: Pick<RefitAnswer, 'archive'>) {
  const words = useWords().compare.refit;
  const services = useServices();
  if (!archive) return null;
  return (
    <button type="button" onClick={() => services.saveRefit(archive)}>
      {words.files}
    </button>
  );
}

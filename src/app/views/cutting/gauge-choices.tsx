import { useMemo, useState } from 'react';
import { withUsual } from '../../../core/base/index.ts';
import type { Form } from '../../../core/form/index.ts';
import { GAUGE_OPTIONS, gaugedForm, PROFILE } from '../../../core/gauge/index.ts';
import { INSIDE_OPTIONS } from '../../../core/inside/index.ts';
import { Download } from '../parts/download-list.tsx';
import { GaugeGuide } from '../parts/gauge-guide.tsx';
import { LengthRow } from '../parts/length-row.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { GaugePictures } from './gauge-pictures.tsx';

/** Gauges of card to hold against the filled form: which, how they look, their files. */
export function GaugeChoices({ form }: { readonly form: Form }) {
  const words = useWords().cutting.gauges;
  const say = useSay();
  const services = useServices();
  const gauged = useMemo(() => {
    const { coverThickness } = withUsual(INSIDE_OPTIONS, form.project.inside);
    return gaugedForm(form.shell, form.closedMesh, coverThickness);
  }, [form]);
  const [leftOut, setLeftOut] = useState<ReadonlySet<string>>(new Set());
  const [clearance, setClearance] = useState<number>();
  const choices = [
    ...gauged.levels.map(({ id, name }) => ({ id, name: say(name) })),
    { id: PROFILE, name: words.profile },
  ];
  const levels = choices.map(({ id }) => id).filter((id) => !leftOut.has(id));
  const options = { levels, ...(clearance === undefined ? {} : { clearance }) };
  const want = (id: string, isWanted: boolean) => {
    const next = new Set(leftOut);
    if (isWanted) next.delete(id);
    else next.add(id);
    setLeftOut(next);
  };
  return (
    <details className="printer gauge-choices">
      <summary>{words.title}</summary>
      <p className="quiet">{words.about}</p>
      <div className="gauge-levels">
        {choices.map(({ id, name }) => (
          <label key={id} className="check-row">
            <input
              type="checkbox"
              checked={!leftOut.has(id)}
              onChange={(event) => want(id, event.target.checked)}
            />
            {name}
          </label>
        ))}
      </div>
      <LengthRow
        name={words.clearance}
        fieldId="gauges.clearance"
        value={clearance}
        usual={GAUGE_OPTIONS.clearance.usual}
        limits={GAUGE_OPTIONS.clearance}
        onValue={setClearance}
      />
      <GaugePictures form={gauged} options={options} />
      {levels.length > 0 && (
        <ul className="downloads">
          <Download
            {...words.files}
            start={() => services.download({ formats: ['gauges'], gauges: options })}
          />
        </ul>
      )}
      <GaugeGuide />
    </details>
  );
}

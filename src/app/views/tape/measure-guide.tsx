import { useMemo, useState } from 'react';
import type { MeasureDefinition } from '../../../core/body/index.ts';
import type { Form } from '../../../core/form/index.ts';
import { pathSeen, viewFromSide } from '../parts/side-drawing.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { adviceFor } from './measure-advice.ts';

/** On demand: where the tape lies on this very body, why it is asked, and what goes wrong most often. */
export function MeasureGuide({ measure }: { readonly measure: MeasureDefinition }) {
  const [isOpen, setIsOpen] = useState(false);
  const form = useApp((state) => state.form);
  const { advice: known, measure: words } = useWords();
  const say = useSay();
  const advice = adviceFor(measure.id, known);
  if (!advice) return null;
  return (
    <details className="measure-guide" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary aria-label={words.guideOf(say(measure.name))}>{words.guide}</summary>
      {isOpen && (
        <div className="guide-body">
          {form && <TapeDrawing form={form} measureId={measure.id} />}
          <dl>
            <dt>{words.why}</dt>
            <dd>{advice.why}</dd>
            <dt>{words.takeCare}</dt>
            <dd>{advice.mistake}</dd>
          </dl>
        </div>
      )}
    </details>
  );
}

interface TapeDrawingProps {
  readonly form: Form;
  readonly measureId: string;
}

/** Front and back of the present body with the tape where it lies. */
function TapeDrawing({ form, measureId }: TapeDrawingProps) {
  const words = useWords().measure;
  const drawing = useMemo(() => {
    const paths = Object.entries(form.body.tapePaths)
      .filter(([id]) => id === measureId || id.startsWith(`${measureId}.`))
      .map(([, points]) => points);
    return (['front', 'back'] as const).map((side) => {
      const view = viewFromSide(form.shell.mesh.positions, side);
      return { side, view, d: paths.map((points) => pathSeen(points, view)).join('') };
    });
  }, [form, measureId]);
  if (drawing.every(({ d }) => d === '')) return null;
  return (
    <span className="tape-drawing">
      {drawing.map(({ side, view, d }) => (
        <svg key={side} viewBox={view.viewBox} role="img" aria-label={words.drawing[side]}>
          <path d={view.outline} className="outline-cloth" />
          <path d={d} className="drawn-tape" />
        </svg>
      ))}
    </span>
  );
}

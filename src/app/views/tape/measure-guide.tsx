import { useMemo, useState } from 'react';
import { type MeasureDefinition, placeOfReading, surfaceOfBody } from '../../../core/body/index.ts';
import type { Form } from '../../../core/form/index.ts';
import { outlineOf, pathSeen, rangeOf, viewFromSide } from '../parts/side-drawing.ts';
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
          {form && measure.kind !== 'distance' && <TapeDrawing form={form} measureId={measure.id} />}
          {form && measure.kind === 'distance' && <StandingDrawing form={form} measureId={measure.id} />}
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

const [ROWS, AROUND] = [120, 48];

/** All over the body, evenly: a rough shell has too few corners for an outline. */
function pointsRound(body: Form['body']): Float64Array {
  const surface = surfaceOfBody(body);
  const [low, high] = surface.vRange;
  const chart = Float64Array.from({ length: 2 * ROWS * AROUND }, (_, i) => {
    const k = Math.floor(i / 2);
    return i % 2 === 0
      ? (2 * Math.PI * (k % AROUND)) / AROUND
      : low + ((high - low) * Math.floor(k / AROUND)) / (ROWS - 1);
  });
  return surface.evaluate(chart);
}

/** How far the wall is drawn behind the body, and what is left free round the drawing, mm. */
const [BEHIND, MARGIN] = [110, 20];

/** The body from its right side, before a wall or over the floor, with the distance that is read. */
function StandingDrawing({ form, measureId }: TapeDrawingProps) {
  const words = useWords().measure;
  const drawing = useMemo(() => {
    const positions = pointsRound(form.body);
    const place = placeOfReading(form.body, measureId);
    if (!place) return null;
    const [[back, front], [low, high]] = [rangeOf(positions, 1), rangeOf(positions, 2)];
    const [y, z] = [place[1], place[2]];
    const [wall, floor] = [back - BEHIND, low - BEHIND];
    const isOfWall = measureId.startsWith('wall');
    const [left, bottom] = isOfWall ? [wall, low] : [back, floor];
    return {
      outline: outlineOf(positions, 'side'),
      from: isOfWall ? `M${wall} ${-low}V${-high}` : `M${back} ${-floor}H${front}`,
      reading: isOfWall ? `M${wall} ${-z}H${y}` : `M${y} ${-floor}V${-z}`,
      viewBox: `${left - MARGIN} ${-high - MARGIN} ${front - left + 2 * MARGIN} ${high - bottom + 2 * MARGIN}`,
    };
  }, [form, measureId]);
  if (!drawing) return null;
  return (
    <span className="tape-drawing">
      <svg viewBox={drawing.viewBox} role="img" aria-label={words.drawing.side}>
        <path d={drawing.outline} className="outline-cloth" />
        <path d={drawing.from} className="drawn-ground" />
        <path d={drawing.reading} className="drawn-tape" />
      </svg>
    </span>
  );
}

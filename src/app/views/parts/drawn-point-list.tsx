import { useId, useMemo } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { type DrawnKind, type DrawnPoint, namedChartPlaces, surfaceDrawnOn } from '../../store/index.ts';
import { useWords } from './use-words.ts';
import { useActions, useApp } from './workroom-context.tsx';

interface DrawnPointListProps {
  readonly form: Form;
  readonly kind: DrawnKind;
}

/** Drawing on the body: the pencil, and every point as a button that arrow keys move. */
export function DrawnPointList({ form, kind }: DrawnPointListProps) {
  const points = useApp((state) => state.drawn[kind]);
  const pencil = useApp((state) => state.pencil);
  const actions = useActions();
  const words = useWords().draw;
  const how = useId();
  const chosen = pencil.chosen === null ? undefined : points[pencil.chosen];
  return (
    <div className="drawn">
      <p className="measure-how" id={how}>
        {pencil.isDown ? words.click : words.keys}
      </p>
      <div className="drawn-tools">
        <button
          type="button"
          className="plain"
          aria-pressed={pencil.isDown}
          onClick={() => actions.setPencil({ isDown: !pencil.isDown })}
        >
          {words.pencil}
        </button>
        <PlaceChoice form={form} kind={kind} />
      </div>
      {points.length > 0 && (
        <>
          <div className="pull-points">
            {points.map((point, index) => (
              <PointButton
                // biome-ignore lint/suspicious/noArrayIndexKey: points have no other name than their place in the row
                key={index}
                form={form}
                kind={kind}
                index={index}
                point={point}
                describedBy={how}
              />
            ))}
          </div>
          <p className="quiet" aria-live="polite">
            {chosen?.caughtOn
              ? words.caught((pencil.chosen ?? 0) + 1, chosen.caughtOn)
              : words.count(points.length)}
          </p>
          <div className="drawn-tools">
            <button
              type="button"
              disabled={!chosen}
              onClick={() => pencil.chosen !== null && actions.removeDrawnPoint(kind, pencil.chosen)}
            >
              {words.leaveOut}
            </button>
            <button type="button" onClick={() => actions.clearDrawn(kind)}>
              {words.wipe}
            </button>
          </div>
        </>
      )}
    </div>
  );
}

/** A point at a place that has a name. */
function PlaceChoice({ form, kind }: DrawnPointListProps) {
  const actions = useActions();
  const { draw: words, places: names, core } = useWords();
  const places = useMemo(() => namedChartPlaces(form), [form]);
  // Seams are drawn on the right half.
  const offered = kind === 'line' ? places.filter(({ id }) => !id.endsWith('Left')) : places;
  return (
    <select
      aria-label={words.addPlace}
      value=""
      onChange={(event) => {
        const place = offered.find(({ id }) => id === event.target.value);
        if (!place) return;
        actions.addDrawnPoint(kind, { u: place.u, v: place.v, caughtOn: core.inSentence(names[place.id]) });
      }}
    >
      <option value="" disabled>
        {words.place}
      </option>
      {offered.map(({ id }) => (
        <option key={id} value={id}>
          {names[id]}
        </option>
      ))}
    </select>
  );
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

interface PointButtonProps extends DrawnPointListProps {
  readonly index: number;
  readonly point: DrawnPoint;
  readonly describedBy: string;
}

function PointButton({ form, kind, index, point, describedBy }: PointButtonProps) {
  const isChosen = useApp((state) => state.pencil.chosen === index);
  const actions = useActions();
  const words = useWords().draw;
  const nudge = (step: readonly [number, number], mm: number) => {
    const [x, y] = surfaceDrawnOn(form).evaluate(Float64Array.of(point.u, point.v));
    const u = point.u + (step[0] * mm) / Math.max(40, Math.hypot(x, y));
    actions.moveDrawnPoint(kind, index, { u, v: point.v + step[1] * mm, caughtOn: '' });
  };
  return (
    <button
      type="button"
      className="point-button"
      aria-pressed={isChosen}
      aria-label={words.pointOf[kind](index + 1)}
      aria-describedby={describedBy}
      onClick={() => actions.setPencil({ chosen: index })}
      onFocus={() => actions.setPencil({ chosen: index })}
      onKeyDown={(event) => {
        const step = STEPS[event.key];
        if (event.key === 'Delete') actions.removeDrawnPoint(kind, index);
        if (!step) return;
        event.preventDefault();
        nudge(step, event.shiftKey ? 10 : 1);
      }}
    >
      {index + 1}
    </button>
  );
}

import { useMemo } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { seamColour } from '../../store/index.ts';
import { pathSeen, pointsOfPath, type Side, viewFromSide } from '../parts/side-drawing.ts';
import { useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** Front and back of the body as plain line drawings: outline, level lines and seams, seen straight on. */
export function BodyOutline() {
  const form = useApp((state) => state.form);
  return form ? (
    <div className="body-outline">
      <OneSide form={form} side="front" />
      <OneSide form={form} side="back" />
    </div>
  ) : null;
}

function OneSide({ form, side }: { readonly form: Form; readonly side: Side }) {
  const highlight = useApp((state) => state.highlight);
  const words = useWords().picture;
  const drawing = useMemo(() => {
    const { mesh, seams, levels } = form.shell;
    const view = viewFromSide(mesh.positions, side);
    return {
      view,
      levels: levels.map(({ vertices }) => pathSeen(pointsOfPath(vertices, mesh.positions, true), view)),
      seams: seams.map(({ id, points }) => ({ id, d: pathSeen(pointsOfPath(points, mesh.positions), view) })),
    };
  }, [form, side]);
  return (
    <svg className="one-side" viewBox={drawing.view.viewBox} role="img" aria-label={words.from[side]}>
      <path d={drawing.view.outline} className="outline-edge" />
      <path d={drawing.levels.join('')} className="outline-level" />
      {drawing.seams.map(({ id, d }, index) => (
        <path
          key={id}
          d={d}
          className="outline-seam"
          stroke={seamColour(index)}
          data-lit={(highlight?.kind === 'seam' && highlight.id === id) || undefined}
        />
      ))}
    </svg>
  );
}

import { useMemo } from 'react';
import type { SeamLayout } from '../../../core/seams/index.ts';
import { pathSeen, viewFromSide } from '../parts/side-drawing.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** The layout's seams on this body, from the front and the back. */
export function LayoutPicture({ layout }: { readonly layout: SeamLayout }) {
  const sketch = useApp((state) => state.sketches?.layouts[layout.id]);
  const positions = useApp((state) => state.form?.shell.mesh.positions);
  const views = useMemo(
    () => (positions ? [viewFromSide(positions, 'front'), viewFromSide(positions, 'back')] : []),
    [positions],
  );
  return (
    <span className="layout-picture" aria-hidden="true">
      {views.map((view) => (
        // biome-ignore lint/a11y/noSvgWithoutTitle: hidden from screen readers, the card has a name
        <svg key={view.side} viewBox={view.viewBox}>
          <path d={view.outline} className="outline-cloth" />
          {sketch && (
            <path d={sketch.lines.map((line) => pathSeen(line, view)).join('')} className="outline-thread" />
          )}
        </svg>
      ))}
    </span>
  );
}

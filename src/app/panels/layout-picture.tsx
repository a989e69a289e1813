import type { SeamLayout } from '../../core/seams/index.ts';
import { useApp } from './workroom-context.tsx';

/** The layout's seams on this body, from the front and the back. */
export function LayoutPicture({ layout }: { readonly layout: SeamLayout }) {
  const sketch = useApp((state) => state.sketches[layout.id]);
  return (
    <span className="layout-picture" aria-hidden="true">
      {sketch && <span>{sketch.length}</span>}
    </span>
  );
}

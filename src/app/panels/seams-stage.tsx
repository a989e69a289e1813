import { formatLength } from '../../core/base/index.ts';
import { LAYOUTS, type SeamLayout } from '../../core/seams/index.ts';
import { threadColour } from '../store/index.ts';
import { LayoutPicture } from './layout-picture.tsx';
import { percent } from './say-numbers.ts';
import { useActions, useApp } from './workroom-context.tsx';

/** Choosing how the body is cut into panels. */
export function SeamsStage() {
  return (
    <div className="stage seams-stage">
      <header className="stage-head">
        <h2>Seams</h2>
        <p>
          More seams follow the body more truly and cost more sewing. Seams pass over the bust points and
          blades.
        </p>
      </header>
      <fieldset className="layouts">
        <legend className="visually-hidden">Seam layout</legend>
        {LAYOUTS.map((layout) => (
          <LayoutCard key={layout.id} layout={layout} />
        ))}
      </fieldset>
      <SeamList />
    </div>
  );
}

function LayoutCard({ layout }: { readonly layout: SeamLayout }) {
  const chosen = useApp((state) => state.project?.seams.layout ?? LAYOUTS[0].id);
  const actions = useActions();
  const isChosen = chosen === layout.id;
  return (
    <label className="layout-card" data-chosen={isChosen || undefined}>
      <input
        type="radio"
        name="layout"
        checked={isChosen}
        onChange={() => actions.setLayout(layout.id, layout.name.toLowerCase())}
      />
      <LayoutPicture layout={layout} />
      <span className="layout-text">
        <span className="layout-name">{layout.name}</span>
        <span className="measure-how">{layout.description}</span>
        {isChosen && <LayoutStrain layout={layout} />}
      </span>
    </label>
  );
}

function LayoutStrain({ layout }: { readonly layout: SeamLayout }) {
  const panels = useApp((state) =>
    state.formOf?.seams.layout === layout.id || layout.id === LAYOUTS[0].id
      ? state.form?.report.panels
      : undefined,
  );
  if (!panels || panels.length === 0) return null;
  const area = panels.reduce((sum, panel) => sum + panel.area3d, 0);
  const square = panels.reduce((sum, panel) => sum + panel.strain.rms ** 2 * panel.area3d, 0);
  return (
    <span className="layout-strain">
      On this body: {panels.length} pieces, strain {percent(Math.sqrt(square / area), 2)}
    </span>
  );
}

function SeamList() {
  const seams = useApp((state) => state.form?.report.seams);
  const highlight = useApp((state) => state.highlight);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  if (!seams) return null;
  return (
    <section aria-labelledby="seam-list-title">
      <h3 id="seam-list-title">Seams on the body</h3>
      <ul className="seam-list">
        {seams.map((seam, index) => (
          <li
            key={seam.id}
            data-lit={(highlight?.kind === 'seam' && highlight.id === seam.id) || undefined}
            onPointerEnter={() => actions.pointAt({ kind: 'seam', id: seam.id })}
            onPointerLeave={() => actions.pointAt(null)}
          >
            <span className="seam-tag" style={{ color: threadColour(index) }}>
              <span>{seam.letter}</span>
            </span>
            <span className="seam-name">{seam.name}</span>
            <span className="number">{formatLength(seam.length3d, unit)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

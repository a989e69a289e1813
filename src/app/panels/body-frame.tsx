import type { ReactNode } from 'react';
import { type Layers, photoSideOf, type Stage, type ViewName } from '../store/index.ts';
import { BodyOutline } from './body-outline.tsx';
import { Icon } from './icon.tsx';
import { PhotoView } from './photo-view.tsx';
import { SceneBoundary } from './scene-boundary.tsx';
import { StrainLegend } from './strain-legend.tsx';
import { useActions, useApp } from './workroom-context.tsx';

const VIEWS: readonly { readonly id: ViewName; readonly name: string }[] = [
  { id: 'front', name: 'Front' },
  { id: 'threeQuarter', name: 'Three-quarter' },
  { id: 'side', name: 'Side' },
  { id: 'back', name: 'Back' },
];

/** The body, always in view, with its standard views and what is drawn on it. */
export function BodyFrame({ scene }: { readonly scene: ReactNode | null }) {
  const stage = useApp((state) => state.stage);
  const hasForm = useApp((state) => state.form !== null);
  const hasFailed = useApp((state) => state.failure !== null);
  const form = useApp((state) => state.form);
  // Only straight from the front or the side: from elsewhere a photo tells nothing.
  const photo = useApp((state) => {
    const side = photoSideOf(state.view.name);
    return state.stage === 'body' && state.layers.photo && side ? state.photos[side] : null;
  });
  return (
    <section className="body-frame" aria-label="The body">
      {/* biome-ignore-start lint/a11y/noNoninteractiveTabindex: arrow keys turn the body, as the label says */}
      {/* biome-ignore-start lint/a11y/useSemanticElements: a picture with keys, not a set of form fields */}
      <div
        className="body-picture"
        role="group"
        tabIndex={0}
        data-body-keys
        aria-label={PICTURE_LABEL}
        inert={photo !== null}
      >
        {scene === null ? <NoPicture /> : <SceneBoundary fallback={<NoPicture />}>{scene}</SceneBoundary>}
        {!hasForm && <p className="waiting">{hasFailed ? 'No body yet' : 'Working out the body…'}</p>}
      </div>
      {/* biome-ignore-end lint/a11y/useSemanticElements: see above */}
      {/* biome-ignore-end lint/a11y/noNoninteractiveTabindex: see above */}
      {photo && form && <PhotoView key={photo.side} form={form} photo={photo} />}
      {(scene !== null || photo) && <ViewTools />}
      <LayerTools stage={stage} />
      {stage === 'panels' && <StrainLegend />}
    </section>
  );
}

const PICTURE_LABEL = 'Picture of the body. Arrow keys turn it, plus and minus bring it nearer or farther.';

function NoPicture() {
  return (
    <div className="no-picture">
      <BodyOutline />
      <p>
        This browser cannot draw in three dimensions here (WebGL is missing or switched off), so the body is
        shown as an outline. Measures, seams and panels work all the same.
      </p>
    </div>
  );
}

function ViewTools() {
  const view = useApp((state) => state.view.name);
  const actions = useActions();
  return (
    <fieldset className="view-tools">
      <legend className="visually-hidden">Turn the body</legend>
      {VIEWS.map(({ id, name }) => (
        <button
          key={id}
          type="button"
          data-last={id === view || undefined}
          onClick={() => actions.turnTo(id)}
        >
          {name}
        </button>
      ))}
      <button
        type="button"
        className="icon-only"
        aria-label="Save this picture"
        title="Save this picture"
        onClick={actions.takePicture}
      >
        <Icon name="picture" />
      </button>
    </fieldset>
  );
}

const STAGE_LAYERS: Readonly<Record<Stage, readonly { readonly id: keyof Layers; readonly name: string }[]>> =
  {
    tape: [{ id: 'arms', name: 'Arms' }],
    body: [
      { id: 'photo', name: 'Photo' },
      { id: 'levels', name: 'Level lines' },
      { id: 'tapes', name: 'Tape paths' },
      { id: 'seams', name: 'Seam lines' },
      { id: 'arms', name: 'Arms' },
    ],
    seams: [],
    panels: [{ id: 'strain', name: 'Strain' }],
    inside: [],
    cutting: [],
    making: [],
    checking: [],
  };

function LayerTools({ stage }: { readonly stage: Stage }) {
  const layers = useApp((state) => state.layers);
  const actions = useActions();
  const hasArms = useApp((state) => (state.form?.body.arms.length ?? 0) > 0);
  const hasPhoto = useApp(({ photos }) => photos.front !== null || photos.side !== null);
  const offered = STAGE_LAYERS[stage].filter(
    ({ id }) => (id !== 'arms' || hasArms) && (id !== 'photo' || hasPhoto),
  );
  if (offered.length === 0) return null;
  return (
    <fieldset className="layer-tools">
      <legend className="visually-hidden">Drawn on the body</legend>
      {offered.map(({ id, name }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={layers[id]}
            onChange={(event) => actions.showLayer(id, event.target.checked)}
          />
          {name}
        </label>
      ))}
    </fieldset>
  );
}

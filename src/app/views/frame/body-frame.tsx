import type { ReactNode } from 'react';
import { FIRST_MEASURES } from '../../../core/body/index.ts';
import type { Project } from '../../../core/project/index.ts';
import { guessIn, isShown, photoSideOf, stageOf, type ViewName } from '../../store/index.ts';
import { FallbackBoundary } from '../parts/fallback-boundary.tsx';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { BodyOutline } from './body-outline.tsx';
import { FilledLegend } from './filled-legend.tsx';
import { LayerTools } from './layer-tools.tsx';
import { PhotoView } from './photo-view.tsx';
import { StrainLegend } from './strain-legend.tsx';
import { VeilLegend } from './veil-legend.tsx';

const VIEWS: readonly ViewName[] = ['front', 'threeQuarter', 'side', 'back'];

/** The body, always in view, with its standard views and what is drawn on it. */
export function BodyFrame({ scene }: { readonly scene: ReactNode | null }) {
  const stage = useApp((state) => state.stage);
  const words = useWords().picture;
  const hasForm = useApp((state) => state.form !== null);
  const form = useApp((state) => state.form);
  // Only straight from the front or the side: from elsewhere a photo tells nothing.
  const photo = useApp((state) => {
    const side = photoSideOf(state.view.name);
    return side && isShown(stageOf(state.stage), 'photo', state.layers) ? state.photos[side] : null;
  });
  return (
    <section className="body-frame" aria-label={words.frame}>
      {/* biome-ignore-start lint/a11y/noNoninteractiveTabindex: arrow keys turn the body, as the label says */}
      {/* biome-ignore-start lint/a11y/useSemanticElements: a picture with keys, not a set of form fields */}
      <div
        className="body-picture"
        role="group"
        tabIndex={0}
        data-body-keys
        aria-label={words.label}
        inert={photo !== null}
      >
        {scene === null ? (
          <NoPicture />
        ) : (
          <FallbackBoundary fallback={<NoPicture />}>{scene}</FallbackBoundary>
        )}
        {!hasForm && <Waiting isDrawn={scene !== null} />}
      </div>
      {/* biome-ignore-end lint/a11y/useSemanticElements: see above */}
      {/* biome-ignore-end lint/a11y/noNoninteractiveTabindex: see above */}
      {photo && form && <PhotoView key={photo.side} form={form} photo={photo} />}
      {(scene !== null || photo) && <ViewTools hasPhoto={photo !== null} />}
      {(scene !== null || photo) && <LayerTools stage={stage} hasPhoto={photo !== null} />}
      {stageOf(stage).layers.includes('strain') && <StrainLegend />}
      <VeilLegend />
      {scene !== null && <FilledLegend />}
    </section>
  );
}

/** Said while there is no form: what is still missing, or that it is under way. */
function Waiting({ isDrawn }: { readonly isDrawn: boolean }) {
  const words = useWords().picture;
  const hasFailed = useApp((state) => state.failure !== null);
  const hasGuess = useApp((state) => guessIn(state) !== null) && isDrawn;
  const given = useApp(({ project }) => (project ? countFirst(project) : FIRST_MEASURES.length));
  const all = FIRST_MEASURES.length;
  const lacking = given === 0 ? words.usual : words.grown(given, all);
  return (
    <p className="waiting" role="status" data-over-guess={hasGuess || undefined}>
      {given < all ? lacking : hasFailed ? words.none : words.working}
    </p>
  );
}

const countFirst = ({ body }: Project) =>
  FIRST_MEASURES.filter((id) => body.measures[id] !== undefined).length;

function NoPicture() {
  const words = useWords().picture;
  return (
    <div className="no-picture">
      <BodyOutline />
      <p>{words.outlineOnly}</p>
    </div>
  );
}

/** A photo under the body is not part of the picture that can be saved. */
function ViewTools({ hasPhoto }: { readonly hasPhoto: boolean }) {
  const view = useApp((state) => state.view.name);
  const words = useWords().picture;
  const actions = useActions();
  return (
    <fieldset className="view-tools">
      <legend className="visually-hidden">{words.turn}</legend>
      {VIEWS.map((id) => (
        <button
          key={id}
          type="button"
          data-last={id === view || undefined}
          onClick={() => actions.turnTo(id)}
        >
          {words.views[id]}
        </button>
      ))}
      <button
        type="button"
        className="icon-only"
        aria-label={words.save}
        title={words.save}
        disabled={hasPhoto}
        onClick={actions.takePicture}
      >
        <Icon name="picture" />
      </button>
    </fieldset>
  );
}

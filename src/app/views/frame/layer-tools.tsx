import { useId } from 'react';
import { LAYING_OPTIONS } from '../../../core/laying/index.ts';
import { type Layers, type Stage, stageOf } from '../../store/index.ts';
import { useNarrow } from '../parts/use-narrow.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

const OVER_PHOTO: readonly (keyof Layers)[] = ['photo', 'levels'];

interface LayerToolsProps {
  readonly stage: Stage;
  /** The body is seen over a photo. */
  readonly hasPhoto: boolean;
}

/** What is drawn on the body, to switch on and off. */
export function LayerTools({ stage, hasPhoto }: LayerToolsProps) {
  const layers = useApp((state) => state.layers);
  const words = useWords().picture;
  const actions = useActions();
  const reason = useId();
  const hasArms = useApp((state) => (state.form?.body.arms.length ?? 0) > 0);
  const hasPhotos = useApp(({ photos }) => photos.front !== null || photos.side !== null);
  const isAlike = useApp((state) => state.form?.body.shape.isMirrorSymmetric ?? true);
  const isPrinted = useApp(
    ({ project }) => (project?.laying?.shell?.print?.kind ?? LAYING_OPTIONS.print.kind.usual) !== 'plain',
  );
  const isOffered: Partial<Record<keyof Layers, boolean>> = {
    arms: hasArms,
    photo: hasPhotos,
    mirror: !isAlike,
    print: isPrinted,
  };
  const offered = stageOf(stage).layers.filter((id) => isOffered[id] ?? true);
  const isNarrow = useNarrow();
  if (offered.length === 0) return null;
  const choices = (
    <fieldset>
      <legend className="visually-hidden">{words.drawn}</legend>
      {offered.map((id) => {
        const isIdle = hasPhoto && !OVER_PHOTO.includes(id);
        return (
          <label key={id} data-idle={isIdle || undefined}>
            <input
              type="checkbox"
              checked={layers[id]}
              disabled={isIdle}
              aria-describedby={isIdle ? reason : undefined}
              onChange={(event) => actions.showLayer(id, event.target.checked)}
            />
            {words.layers[id]}
          </label>
        );
      })}
      {hasPhoto && (
        <p id={reason} className="layer-reason">
          {words.notOverPhoto}
        </p>
      )}
    </fieldset>
  );
  // A long list would hide the body on a phone.
  return isNarrow && offered.length > 2 ? (
    <details className="layer-tools">
      <summary>{words.drawn}</summary>
      {choices}
    </details>
  ) : (
    <div className="layer-tools">{choices}</div>
  );
}

import { useEffect, useState } from 'react';
import type { Body } from '../../../core/body/index.ts';
import type { DistancePicture } from '../../calls/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';

/** How far the other body lies outside or inside this one, as figures and as a coloured picture. */
export function DistanceMap() {
  const ghost = useApp((state) => state.ghost);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const shown = useDistances();
  const words = useWords().compare;
  const { fineLength } = useNumbers();
  if (!ghost || shown?.of !== ghost.body) return null;
  const { distances, url } = shown;
  return (
    <div className="distance-map">
      <p className="quiet">{words.distances}</p>
      <dl className="numbers">
        <div>
          <dt>{words.typical}</dt>
          <dd>{fineLength(distances.rms, unit)}</dd>
        </div>
        <div>
          <dt>{words.outside}</dt>
          <dd>{fineLength(Math.max(0, distances.mostOutside), unit)}</dd>
        </div>
        <div>
          <dt>{words.inside}</dt>
          <dd>{fineLength(Math.max(0, -distances.mostInside), unit)}</dd>
        </div>
      </dl>
      <img src={url} alt={words.picture(ghost.name)} />
    </div>
  );
}

interface ShownDistances {
  /** The other body. */
  readonly of: Body;
  readonly distances: DistancePicture;
  readonly url: string;
}

/** Made anew once this body has settled; the last stays until then. */
function useDistances(): ShownDistances | null {
  const other = useApp((state) => state.ghost?.body);
  const body = useApp((state) => (state.formQuality === 'full' ? state.form?.body : undefined));
  const services = useServices();
  const [shown, setShown] = useState<ShownDistances | null>(null);
  useEffect(() => {
    if (!other || !body) return;
    let isWanted = true;
    void services.worker.pictureDistance(body, other).then((distances) => {
      if (!isWanted || !distances) return;
      const url = URL.createObjectURL(new Blob([distances.picture], { type: 'image/svg+xml' }));
      setShown({ of: other, distances, url });
    });
    return () => {
      isWanted = false;
    };
  }, [other, body, services]);
  useEffect(() => () => (shown ? URL.revokeObjectURL(shown.url) : undefined), [shown]);
  return shown;
}

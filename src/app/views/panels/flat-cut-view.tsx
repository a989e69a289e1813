import { useEffect, useMemo, useState } from 'react';
import type { Result } from '../../../core/base/index.ts';
import type { CutWish, FlatCut } from '../../calls/index.ts';
import { Issues } from '../parts/core-text.tsx';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';

/** The piece as it lies flat: its strain as figures and colour, to take away in true size. */
export function FlatCutView({ wish }: { readonly wish: CutWish }) {
  const { made, isBehind } = useFlatCut(wish);
  const services = useServices();
  const words = useWords().ownPiece;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const cut = made?.ok ? made.value : null;
  const url = useMemo(
    () => (cut ? URL.createObjectURL(new Blob([cut.picture], { type: 'image/svg+xml' })) : null),
    [cut],
  );
  useEffect(() => () => (url ? URL.revokeObjectURL(url) : undefined), [url]);
  if (!made) return <p className="quiet">{words.unrolling}</p>;
  if (!cut || !url) {
    return (
      <p className="field-message" role="alert">
        <Issues issues={made.issues} />
      </p>
    );
  }
  return (
    <div className="flat-cut" data-behind={isBehind || undefined} aria-busy={isBehind}>
      <dl className="numbers">
        <div>
          <dt>{words.area}</dt>
          <dd>{numbers.area(cut.area, unit)}</dd>
        </div>
        <div>
          <dt>{words.roundBody}</dt>
          <dd>{numbers.length(cut.length3d, unit)}</dd>
        </div>
        <div>
          <dt>{words.roundFlat}</dt>
          <dd>{numbers.length(cut.lengthFlat, unit)}</dd>
        </div>
        <div>
          <dt>{words.strain}</dt>
          <dd>{numbers.percent(cut.strain, 2)}</dd>
        </div>
        <div>
          <dt>{words.fromTo}</dt>
          <dd>
            {numbers.signedPercent(cut.min)}, {numbers.signedPercent(cut.max)}
          </dd>
        </div>
      </dl>
      <img src={url} alt={words.picture} />
      <button
        type="button"
        className="main"
        disabled={isBehind}
        onClick={() => services.saveSvg(cut.picture, 'own-piece')}
      >
        {words.download}
      </button>
      <p className="measure-how">{words.about}</p>
    </div>
  );
}

/** Made anew when the wish or the project changes; the last stays until then, behind. */
function useFlatCut(wish: CutWish): { readonly made: Result<FlatCut> | null; readonly isBehind: boolean } {
  const services = useServices();
  const body = useApp((state) => state.project?.body);
  const [last, setLast] = useState<{ made: Result<FlatCut>; of: CutWish; body: typeof body } | null>(null);
  useEffect(() => {
    let isWanted = true;
    void services.worker.flattenCut(wish).then((made) => {
      if (isWanted && made) setLast({ made, of: wish, body });
    });
    return () => {
      isWanted = false;
    };
  }, [wish, services, body]);
  return { made: last?.made ?? null, isBehind: last?.of !== wish || last.body !== body };
}

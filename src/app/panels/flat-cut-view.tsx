import { useEffect, useMemo, useState } from 'react';
import { formatLength, type Result } from '../../core/base/index.ts';
import { percent, signedPercent } from './say-numbers.ts';
import { type CutWish, type FlatCut, useApp, useServices } from './workroom-context.tsx';

/** The piece as it lies flat: its strain as figures and colour, to take away in true size. */
export function FlatCutView({ wish }: { readonly wish: CutWish }) {
  const made = useFlatCut(wish);
  const services = useServices();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const cut = made?.ok ? made.value : null;
  const url = useMemo(
    () => (cut ? URL.createObjectURL(new Blob([cut.picture], { type: 'image/svg+xml' })) : null),
    [cut],
  );
  useEffect(() => () => (url ? URL.revokeObjectURL(url) : undefined), [url]);
  if (!made) return <p className="quiet">Unrolling…</p>;
  if (!cut || !url) {
    return (
      <p className="field-message" role="alert">
        {made.issues.map(({ message }) => message).join(' ')}
      </p>
    );
  }
  return (
    <div className="flat-cut">
      <dl className="numbers">
        <div>
          <dt>Area</dt>
          <dd>{(cut.area / 100).toFixed(0)} cm²</dd>
        </div>
        <div>
          <dt>Round it, on the body</dt>
          <dd>{formatLength(cut.length3d, unit)}</dd>
        </div>
        <div>
          <dt>Round it, flat</dt>
          <dd>{formatLength(cut.lengthFlat, unit)}</dd>
        </div>
        <div>
          <dt>Typical strain</dt>
          <dd>{percent(cut.rms, 2)}</dd>
        </div>
        <div>
          <dt>95 of 100 below</dt>
          <dd>{percent(cut.p95)}</dd>
        </div>
        <div>
          <dt>From, to</dt>
          <dd>
            {signedPercent(cut.min)}, {signedPercent(cut.max)}
          </dd>
        </div>
      </dl>
      <img src={url} alt="The piece laid flat, coloured by strain" />
      <button type="button" className="main" onClick={() => services.saveSvg(cut.picture, 'own-piece')}>
        Download this piece
      </button>
      <p className="measure-how">
        SVG at true size, without seam allowance. Measure its bars before cutting.
      </p>
    </div>
  );
}

/** Made anew when the wish or the project changes; the last stays until then. */
function useFlatCut(wish: CutWish): Result<FlatCut> | null {
  const services = useServices();
  const body = useApp((state) => state.project?.body);
  const [made, setMade] = useState<Result<FlatCut> | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another body gives another piece
  useEffect(() => {
    let isWanted = true;
    void services.unrollCut(wish).then((answer) => {
      if (isWanted && answer) setMade(answer);
    });
    return () => {
      isWanted = false;
    };
  }, [wish, services, body]);
  return made;
}

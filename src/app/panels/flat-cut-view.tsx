import { useEffect, useMemo, useState } from 'react';
import type { Result } from '../../core/base/index.ts';
import { Issues } from './core-text.tsx';
import { useNumbers, useWords } from './use-words.ts';
import { type CutWish, type FlatCut, useApp, useServices } from './workroom-context.tsx';

/** The piece as it lies flat: its strain as figures and colour, to take away in true size. */
export function FlatCutView({ wish }: { readonly wish: CutWish }) {
  const made = useFlatCut(wish);
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
    <div className="flat-cut">
      <dl className="numbers">
        <div>
          <dt>{words.area}</dt>
          <dd>{numbers.fixed(cut.area / 100, 0)} cm²</dd>
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
          <dt>{words.typical}</dt>
          <dd>{numbers.percent(cut.rms, 2)}</dd>
        </div>
        <div>
          <dt>{words.p95}</dt>
          <dd>{numbers.percent(cut.p95)}</dd>
        </div>
        <div>
          <dt>{words.fromTo}</dt>
          <dd>
            {numbers.signedPercent(cut.min)}, {numbers.signedPercent(cut.max)}
          </dd>
        </div>
      </dl>
      <img src={url} alt={words.picture} />
      <button type="button" className="main" onClick={() => services.saveSvg(cut.picture, 'own-piece')}>
        {words.download}
      </button>
      <p className="measure-how">{words.about}</p>
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

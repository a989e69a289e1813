import { STRAIN_LIMIT, strainCss } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';

const STEPS = 21;

/** The key to the strain colours, in per cent. */
export function StrainLegend() {
  const strains = Array.from({ length: STEPS }, (_, i) => ((i / (STEPS - 1)) * 2 - 1) * STRAIN_LIMIT);
  const words = useWords().picture;
  const limit = (STRAIN_LIMIT * 100).toFixed(0);
  return (
    <figure className="strain-legend">
      <svg viewBox={`0 0 ${STEPS} 1`} preserveAspectRatio="none" aria-hidden="true">
        {strains.map((strain, i) => (
          <rect key={strain} x={i} width={1.05} height={1} fill={strainCss(strain)} />
        ))}
      </svg>
      <figcaption>
        <span>{words.shrink(limit)}</span>
        <span>0</span>
        <span>{words.stretch(limit)}</span>
      </figcaption>
    </figure>
  );
}

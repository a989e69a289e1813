import { isShown, stageOf, VEIL_FROM, VEIL_TO } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** The key to the veil, while one lies on the body. */
export function VeilLegend() {
  const isOn = useApp(({ stage, layers }) => isShown(stageOf(stage), 'veil', layers));
  const isKnown = useApp((state) => state.uncertainty !== null);
  const words = useWords().picture;
  if (!isOn || !isKnown) return null;
  return (
    <figure className="strain-legend veil-legend">
      <div className="veil-shades" aria-hidden="true" />
      <figcaption>
        <span>{words.sure(VEIL_FROM)}</span>
        <span />
        <span>{words.unsure(VEIL_TO)}</span>
      </figcaption>
    </figure>
  );
}

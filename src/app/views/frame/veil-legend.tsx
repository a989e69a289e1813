import { isShown, stageOf, VEIL_FROM, VEIL_TO } from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** The key to the veil, while one lies on the body. */
export function VeilLegend() {
  const isOn = useApp(({ stage, layers }) => isShown(stageOf(stage), 'veil', layers));
  const isKnown = useApp((state) => state.uncertainty !== null);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const words = useWords().picture;
  const { small } = useNumbers();
  if (!isOn || !isKnown) return null;
  return (
    <figure className="strain-legend veil-legend">
      <div className="veil-shades" aria-hidden="true" />
      <figcaption>
        <span>{words.sure(small(VEIL_FROM, unit))}</span>
        <span />
        <span>{words.unsure(small(VEIL_TO, unit))}</span>
      </figcaption>
    </figure>
  );
}

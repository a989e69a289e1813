import type { Stage } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { StageGuide } from './stage-guide.tsx';

/** The name of a stage, and beside it what to do there. */
export function StageTitle({ stage }: { readonly stage: Stage }) {
  const { names } = useWords().stages;
  return (
    <>
      <h2>{names[stage]}</h2>
      <StageGuide stage={stage} />
    </>
  );
}

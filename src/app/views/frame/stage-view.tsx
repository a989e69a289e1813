import { type ComponentType, lazy, Suspense, useEffect } from 'react';
import { STAGES, type Stage } from '../../store/index.ts';
import { FallbackBoundary } from '../parts/fallback-boundary.tsx';
import { useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { TapeStage } from '../tape/tape-stage.tsx';
import { NotLoaded } from './not-loaded.tsx';

const loadLateStages = () => import('./late-stages.ts');
const late = (stage: Exclude<Stage, 'tape'> | 'verdict') =>
  lazy(async () => ({ default: (await loadLateStages())[stage] }));

const STAGE_VIEWS: ReadonlyMap<Stage, ComponentType> = new Map(
  STAGES.map(({ id }) => [id, id === 'tape' ? TapeStage : late(id)]),
);

const VerdictLine = late('verdict');

/** The verdict on the form, once there is something to judge; without its part of the program there is none. */
export function LateVerdict() {
  const hasAny = useApp((state) => state.form !== null || state.failure !== null);
  return (
    hasAny && (
      <FallbackBoundary fallback={null}>
        <Suspense fallback={null}>
          <VerdictLine />
        </Suspense>
      </FallbackBoundary>
    )
  );
}

/** The work of one stage. The later ones are loaded once the first form is there, or when asked for. */
export function StageView({ stage }: { readonly stage: Stage }) {
  const words = useWords();
  const hasForm = useApp((state) => state.form !== null);
  useEffect(() => {
    // Tried again, and told, when a stage is asked for.
    if (hasForm) loadLateStages().catch(() => {});
  }, [hasForm]);
  const View = STAGE_VIEWS.get(stage) ?? TapeStage;
  return (
    <FallbackBoundary key={stage} fallback={<NotLoaded />}>
      <Suspense fallback={<p className="quiet waiting-stage">{words.top.opening}</p>}>
        <View />
      </Suspense>
    </FallbackBoundary>
  );
}

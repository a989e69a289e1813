import { lazy, Suspense } from 'react';
import { FallbackBoundary } from '../parts/fallback-boundary.tsx';
import { useApp } from '../parts/workroom-context.tsx';

const Afterwards = lazy(async () => ({ default: (await import('./late-stages.ts')).Afterwards }));
const StageGuide = lazy(async () => ({ default: (await import('./late-stages.ts')).StageGuide }));

/** What the page can do without while it opens, and where it cannot be loaded. */
export function LateParts() {
  return (
    <FallbackBoundary fallback={null}>
      <Suspense fallback={null}>
        <Afterwards />
      </Suspense>
    </FallbackBoundary>
  );
}

/** What to do at the first stage; the others bring it along. */
export function LateGuide() {
  const hasAny = useApp((state) => state.form !== null || state.failure !== null);
  return (
    hasAny && (
      <FallbackBoundary fallback={null}>
        <Suspense fallback={null}>
          <StageGuide stage="tape" />
        </Suspense>
      </FallbackBoundary>
    )
  );
}

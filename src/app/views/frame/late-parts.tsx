import { lazy, Suspense } from 'react';
import { FallbackBoundary } from '../parts/fallback-boundary.tsx';

const Afterwards = lazy(async () => ({ default: (await import('./late-stages.ts')).Afterwards }));

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

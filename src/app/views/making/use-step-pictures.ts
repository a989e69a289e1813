import { useEffect, useRef, useState } from 'react';
import type { WorkStep } from '../../../core/form/index.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';

const NONE: ReadonlyMap<string, string> = new Map();

/**
 * Addresses of the steps' pictures by their ids, as far as they are drawn: that of the step looked at first, then its neighbours', then
 * all others'. Anew for every full form.
 */
export function useStepPictures(stepId: string): ReadonlyMap<string, string> {
  const steps = useApp((state) => (state.formQuality === 'full' ? state.form?.making?.steps : undefined));
  const { worker } = useServices();
  const [pictures, setPictures] = useState(NONE);
  const lookedAt = useRef(stepId);
  lookedAt.current = stepId;
  useEffect(() => {
    if (!steps) return;
    const drawn = new Map<string, string>();
    let isOver = false;
    const next = (): string | null => (isOver ? null : nearestWithout(drawn, steps, lookedAt.current));
    const receive = (id: string, picture: string): string | null => {
      if (isOver) return null;
      drawn.set(id, URL.createObjectURL(new Blob([picture], { type: 'image/svg+xml' })));
      setPictures(new Map(drawn));
      return next();
    };
    const first = next();
    if (first !== null) void worker.drawSteps(first, receive);
    return () => {
      isOver = true;
      for (const address of drawn.values()) URL.revokeObjectURL(address);
      setPictures(NONE);
    };
  }, [steps, worker]);
  return pictures;
}

/** The step nearest to one that has no picture yet, rather after it than before; null when all have one. */
function nearestWithout(
  drawn: ReadonlyMap<string, string>,
  steps: readonly WorkStep[],
  stepId: string,
): string | null {
  const at = Math.max(
    0,
    steps.findIndex(({ id }) => id === stepId),
  );
  const lacking = steps.flatMap(({ id }, i) => (drawn.has(id) ? [] : [{ id, far: Math.abs(i - at - 0.1) }]));
  return lacking.toSorted((a, b) => a.far - b.far)[0]?.id ?? null;
}

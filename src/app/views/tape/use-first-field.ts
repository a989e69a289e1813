import { useEffect, useRef } from 'react';
import { useApp } from '../parts/workroom-context.tsx';

/** The list whose first field has the focus when a body is opened of which nothing is known yet. */
export function useFirstField() {
  const list = useRef<HTMLUListElement>(null);
  const bodyId = useApp((state) => state.bodyId);
  const isEmpty = useApp(
    ({ project }) => project !== null && Object.keys(project.body.measures).length === 0,
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: not when the last measure is taken away again
  useEffect(() => {
    if (isEmpty) list.current?.querySelector('input')?.focus();
  }, [bodyId]);
  return list;
}

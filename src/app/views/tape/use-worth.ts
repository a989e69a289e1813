import { useEffect, useState } from 'react';
import { useApp } from '../parts/workroom-context.tsx';

/** What each measure not typed would leave open of the shape, mm by id: the less, the more it tells. */
export type Worth = Readonly<Record<string, number>>;
const NONE: Worth = {};

/**
 * As it was first told of the body that is open: fields do not change places while they are filled in. While one of those to be put
 * in order has the focus it is left for later.
 */
export function useWorth(): Worth {
  const bodyId = useApp((state) => state.bodyId);
  const told = useApp(({ uncertainty, project }) =>
    uncertainty && uncertainty.body === project?.body ? uncertainty.suggestions : null,
  );
  const [kept, keep] = useState<{ readonly bodyId: string; readonly worth: Worth } | null>(null);
  const isKept = kept?.bodyId === bodyId;
  useEffect(() => {
    if (!told || isKept || document.activeElement?.closest('.measure-group')) return;
    keep({ bodyId, worth: Object.fromEntries(told.map(({ id, after }) => [id, after])) });
  }, [told, isKept, bodyId]);
  return isKept ? kept.worth : NONE;
}

/** Most telling first; what is known already, or tells nothing of the shape, keeps its order behind them. */
export function byWorth<T extends { readonly id?: string | undefined }>(
  rows: readonly T[],
  worth: Worth,
): readonly T[] {
  const left = ({ id }: T) => worth[id ?? ''] ?? Number.POSITIVE_INFINITY;
  return rows.toSorted((a, b) => (left(a) === left(b) ? 0 : left(a) - left(b)));
}

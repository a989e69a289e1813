import { useEffect, useRef } from 'react';
import { useApp } from './workroom-context.tsx';

/** Brings a row into view when the thing it tells of is pointed at on the body. */
export function useReveal<E extends HTMLElement>(isLit: boolean) {
  const row = useRef<E>(null);
  const isFromBody = useApp((state) => state.highlight?.isFromBody === true);
  useEffect(() => {
    if (isLit && isFromBody) row.current?.scrollIntoView({ block: 'nearest' });
  }, [isLit, isFromBody]);
  return row as React.RefObject<E & HTMLLIElement & HTMLTableRowElement>;
}

import type { ReactNode } from 'react';
import type { Highlight } from '../../store/index.ts';
import { usePointing } from './use-pointing.ts';
import { useReveal } from './use-reveal.ts';

interface LitRowProps {
  /** Lit everywhere while the row is pointed at. */
  readonly points: Highlight;
  readonly isLit: boolean;
  readonly className?: string;
  readonly children: ReactNode;
}

/** A table row that lights what it tells of, and is lit when that is pointed at elsewhere. */
export function LitRow({ points, isLit, className, children }: LitRowProps) {
  const pointing = usePointing(points);
  const row = useReveal<HTMLTableRowElement>(isLit);
  return (
    <tr ref={row} className={className} data-lit={isLit || undefined} {...pointing}>
      {children}
    </tr>
  );
}

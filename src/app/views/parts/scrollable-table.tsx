import type { ReactNode } from 'react';
import { useWords } from './use-words.ts';

/** Scrolls sideways where the table is wider than its place; by keyboard too. */
export function ScrollableTable({
  label,
  children,
}: {
  readonly label: string;
  readonly children: ReactNode;
}) {
  const words = useWords();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys scroll it
    <section className="table-scroll" aria-label={words.table(label)} tabIndex={0}>
      {children}
    </section>
  );
}

import type { ReactNode } from 'react';

/** Scrolls sideways where the table is wider than its place; by keyboard too. */
export function ScrollableTable({
  label,
  children,
}: {
  readonly label: string;
  readonly children: ReactNode;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys scroll it
    <section className="table-scroll" aria-label={`${label}, table`} tabIndex={0}>
      {children}
    </section>
  );
}

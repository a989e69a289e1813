export interface Column {
  readonly title: string;
  readonly align?: 'left' | 'right';
}

/** A plain text table: columns padded to their widest cell, two spaces between, a rule under the titles. */
export function formatTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((column, i) =>
    Math.max(width(column.title), ...rows.map((row) => width(row[i]))),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => pad(cell, widths[i], columns[i].align ?? 'left'))
      .join('  ')
      .trimEnd();
  return [
    line(columns.map((column) => column.title)),
    line(widths.map((w) => '-'.repeat(w))),
    ...rows.map(line),
  ].join('\n');
}

function width(text: string): number {
  return [...text].length;
}

function pad(text: string, size: number, align: 'left' | 'right'): string {
  const space = ' '.repeat(Math.max(0, size - width(text)));
  return align === 'right' ? space + text : text + space;
}

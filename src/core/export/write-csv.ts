/** A cell: numbers are written with a decimal point and at most three decimals. */
export type CsvCell = string | number;

/**
 * Rows as comma-separated values (RFC 4180: CRLF, quotes doubled), UTF-8 with a byte order mark so that spreadsheets read
 * accents. A text that a spreadsheet would take for a formula gets an apostrophe before it.
 */
export function writeCsv(rows: readonly (readonly CsvCell[])[]): string {
  return `\u{FEFF}${rows.map((row) => `${row.map(writeCell).join(',')}\r\n`).join('')}`;
}

function writeCell(cell: CsvCell): string {
  if (typeof cell === 'number') return Number.isFinite(cell) ? `${Number(cell.toFixed(3))}` : '';
  const text = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

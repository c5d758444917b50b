// Rows as comma-separated values, by RFC 4180: CRLF at the end of every row, quotes where a value needs them.

/** A heading, then the rows. A value is quoted when it holds a comma, a quote or a line's end; a quote is doubled. */
export function csvText(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  return [heads, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

function cell(value: string): string {
  return /[",\r\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value;
}

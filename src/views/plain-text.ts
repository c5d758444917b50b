// Words and tables of figures as plain text, for a terminal of eighty columns.
import type { FigureCell, FigureRow, FigureTable } from './figure-table.ts';

export const WIDTH = 80;

/** Words in lines of at most so many letters; a longer word stands alone. */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line += line === '' ? word : ` ${word}`;
  }
  return line === '' ? lines : [...lines, line];
}

const GAP = 2;

/** Figures stand to the right of their column; the heads of the rows take what room is left, and break. */
export function plainTable({ caption, head, columns, rows, foot }: FigureTable): string {
  const all = foot ? [...rows, foot] : rows;
  const widths = columns.map(({ head: name }, i) =>
    Math.max(name.length, ...all.map(({ cells }) => (cells[i]?.span ? 0 : (cells[i]?.text.length ?? 0)))),
  );
  const figures = widths.reduce((sum, width) => sum + width + GAP, 0);
  const longest = Math.max(
    head.length,
    ...all.flatMap((row) => [row.head, ...notesOf(row)].map(({ length }) => setIn(row).length + length)),
  );
  const first = Math.min(longest, WIDTH - figures);
  const row = (each: FigureRow, i?: number) => [
    ...(each.begins && i ? [''] : []),
    ...rowLines(each, first, widths),
  ];
  const rule = '-'.repeat(first + figures);
  const heads = columns.map(({ head: name }, i) => ' '.repeat(GAP) + name.padStart(widths[i] ?? 0)).join('');
  return [
    caption,
    '',
    (head.padEnd(first) + heads).trimEnd(),
    rule,
    ...rows.flatMap((each, i) => row(each, i)),
    ...(foot ? [rule, ...row(foot)] : []),
  ].join('\n');
}

const notesOf = ({ notes = [] }: FigureRow) => notes.map((note) => `  ${note}`);

const setIn = ({ within }: FigureRow) => (within ? '  ' : '');

function rowLines(row: FigureRow, first: number, widths: readonly number[]): string[] {
  const by = setIn(row);
  const [head = '', ...more] = wrapped(row.head, first - by.length).map((line) => by + line);
  const cell = ({ text, span }: FigureCell, i: number) =>
    ' '.repeat(GAP) + (span ? text : text.padStart(widths[i] ?? 0));
  const notes = (row.notes ?? []).flatMap((note) =>
    wrapped(note, first - by.length - 2).map((line) => `${by}  ${line}`),
  );
  return [(head.padEnd(first) + row.cells.map(cell).join('')).trimEnd(), ...more, ...notes];
}

// A table of figures in Markdown: figures to the right of their column, what a row says beside its head in one cell.
import type { FigureRow, FigureTable } from './figure-table.ts';

/** The caption as a heading, and the table below it. */
export function markdownTable({ caption, head, columns, rows, foot }: FigureTable): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const row = (each: FigureRow, strong: boolean) => {
    const [name, ...figures] = [each.head, ...each.cells.map(({ text }) => text)].map((text) => {
      return strong && text !== '' ? `**${plain(text)}**` : plain(text);
    });
    return line([[name, ...(each.notes ?? []).map(plain)].join('; '), ...figures]);
  };
  return [
    `## ${plain(caption)}`,
    '',
    line([plain(head), ...columns.map(({ head: name }) => plain(name))]),
    line(['---', ...columns.map(() => '---:')]),
    ...rows.map((each) => row(each, each.begins ?? false)),
    ...(foot ? [row(foot, true)] : []),
  ].join('\n');
}

/** Words in which nothing is Markdown. */
export function plain(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/[\\`*_[\]<>|~]/g, (sign) => `\\${sign}`);
}

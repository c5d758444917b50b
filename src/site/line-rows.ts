// Rows of the tables of lines. A line stands in a table of every grouping, so that these tables are most of what a large
// site draws: each row is drawn once for all tables with the same columns.

import { escaped } from '../drawing/escaped.ts';
import type { LineRow } from '../views/lines.ts';
import { href } from '../views/links.ts';

/** Which columns a table has besides day, words and charge; `shop` are what a line costs, and where it is written. */
export type LineColumns = { parts: boolean; timed: boolean; shop: boolean };

const drawn = new WeakMap<LineRow, Map<string, string>>();

/** The rows as HTML, for a table on the page at `path`. */
export function lineRows(rows: readonly LineRow[], columns: LineColumns, path: string): string {
  const up = href(path, '');
  const alike = `${columns.parts} ${columns.timed} ${columns.shop} ${up}`;
  return rows
    .map((row) => {
      const known = drawn.get(row) ?? new Map<string, string>();
      const html = known.get(alike) ?? rowHtml(row, columns, up);
      known.set(alike, html);
      drawn.set(row, known);
      return html;
    })
    .join('');
}

function rowHtml(row: LineRow, { parts, timed, shop }: LineColumns, up: string): string {
  const link = (to: string | undefined, text: string) =>
    to === undefined ? escaped(text) : `<a href="${escaped(up + to)}">${escaped(text)}</a>`;
  const notes = row.notes && `<span class="note"> (${escaped(row.notes)})</span>`;
  const narrow = [row.time, parts ? row.part : '', shop ? row.place : ''].filter(Boolean).join(', ');
  return [
    `<tr><td class="nw">${link(row.dayPage, row.day)}</td>`,
    `<td>${escaped(row.text)}${notes} <span class="narrow note">${escaped(narrow)}</span></td>`,
    parts && `<td class="wide">${link(row.partPage, row.part)}</td>`,
    timed && `<td class="n wide">${escaped(row.time)}</td>`,
    `<td class="n">${escaped(row.charged)}</td>`,
    shop && `<td class="n wide">${escaped(row.cost)}</td><td class="nw wide">${escaped(row.place)}</td>`,
    '</tr>',
  ]
    .filter(Boolean)
    .join('');
}

// The table as it is printed: two lines a row, so that the floor has its name and the whole fits 100 columns.
import type { Last } from './last.ts';
import { missed, type Row, ratioOf } from './row.ts';

/** Widths of the columns after the first. */
const WIDTHS = { took: 10, floor: 10, ratio: 9, goal: 15, memory: 10 };
const FIRST = 45;

/** The rows under their headings; with a last table, what the ratio was then and how far it moved. */
export function tableText(rows: readonly Row[], last?: Last): string {
  const head = line('', { took: 'took', floor: 'floor', ratio: 'ratio', goal: 'goal', memory: 'memory' });
  return [head, ...rows.flatMap((row) => [cells(row), `  against ${row.against}`, ...moved(row, last)])].join(
    '\n',
  );
}

/** The same as a Markdown table, for the README. */
export function markdownText(rows: readonly Row[]): string {
  const lines = rows.map((row) => {
    const { took, floor, ratio, memory } = figures(row);
    return `| ${row.what} | ${row.against} | ${took} | ${floor} | ${ratio} | ${goalText(row)} | ${memory} |`;
  });
  return [
    '| what | against | took | floor | ratio | goal | memory |',
    '| --- | --- | ---: | ---: | ---: | ---: | ---: |',
    ...lines,
  ].join('\n');
}

type Cells = Record<keyof typeof WIDTHS, string>;

function cells(row: Row): string {
  const over = missed(row);
  const text = line(row.what, { ...figures(row), goal: goalText(row) });
  return over.length > 0 ? `${text}\n  OVER THE GOAL: ${over.join(', ')}` : text;
}

function line(first: string, cells: Cells): string {
  const rest = Object.entries(WIDTHS).map(([key, width]) => cells[key as keyof Cells].padStart(width));
  return `${first.padEnd(FIRST)}${rest.join('')}`.trimEnd();
}

function figures(row: Row) {
  return {
    took: amount(row.took, row),
    floor: amount(row.floor, row),
    ratio: ratioText(ratioOf(row)),
    memory: row.megabytes === undefined ? '' : `${row.megabytes.toFixed(0)} MB`,
  };
}

function amount(value: number, { unit = 's' }: Row): string {
  if (unit === 'kB') return `${value.toFixed(1)} kB`;
  return value < 1
    ? `${(value * 1000).toFixed(value < 0.01 ? 2 : 0)} ms`
    : `${value.toFixed(value < 20 ? 2 : 0)} s`;
}

function ratioText(ratio: number): string {
  return ratio < 0.1 ? ratio.toFixed(3) : ratio.toFixed(2);
}

function goalText(row: Row): string {
  const { ratio, seconds, megabytes } = row.goal ?? {};
  return [
    ...(ratio === undefined ? [] : [String(ratio)]),
    ...(seconds === undefined ? [] : [seconds < 1 ? `${1000 * seconds} ms` : `${seconds} s`]),
    ...(megabytes === undefined ? [] : [`${megabytes} MB`]),
  ].join(', ');
}

function moved(row: Row, last: Last | undefined): string[] {
  const before = last?.rows.find(({ id }) => id === row.id);
  if (!last) return [];
  if (!before) return ['  not in the last table'];
  const [was, is] = [ratioOf(before), ratioOf(row)];
  const percent = Math.round((100 * is) / was - 100);
  const sign = percent > 0 ? '+' : percent < 0 ? '−' : '±';
  const memory = before.megabytes === undefined ? '' : `, memory ${before.megabytes.toFixed(0)} MB`;
  return [`  was ${ratioText(was)}${memory}: the ratio moved by ${sign}${Math.abs(percent)}%`];
}

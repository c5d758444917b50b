// Divides all lines by one thing at a time. Every table holds every line once, so its rows sum to the total.
import { monthOf, yearOf } from '../figures/days.ts';
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostKind, CostLine, Grouping, Row, Table, Total } from './cost-lines.ts';
import { labelOf, orderOf } from './labels.ts';

/** One table for each way to divide. */
export function tablesOf(lines: readonly CostLine[], record: CarRecord): { [by in Grouping]: Table } {
  const kinds = kindsOf(lines);
  const total = { ...totalOf(lines), kinds };
  const table = (by: Grouping): Table => {
    const rows = [...Map.groupBy(lines, KEY[by])].map(([key, own]): Row => {
      return { key, label: labelOf(by, key, record), ...totalOf(own), kinds: kindsOf(own) };
    });
    return { by, rows: rows.sort(orderOf(by, record)), total };
  };
  return {
    part: table('part'),
    group: table('group'),
    work: table('work'),
    person: table('person'),
    vendor: table('vendor'),
    month: table('month'),
    choice: table('choice'),
    kind: table('kind'),
  };
}

export function totalOf(lines: readonly CostLine[]): Total {
  const total: Total = { cost: 0, charged: 0, minutes: 0, lines: [...lines] };
  for (const line of lines) {
    total.cost += line.cost;
    total.charged += line.charged;
    total.minutes += line.minutes ?? 0;
  }
  return total;
}

/** The years of a sum in their order, each with its lines. */
export const linesByYear = once(({ lines }: Total): [year: string, lines: CostLine[]][] =>
  [...Map.groupBy(lines, ({ day }) => yearOf(day))].sort(([one], [other]) => Number(one) - Number(other)),
);

/** What a row holds of one year. */
export function rowOfYear(row: Row, year: string): Row {
  const [, own = []] = linesByYear(row).find(([of]) => of === year) ?? [];
  return { key: row.key, label: row.label, ...totalOf(own), kinds: kindsOf(own) };
}

const KEY: { [by in Grouping]: (line: CostLine) => string | undefined } = {
  part: (line) => line.part,
  group: (line) => line.group,
  work: (line) => line.work,
  person: (line) => line.person,
  vendor: (line) => line.vendor,
  month: (line) => monthOf(line.day),
  choice: (line) => line.choice,
  kind: (line) => line.kind,
};

function kindsOf(lines: readonly CostLine[]): { [kind in CostKind]?: Total } {
  const kinds: { [kind in CostKind]?: Total } = {};
  for (const [kind, own] of Map.groupBy(lines, (line) => line.kind)) kinds[kind] = totalOf(own);
  return kinds;
}

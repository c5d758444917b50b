// What a row of a table is called and where it stands.
import { monthText } from '../figures/days.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostKind, Grouping, Row } from './cost-lines.ts';

/** The name of a row's key; what isn't known to the record stands under its short name. */
export function labelOf(by: Grouping, key: string | undefined, record: CarRecord): string {
  if (key === undefined) return NONE[by];
  const { parts, shop, choices } = record;
  if (by === 'part') return parts.find(({ id }) => id === key)?.name ?? key;
  if (by === 'person') return shop.people.find(({ id }) => id === key)?.name ?? key;
  if (by === 'vendor') return shop.vendors?.find(({ id }) => id === key)?.name ?? key;
  if (by === 'choice') return choices.find(({ id }) => id === key)?.question ?? key;
  if (by === 'month') return monthText(key);
  return by === 'kind' ? KIND[key as CostKind] : key;
}

/** Parts and groups in the record's order, months by date, others by amount; what belongs to none comes last. */
export function orderOf(by: Grouping, record: CarRecord): (a: Row, b: Row) => number {
  const ranks = new Map<string, number>();
  for (const { id, group } of record.parts) {
    const key = by === 'part' ? id : group;
    if (!ranks.has(key)) ranks.set(key, ranks.size);
  }
  const inRecord = by === 'part' || by === 'group';
  const rank = ({ key }: Row) => (inRecord && key !== undefined ? (ranks.get(key) ?? ranks.size) : 0);
  return (a, b) =>
    Number(a.key === undefined) - Number(b.key === undefined) ||
    rank(a) - rank(b) ||
    (inRecord || by === 'month' ? 0 : b.charged - a.charged) ||
    compare(a.key ?? '', b.key ?? '');
}

const NONE: { [by in Grouping]: string } = {
  part: 'The car as a whole',
  group: 'The car as a whole',
  work: 'No kind of work',
  person: 'No person',
  vendor: 'No vendor',
  month: 'No month',
  choice: 'No choice',
  kind: 'No kind',
};

/** The trade's words for the kinds of line, in the order in which kinds stand in every table. */
export const KIND: { [kind in CostKind]: string } = {
  labour: 'Labor',
  bought: 'Bought',
  outside: 'Outside work',
  freight: 'Freight',
  'paid-tax': 'Tax paid to vendors',
  handling: 'Handling',
  deposit: 'Deposits',
  materials: 'Shop materials',
  tax: 'Tax charged',
};

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

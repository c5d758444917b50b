// Materials and finishes, where lead lies, tests, and what came from whom: names and no figures.
import type { CarRecord, Entry } from '../../record/record.ts';
import { datedText } from '../dated.ts';
import { type Names, namesOf } from '../names.ts';
import { capital } from '../parts.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookFinishes = {
  lead: BookTable | undefined;
  finishes: BookTable | undefined;
  tests: BookTable | undefined;
  sought: BookTable | undefined;
  /** What came from each supplier, in the suppliers' order. */
  suppliers: { name: string; things: string[] }[];
};

type Dated<L> = L & { day: string };

export function bookFinishes(record: CarRecord): BookFinishes {
  const names = namesOf(record);
  const finishes = inOrder(
    dated(record, ({ finishes: own }) => own),
    record,
  );
  const lead = finishes.filter(({ what, product = '' }) =>
    /\blead\b|\bbody solder\b/i.test(`${what} ${product}`),
  );
  return {
    lead: finishTable(lead, names),
    finishes: finishTable(finishes, names),
    tests: tableOf(
      dated(record, ({ tested }) => tested),
      [
        { head: 'Test', wide: 4, text: ({ what }) => what },
        { head: 'Part', wide: 3, text: ({ part }) => (part ? names.part(part) : '') },
        { head: 'When', wide: 2.4, text: ({ since, until, day }) => spanText(since ?? day, until ?? day) },
        {
          head: 'Result',
          wide: 5,
          text: ({ result, note }) => capital(note ? `${result}; ${note}` : result),
        },
      ],
    ),
    sought: tableOf(
      dated(record, ({ sought }) => sought),
      [
        { head: 'Looked for', wide: 4, text: ({ what }) => what },
        { head: 'Part', wide: 3, text: ({ part }) => (part ? names.part(part) : '') },
        { head: 'Asked', wide: 4, text: ({ asked = [] }) => asked.join(', ') },
        { head: 'What came of it', wide: 4, text: ({ outcome }) => capital(outcome ?? 'open') },
        { head: 'Day', wide: 0, text: ({ day }) => datedText(day) },
      ],
    ),
    suppliers: suppliersOf(record, names),
  };
}

/** The lines of one list of all entries, each with its day. */
function dated<L>(record: CarRecord, of: (entry: Entry) => readonly L[] | undefined): Dated<L>[] {
  return record.entries.flatMap((entry) => (of(entry) ?? []).map((line) => ({ ...line, day: entry.day })));
}

/** In the order of the parts; of one part as the coats went on. */
function inOrder<L extends { part: string }>(lines: L[], { parts }: CarRecord): L[] {
  const order = new Map(parts.map(({ id }, i) => [id, i]));
  return lines.toSorted((a, b) => (order.get(a.part) ?? order.size) - (order.get(b.part) ?? order.size));
}

function finishTable(
  lines: Dated<NonNullable<Entry['finishes']>[number]>[],
  names: Names,
): BookTable | undefined {
  return tableOf(lines, [
    { head: 'Part', wide: 3, text: ({ part }) => names.part(part) },
    {
      head: 'What',
      wide: 4,
      text: ({ what, product }) => capital(product ? `${what}: ${product}` : what),
    },
    { head: 'Color', wide: 2, text: ({ colour = '' }) => colour },
    { head: 'Mix and coats', wide: 2.4, text: mixText },
    { head: 'Where', wide: 4, text: ({ where = '' }) => where },
    { head: 'Day', wide: 0, text: ({ day }) => datedText(day) },
  ]);
}

function mixText({ mix, coats }: { mix?: string | undefined; coats?: number | undefined }): string {
  const many = coats === undefined ? '' : `${coats} ${coats === 1 ? 'coat' : 'coats'}`;
  return [mix ?? '', many].filter((text) => text !== '').join(', ');
}

function spanText(since: string, until: string): string {
  return since === until ? datedText(since) : `${datedText(since)} to ${datedText(until)}`;
}

function suppliersOf(record: CarRecord, names: Names): BookFinishes['suppliers'] {
  const goods = record.entries.flatMap(({ bought = [], outside = [] }) => [...bought, ...outside]);
  const byVendor = Map.groupBy(goods, ({ from }) => from);
  const known = (record.shop.vendors ?? []).map(({ id }) => id);
  return [...new Set([...known, ...byVendor.keys()])].flatMap((id) => {
    const things = (byVendor.get(id) ?? []).map(({ what, part }) =>
      part === undefined ? what : `${what} (${names.part(part)})`,
    );
    return things.length > 0 ? [{ name: names.vendor(id), things: [...new Set(things)] }] : [];
  });
}

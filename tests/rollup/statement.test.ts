// The owner's account as the log makes it: touching statements chain, and what is issued stays as it was.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '../../src/figures/days.ts';
import type { CarRecord } from '../../src/record/record.ts';
import { issuedStatements, type Statement } from '../../src/rollup/issued.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { statedLines } from '../../src/rollup/stated-lines.ts';
import { nextFrom, statementFor } from '../../src/rollup/statement.ts';
import { statementFile } from '../../src/views/statement-file.ts';
import { dayAt, days, entry, type Lists, lines, textsOf } from './any-log.ts';
import { recordOf, shopText } from './records.ts';

type Texts = Record<string, string>;

/** The record's files with a statement issued up to each of these days. */
function issuedTo(texts: Texts, ends: readonly string[]): Texts {
  const so = { ...texts };
  for (const [i, to] of ends.entries()) {
    const record = recordOf(so);
    const from = nextFrom(record);
    if (from === undefined || from > to) continue;
    const issue = { number: `00${i + 1}`, issued: addDays(to, 2) };
    const { file, text } = statementFile(statementFor(record, { from, to }), issue, record);
    so[file] = text;
  }
  return so;
}

/** What has not been issued, as one statement. */
function rest(record: CarRecord): Statement {
  return statementFor(record, { from: nextFrom(record) ?? '2025-01-01', to: '2025-12-31' });
}

const LAST = 69;
const ends = fc
  .uniqueArray(fc.nat(LAST), { minLength: 1, maxLength: 4 })
  .map((numbers) => numbers.sort((a, b) => a - b));
const RUNS = { numRuns: 25, seed: 1934 };

const figures = ({ from, to, lines: own, corrections, sums }: Statement) => ({
  from,
  to,
  lines: own,
  corrections,
  sums,
});
const dueBy = (record: CarRecord) => {
  const { total, paid } = rollUp(record);
  return total.charged - paid;
};

describe('statements of any log', () => {
  it('are read back as they were issued, and each begins with the balance of the one before', () => {
    fc.assert(
      fc.property(days, ends, (entries, numbers) => {
        const texts = textsOf(entries);
        let balance = 0;
        let so: Texts = texts;
        for (const number of numbers) {
          const before = recordOf(so);
          const from = nextFrom(before);
          const to = dayAt(number);
          if (from === undefined || from > to) continue;
          const shown = statementFor(before, { from, to });
          expect(shown.sums.broughtForward).toBe(balance);
          const { file, text } = statementFile(shown, { number: `1${number}`, issued: to }, before);
          so = { ...so, [file]: text };
          const read = issuedStatements(recordOf(so)).at(-1) as Statement;
          expect(withoutPlaces(figures(read))).toEqual(withoutPlaces(figures(shown)));
          balance = shown.sums.balance;
        }
      }),
      RUNS,
    );
  });

  it('come, with what is open, to what is charged less what is paid', () => {
    fc.assert(
      fc.property(days, ends, (entries, numbers) => {
        const record = recordOf(issuedTo(textsOf(entries), numbers.map(dayAt)));
        expect(rest(record).sums.balance).toBe(dueBy(record));
        expect(rest(record).corrections).toEqual([]);
      }),
      RUNS,
    );
  });

  // Two taxes are charged here, one of them by statement: half a minor unit for each statement, at either count.
  it('come to the same however the days are split, but for half a cent a statement and tax by statement', () => {
    fc.assert(
      fc.property(days, ends, (entries, numbers) => {
        const texts = textsOf(entries);
        const split = recordOf(issuedTo(texts, numbers.map(dayAt)));
        const statements = split.statements.length + 1;
        const whole = recordOf(texts);
        const apart = Math.abs(rest(split).sums.balance - rest(whole).sums.balance);
        expect(apart).toBeLessThanOrEqual((statements + 1) / 2);
        const byLine = (record: CarRecord) =>
          rollUp(record).lines.filter(({ entry: of }) => of !== undefined);
        expect(byLine(split)).toEqual(byLine(whole));
      }),
      RUNS,
    );
  });
});

type Edit = (entries: Record<string, Lists>) => Record<string, Lists>;
const number = fc.nat(LAST).map(String);
const pick = (names: readonly string[], at: number) => names[at % names.length] ?? '';
/** An entry deleted, moved, added or written anew; a line dropped, added or written anew. */
const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.nat(9).map(
    (at): Edit =>
      (entries) => {
        const { [pick(Object.keys(entries), at)]: _, ...others } = entries;
        return others;
      },
  ),
  fc.tuple(fc.nat(9), number).map(
    ([at, to]): Edit =>
      (entries) => {
        const name = pick(Object.keys(entries), at);
        const { [name]: moved = {}, ...others } = entries;
        return to in others ? entries : { ...others, [to]: moved };
      },
  ),
  fc.tuple(number, entry).map(
    ([at, lists]): Edit =>
      (entries) => ({ ...entries, [at]: lists }),
  ),
  fc
    .tuple(
      fc.nat(9),
      fc
        .constantFrom(...Object.keys(lines))
        .chain((list) => fc.tuple(fc.constant(list), lines[list] ?? fc.constant(''))),
      fc.constantFrom('dropped', 'added', 'anew'),
    )
    .map(
      ([at, [list, line], how]): Edit =>
        (entries) => {
          const name = pick(Object.keys(entries), at);
          const lists = entries[name] ?? {};
          const own = lists[list] ?? [];
          const kept = how === 'added' ? own : own.slice(1);
          return { ...entries, [name]: { ...lists, [list]: how === 'dropped' ? kept : [line, ...kept] } };
        },
    ),
);

describe('an entry changed after its statement is issued', () => {
  it('never changes an issued figure, and always shows on the next statement, by its entry', () => {
    let shown = 0;
    fc.assert(
      fc.property(days, ends, edit, (entries, numbers, change) => {
        const texts = issuedTo(textsOf(entries), numbers.map(dayAt));
        const issued = Object.fromEntries(
          Object.entries(texts).filter(([file]) => file.startsWith('statements/')),
        );
        const before = recordOf(texts);
        const after = recordOf({ ...textsOf(change(entries)), ...issued });
        expect(issuedStatements(after).map(figures)).toEqual(issuedStatements(before).map(figures));

        const last = before.statements.at(-1)?.to ?? '';
        const open = rest(after);
        expect(new Set(open.corrections.map(({ was, now }) => (now ?? was)?.entry))).toEqual(
          changedEntries(before, after, last),
        );
        expect(open.sums.balance).toBe(dueBy(after));
        shown += open.corrections.length;
      }),
      { numRuns: 60, seed: 1934 },
    );
    expect(shown).toBeGreaterThan(50);
  });
});

/** Entries up to a day in which something that a statement says of a line is another, told without the code under test. */
function changedEntries(before: CarRecord, after: CarRecord, last: string): Set<string> {
  const told = (record: CarRecord) =>
    Map.groupBy(
      statedLines(record).filter(({ day }) => day <= last),
      ({ entry: of }) => of,
    );
  const [was, is] = [told(before), told(after)];
  const sign = (of: Map<string, unknown[]>, name: string) =>
    (of.get(name) ?? []).map((line) => JSON.stringify(sortedKeys(withoutPlaces(line)))).sort();
  return new Set(
    [...new Set([...was.keys(), ...is.keys()])].filter(
      (name) => JSON.stringify(sign(was, name)) !== JSON.stringify(sign(is, name)),
    ),
  );
}

function withoutPlaces(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value, (key, of) => (key === 'place' ? undefined : of)));
}
function sortedKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sortedKeys);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, of]) => [key, sortedKeys(of)]),
  );
}

const TAXED = shopText(`handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
tax:
  - { name: Sales tax, rate: 7%, side: charged, on: [bought], from: 2025-01-01, by: statement }
`);
const march = (price: string) => `---
hours:
  - { part: cowl, work: metal, time: 2h, note: strip it }
bought:
  - { what: Wire, from: keld, part: cowl, price: ${price} }
---
`;
const april = `---
paid:
  - { amount: 100.00, how: check }
---
`;

describe('a correction worked by hand', () => {
  const texts = issuedTo(
    { 'shop.md': TAXED, 'log/2025-03-03.md': march('10.00'), 'log/2025-04-07.md': april },
    ['2025-03-31'],
  );
  const record = recordOf({ ...texts, 'log/2025-03-03.md': march('13.00') });
  const next = statementFor(record, { from: '2025-04-01', to: '2025-04-30' });

  it('goes on from the balance that was issued', () => {
    // 2 h at 85.00; 10.00 x 1.1 = 11.00; 7% of it 0.77
    expect(issuedStatements(record)[0]?.sums).toMatchObject({
      labour: 17000,
      bills: 1100,
      tax: 77,
      balance: 18177,
    });
    expect(next.sums.broughtForward).toBe(18177);
  });

  it('names the entry, what it was and what it is, and taxes the difference', () => {
    expect(next.corrections).toMatchObject([
      {
        was: { entry: '2025-03-03', what: 'Wire', amounts: { goods: 1000, handling: 100 } },
        now: { entry: '2025-03-03', what: 'Wire', amounts: { goods: 1300, handling: 130 } },
      },
    ]);
    // 14.30 - 11.00 = 3.30; 7% of it 0.231; 181.77 + 3.30 + 0.23 - 100.00
    expect(next.sums).toMatchObject({ corrections: 330, tax: 23, paid: 10000, balance: 8530 });
  });

  it('is brought forward where a later period is looked at, and once only', () => {
    const may = statementFor(record, { from: '2025-05-01', to: '2025-05-31' });
    expect([may.corrections, may.sums.broughtForward, may.sums.balance]).toEqual([[], 8530, 8530]);
    const issued = recordOf({
      ...issuedTo({ ...texts, 'log/2025-03-03.md': march('13.00') }, ['2025-03-31', '2025-04-30']),
    });
    expect(issuedStatements(issued)).toHaveLength(2);
    expect(rest(issued)).toMatchObject({ corrections: [], sums: { broughtForward: 8530, balance: 8530 } });
  });

  it('is none where only words changed that no statement has', () => {
    const prose = recordOf({ ...texts, 'log/2025-03-03.md': `${march('10.00')}\nMore to read.\n` });
    expect(rest(prose).corrections).toEqual([]);
  });

  it('is made of an entry that moved: gone from its day, and come on another', () => {
    const { 'log/2025-03-03.md': moved = '', ...others } = texts;
    const later = rest(recordOf({ ...others, 'log/2025-04-10.md': moved }));
    expect(later.corrections.map(({ was, now }) => [was?.entry, now])).toEqual([
      ['2025-03-03', undefined],
      ['2025-03-03', undefined],
    ]);
    expect(later.lines.map(({ entry: of }) => of)).toEqual(['2025-04-07', '2025-04-10', '2025-04-10']);
    // nothing is charged twice, or lost
    expect(later.sums.balance).toBe(8177);
  });
});

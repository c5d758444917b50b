// What must hold of any record: generated logs, under rules with every kind of rounding.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Rollup, Total } from '../../src/rollup/cost-lines.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf, shopText } from './records.ts';

const SHOP = shopText(
  `pay:
  - { from: 2025-01-01, rate: 34.99 }
step: 15m
handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
  - { from: 2025-02-01, kind: outside, share: 7.5% }
materials:
  - { from: 2025-01-01, per-hour: 3.55, cap: 40.00 }
  - { from: 2025-02-15, of-labour: 4.1% }
tax:
  - { name: Use tax, rate: 7.25%, side: paid, on: [bought, freight], from: 2025-01-01, by: statement }
  - { name: Sales tax, rate: 8.25%, side: charged, on: [bought, materials], from: 2025-01-01, by: line, rounding: down }
  - { name: Levy, rate: 0.35%, side: charged, on: [labour, outside, freight], from: 2025-01-20, by: statement, rounding: half-even }
`,
  `  - { from: 2025-01-01, rate: 77.77 }
  - { from: 2025-02-10, rate: 91.01, work: metal }`,
);

const money = fc.integer({ min: 0, max: 99_999 }).map((minor) => (minor / 100).toFixed(2));
const where = fc.constantFrom('part: cowl, ', 'part: frame, ', 'part: cowl, line: strip, ', '');
const vendor = fc.constantFrom('keld', 'millrace');
const hours = fc
  .tuple(where, fc.constantFrom('metal', 'timber'), fc.nat(600), fc.boolean())
  .map(
    ([at, work, time, free]) => `{ ${at}work: ${work}, time: ${time}m${free ? ', no-charge: ours' : ''} }`,
  );
const bought = fc
  .tuple(
    where,
    vendor,
    money,
    fc.integer({ min: 1, max: 40 }),
    fc.option(money),
    fc.option(money),
    fc.option(money),
  )
  .map(
    ([at, from, price, count, freight, tax, deposit]) =>
      `{ ${at}what: Wire, from: ${from}, price: ${price}, count: ${count / 4}, bill: b${freight ? `, freight: ${freight}` : ''}${tax ? `, tax: ${tax}` : ''}${deposit ? `, deposit: ${deposit}` : ''} }`,
  );
const outside = fc
  .tuple(where, vendor, money, fc.boolean())
  .map(
    ([at, from, price, own]) =>
      `{ ${at}what: Plating, from: ${from}, price: ${price}${own ? ', paid-by: owner' : ''} }`,
  );
const returned = fc
  .tuple(vendor, money, fc.option(money))
  .map(
    ([from, price, tax]) =>
      `{ what: Wire, from: ${from}, price: ${price}, bill: b${tax ? `, tax: ${tax}` : ''} }`,
  );
const entry = fc.record({
  hours: fc.array(hours, { maxLength: 4 }),
  bought: fc.array(bought, { maxLength: 4 }),
  outside: fc.array(outside, { maxLength: 2 }),
  returned: fc.array(returned, { maxLength: 1 }),
});
const logs = fc
  .dictionary(fc.integer({ min: 0, max: 69 }).map(String), entry, { minKeys: 1, maxKeys: 6 })
  .map((days) => {
    const texts: Record<string, string> = { 'shop.md': SHOP };
    for (const [number, lists] of Object.entries(days)) {
      const day = new Date(Date.UTC(2025, 0, 5 + Number(number))).toISOString().slice(0, 10);
      texts[`log/${day}.md`] = entryText(lists);
    }
    return texts;
  });

function entryText(lists: Record<string, string[]>): string {
  const filled = Object.entries(lists).filter(([, lines]) => lines.length > 0);
  return `---\n${filled.map(([name, lines]) => `${name}:\n${lines.map((line) => `  - ${line}\n`).join('')}`).join('')}---\n`;
}

const RUNS = { numRuns: 60, seed: 1934 };
const sums = ({ cost, charged, minutes }: Total) => ({ cost, charged, minutes });
const add = (totals: Total[]) =>
  totals.reduce(
    (sum, { cost, charged, minutes }) => ({
      cost: sum.cost + cost,
      charged: sum.charged + charged,
      minutes: sum.minutes + minutes,
    }),
    { cost: 0, charged: 0, minutes: 0 },
  );
const allTables = (rollup: Rollup) => Object.values(rollup.tables);

describe('of any record', () => {
  it('the sums don’t depend on the order in which files are found or entries are held', () => {
    fc.assert(
      fc.property(logs, fc.infiniteStream(fc.nat()), (texts, keys) => {
        const shuffled = (files: string[]) =>
          files
            .map((file) => ({ file, key: keys.next().value }))
            .sort((a, b) => a.key - b.key)
            .map(({ file }) => file);
        const record = recordOf(texts);
        const plain = rollUp(record);
        expect(rollUp(recordOf(texts, shuffled))).toEqual(plain);
        expect(rollUp({ ...record, entries: record.entries.toReversed() })).toEqual(plain);
      }),
      RUNS,
    );
  });

  it('a line of zero hours and a thing bought for nothing change no sum', () => {
    fc.assert(
      fc.property(logs, (texts) => {
        const [first = ''] = Object.keys(texts).filter((file) => file.startsWith('log/'));
        const more = `---
hours:
  - { part: cowl, work: metal, time: 0m }
bought:
  - { what: Sample, from: keld, part: cowl, price: 0.00, bill: b }
---
`;
        const before = rollUp(recordOf(texts));
        const after = rollUp(recordOf({ ...texts, [first.replace('.md', '-b.md')]: more }));
        expect(sums(after.total)).toEqual(sums(before.total));
        expect(after.months).toEqual(before.months);
        expect(after.lines).toHaveLength(before.lines.length + 2);
      }),
      RUNS,
    );
  });

  it('any two ways to divide it come to the same, by row and by kind', () => {
    fc.assert(
      fc.property(logs, (texts) => {
        const rollup = rollUp(recordOf(texts));
        for (const { rows, total } of allTables(rollup)) {
          expect(add(rows)).toEqual(sums(rollup.total));
          expect(sums(total)).toEqual(sums(rollup.total));
          for (const row of rows) expect(add(Object.values(row.kinds))).toEqual(sums(row));
        }
      }),
      RUNS,
    );
  });

  it('every total is the sum of the lines it carries, and every line stands once in every table', () => {
    fc.assert(
      fc.property(logs, (texts) => {
        const rollup = rollUp(recordOf(texts));
        for (const { rows } of allTables(rollup)) {
          for (const row of rows) {
            expect(sums(row)).toEqual(
              add(row.lines.map((line) => ({ ...line, minutes: line.minutes ?? 0, lines: [] }))),
            );
          }
          expect(new Set(rows.flatMap(({ lines }) => lines))).toEqual(new Set(rollup.lines));
          expect(rows.flatMap(({ lines }) => lines)).toHaveLength(rollup.lines.length);
        }
        expect(rollup.months.at(-1)?.running ?? 0).toBe(rollup.total.charged);
      }),
      RUNS,
    );
  });

  it('every amount is whole minor units', () => {
    fc.assert(
      fc.property(logs, (texts) => {
        for (const { cost, charged } of rollUp(recordOf(texts)).lines) {
          expect([Number.isSafeInteger(cost), Number.isSafeInteger(charged)]).toEqual([true, true]);
          expect([Object.is(cost, -0), Object.is(charged, -0)]).toEqual([false, false]);
        }
      }),
      RUNS,
    );
  });
});

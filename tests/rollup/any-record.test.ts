// What must hold of any record: generated logs, under rules with every kind of rounding.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Rollup, Total } from '../../src/rollup/cost-lines.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { logs } from './any-log.ts';
import { recordOf } from './records.ts';

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

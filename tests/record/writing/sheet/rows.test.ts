import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openRecord } from '../../../../src/record/open.ts';
import { openedWith } from '../../../../src/record/writing/day-plan.ts';
import { withoutThere } from '../../../../src/record/writing/sheet/already-there.ts';
import { bringPlan } from '../../../../src/record/writing/sheet/bring-plan.ts';
import { readColumns } from '../../../../src/record/writing/sheet/columns.ts';
import { linesFromRows } from '../../../../src/record/writing/sheet/rows.ts';
import { SMALL } from '../../small.ts';

const TODAY = '2025-12-31';
const files = (changed: Record<string, string> = {}) =>
  Object.entries({ ...SMALL, ...changed }).map(([file, text]) => ({ file, text }));

/** The rows of a sheet with these headings, read for the small record with some of it changed. */
function lines(headings: string, rows: readonly string[], changed: Record<string, string> = {}) {
  const lying = { files: files(changed), photos: [], today: TODAY };
  const opened = openRecord(lying);
  const columns = readColumns(headings.split(','), new Map());
  if (!opened.record || typeof columns === 'string') throw new Error(String(columns));
  const cells = rows.map((row, i) => ({ row: i + 2, cells: row.split(',') }));
  const { record } = opened;
  return { ...linesFromRows(cells, columns, record, { today: TODAY }), record, lying, opened };
}

const HOURS = 'date,part,work,time,line,note';
const BILLS = 'date,what,from,part,price,count,as';

describe('a row', () => {
  it('becomes a line, names read by id or by name, empty cells left out', () => {
    const { lines: found, refused } = lines(HOURS, [
      '2025-03-04,Cowl,metal,2.5,cowl/lead,',
      ',,,,,',
      '2025-03-05,,shop,1h,,swept',
    ]);
    expect(found).toEqual([
      {
        row: 2,
        day: '2025-03-04',
        list: 'hours',
        line: { part: 'cowl', work: 'metal', time: '2.5', line: 'lead' },
      },
      { row: 4, day: '2025-03-05', list: 'hours', line: { work: 'shop', time: '1h', note: 'swept' } },
    ]);
    expect(refused).toEqual([]);
    expect(lines(BILLS, ['2025-03-04,Recore,Millrace Metals,,640,,outside']).lines[0]).toMatchObject({
      list: 'outside',
      line: { what: 'Recore', from: 'millrace', price: '640' },
    });
  });

  it.each([
    [
      HOURS,
      '2025-03-04,cowl,metal,2h',
      'It has 4 cells, and the heading 6. A cell that holds the sign between cells needs quotes round it.',
    ],
    [HOURS, ',cowl,metal,2h,,', 'It has no date.'],
    [
      HOURS,
      '4/3/2025,cowl,metal,2h,,',
      'Unexpected `4/3/2025`, expected a date such as `2025-04-16`; if the sheet writes days another way, say how with --dates m/d/y or d.m.y.',
    ],
    [HOURS, '2025-02-01,cowl,metal,2h,,', '2025-02-01 is before the record begins, on 2025-02-03.'],
    [HOURS, '2026-01-01,cowl,metal,2h,,', '2026-01-01 is still to come.'],
    [
      HOURS,
      '2025-03-04,cowl,metal,2x,,',
      'Unexpected `2x`, expected a time such as `3h 30m`, `3:30` or `3.5`.',
    ],
    [HOURS, '2025-03-04,cowll,metal,2h,,', '`cowll` is no part of this record. Did you mean `cowl`?'],
    [HOURS, '2025-03-04,cowl,metl,2h,,', '`metl` is no kind of work here. Did you mean `metal`?'],
    [
      HOURS,
      '2025-03-04,cowl,metal,,,',
      'Missing `time` in this line of `hours`. Time worked. Write it, for example `time: 4h 15m`.',
    ],
    [BILLS, '2025-03-04,Wire,millrace,cowl,4.90,,both', 'Unexpected `both`, expected `bought` or `outside`.'],
    [
      BILLS,
      '2025-03-04,Wire,millrace,cowl,4.905,,',
      'Unexpected `4.905`, expected an amount of USD such as `1,084.50`: USD has 2 digits after the point.',
    ],
  ])('of %s: %s is refused', (headings, row, why) => {
    expect(lines(headings, [row])).toMatchObject({ lines: [], refused: [{ row: 2, why }] });
  });
});

describe('a row that is there already', () => {
  // SMALL's entry of 2025-03-03: 3h 30m of metal on cowl/strip, bolts at 1.10, count 007, bill 0310.
  it('is known by all its values, however they are written', () => {
    const { lines: found, record } = lines(HOURS, [
      '2025-03-03,cowl,metal,210m,cowl/strip,',
      '2025-03-03,cowl,metal,3:30,strip,again',
      '2025-03-03,cowl,metal,3.5,,',
      '2025-03-04,cowl,metal,3.5,strip,',
    ]);
    const { fresh, there } = withoutThere(found, record);
    expect(there.map(({ row }) => row)).toEqual([2]);
    expect(fresh.map(({ row }) => row)).toEqual([3, 4, 5]);
  });

  it('counts: of two alike, one that is there leaves one', () => {
    const { lines: found, record } = lines('date,what,from,part,price,count,bill', [
      '2025-03-03,1/4 in bolts,millrace,cowl,$1.10,7,0310',
      '2025-03-03,1/4 in bolts,millrace,cowl,1.10,7,0310',
    ]);
    expect(withoutThere(found, record).fresh.map(({ row }) => row)).toEqual([3]);
  });
});

describe('the plan', () => {
  it('writes the day’s person once, and lays new entries beside their neighbors', () => {
    const shop = SMALL['shop.md'].replace('people:\n', 'people:\n  - { id: ines, name: Ines Marlow }\n');
    const {
      lines: found,
      lying,
      opened,
    } = lines(
      'date,work,time,by',
      [
        '2025-03-04,shop,1h,ines',
        '2025-03-04,metal,2h,ines',
        '2025-03-05,shop,1h,ines',
        '2025-03-05,shop,1h,tobias',
      ],
      { 'shop.md': shop, 'log/2025-03-03.md': '---\nby: ines\nhours: [{ work: shop, time: 1h }]\n---\n' },
    );
    const { days, refused } = bringPlan(lying, opened, found);
    expect(refused).toEqual([]);
    expect(days.map(({ plan }) => plan)).toEqual([
      {
        file: 'log/2025-03-04.md',
        text: '---\nby: ines\nhours:\n  - { work: shop, time: 1h }\n  - { work: metal, time: 2h }\n---\n',
      },
      {
        file: 'log/2025-03-05.md',
        text: '---\nhours:\n  - { work: shop, time: 1h, by: ines }\n  - { work: shop, time: 1h, by: tobias }\n---\n',
      },
    ]);
  });

  it('leaves out a day that would be wrong, with all its rows', () => {
    const {
      lines: found,
      lying,
      opened,
    } = lines(HOURS, [
      '2025-03-04,cowl,metal,2h,strip,',
      '2025-03-05,cowl,metal,2h,lead,',
      '2025-03-04,cowl,metal,1h,lead,',
    ]);
    const plan = bringPlan(lying, opened, found);
    expect(plan.days.map(({ day }) => day)).toEqual(['2025-03-05']);
    expect(plan.refused.map(({ row }) => row)).toEqual([2, 4]);
    // cowl/strip is finished on 2025-03-03 in SMALL.
    expect(plan.refused[0]?.why).toMatch(
      /^In log\/2025-03-04\.md it would be wrong: `cowl\/strip` was finished on 2025-03-03/,
    );
  });

  it('refuses the rows of an entry that can’t be read', () => {
    const {
      lines: found,
      lying,
      opened,
    } = lines(HOURS, ['2025-03-04,cowl,metal,2h,lead,'], {
      'log/2025-03-04.md': '---\nby: "tobias\n---\n',
    });
    expect(bringPlan(lying, opened, found).refused).toEqual([
      {
        row: 2,
        why: 'log/2025-03-04.md is written in a way that can’t be added to safely. See what npm run check says of it, or write in it by hand.',
      },
    ]);
  });
});

describe('a sheet of any rows', () => {
  it('brought twice is there once', () => {
    const row = fc.record({
      day: fc.constantFrom('2025-03-03', '2025-03-04', '2025-04-16'),
      part: fc.constantFrom('cowl', 'Cowl', ''),
      time: fc.constantFrom('3.5', '3h 30m', '210m', '0:45', '45m'),
      line: fc.constantFrom('', 'cowl/lead'),
      note: fc.oneof(fc.string({ maxLength: 8 }), fc.constantFrom('a: b', '# 3', '20817', '1,5', 'true')),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        const lying = { files: files(), photos: [], today: TODAY };
        const opened = openRecord(lying);
        const columns = readColumns(HOURS.split(','), new Map());
        if (!opened.record || typeof columns === 'string') throw new Error('the record opens');
        const cells = rows.map(({ day, part, time, line, note }, i) => ({
          row: i + 2,
          cells: [day, part, 'metal', time, line, note],
        }));
        const read = linesFromRows(cells, columns, opened.record, { today: TODAY });
        const { fresh } = withoutThere(read.lines, opened.record);
        const plan = bringPlan(lying, opened, fresh);
        const after = openedWith(
          lying,
          plan.days.map((one) => one.plan),
        ).record;
        if (!after) throw new Error('the record opens');
        const hours = (record: typeof after) => record.entries.flatMap((entry) => entry.hours ?? []).length;
        const brought = plan.days.flatMap((one) => one.lines).length;
        expect(hours(after) - hours(opened.record)).toBe(brought);
        expect(brought + plan.refused.length).toBe(fresh.length);
        const again = withoutThere(read.lines, after).fresh.map((one) => one.row);
        expect(again.sort()).toEqual(plan.refused.map((one) => one.row).sort());
      }),
      { numRuns: 150, seed: 1934 },
    );
  });
});

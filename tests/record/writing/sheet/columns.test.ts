import { describe, expect, it } from 'vitest';
import { readColumns } from '../../../../src/record/writing/sheet/columns.ts';
import { readDayOrder, readSheetDay } from '../../../../src/record/writing/sheet/days.ts';

const read = (headings: string[], named: Record<string, string> = {}) =>
  readColumns(headings, new Map(Object.entries(named)));

describe('the columns of a sheet', () => {
  it('say by their headings what they are', () => {
    expect(read(['Date', 'Part', 'work', 'TIME', 'No charge', 'Remarks'])).toEqual({
      kind: 'hours',
      keys: ['date', 'part', 'work', 'time', 'no-charge', undefined],
      leftOut: ['Remarks'],
    });
    expect(read(['Day', 'what', 'Vendor', 'price', 'paid_by', 'as'])).toMatchObject({
      kind: 'bills',
      keys: ['date', 'what', 'from', 'price', 'paid-by', 'as'],
    });
  });

  it('may be named', () => {
    expect(read(['Datum', 'Art', 'Zeit', 'work'], { Datum: 'date', Zeit: 'time', Art: '-' })).toEqual({
      kind: 'hours',
      keys: ['date', undefined, 'time', 'work'],
      leftOut: ['Art'],
    });
  });

  it.each<[string[], Record<string, string>, string]>([
    [
      ['Datum', 'work', 'time'],
      {},
      'A sheet of hours needs a column `date`, and this one has `Datum`, `work`, `time`. Say which it is: --columns "Datum=date".',
    ],
    [
      ['date', 'work'],
      {},
      'A sheet of hours needs a column `time`, one of bills a column `price`; this one has `date`, `work`. Say which it is: --columns "Heading=time".',
    ],
    [['date', 'time', 'price'], {}, 'This sheet has a `time` and a `price`: bring hours and bills apart.'],
    [['date', 'day', 'work', 'time'], {}, 'Two columns are `date`. Leave one out: --columns "Heading=-".'],
    [['date', 'work', 'time'], { Dat: 'date' }, 'The sheet has no column `Dat`. Did you mean `date`?'],
    [['Datum', 'work', 'time'], { Datum: 'dat' }, 'Known: `date`, `part`, `work`, `time`'],
  ])('of %j, named %j, aren’t understood', (headings, named, says) => {
    expect(read(headings, named)).toContain(says);
  });
});

describe('a day of a sheet', () => {
  it.each([
    ['2025-04-16', undefined],
    ['2025-04-16', 'dmy'],
    ['4/16/2025', 'mdy'],
    ['04/16/25', 'mdy'],
    ['16.4.2025', 'dmy'],
    ['16. 4. 2025', 'dmy'],
    ['2025/4/16', 'ymd'],
  ])('`%s` in the order %s is the same day', (written, order) => {
    expect(readSheetDay(written, order)).toEqual({ ok: true, value: '2025-04-16' });
  });

  it.each([
    [
      '4/16/2025',
      undefined,
      'a date such as `2025-04-16`; if the sheet writes days another way, say how with --dates m/d/y or d.m.y',
    ],
    ['16/4/2025', 'mdy', 'a date written m/d/y'],
    ['2025-02-30', 'mdy', 'a date such as `2025-04-16`'],
    ['yesterday', 'mdy', 'a date such as `2025-04-16`'],
  ])('`%s` in the order %s isn’t one', (written, order, expected) => {
    expect(readSheetDay(written, order)).toEqual({ ok: false, expected });
  });

  it('has an order that is said with any signs', () => {
    expect(['m/d/y', 'D.M.Y', 'y-m-d', 'm/d', 'mdyy'].map(readDayOrder)).toEqual([
      'mdy',
      'dmy',
      'ymd',
      undefined,
      undefined,
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { daysOfPart, fabricNow, kindSums, marksOfPart, readingsOfPart } from '../../src/views/part.ts';
import { partList } from '../../src/views/parts.ts';
import { plannedTable } from '../../src/views/planned.ts';
import { cents, minutes, partOf, sum, viewed } from './records.ts';

const { record, rollup } = viewed();
const cowl = partOf(record, 'cowl');
const rowOf = (id: string) => rollup.tables.part.rows.find(({ key }) => key === id);

describe('the list of parts', () => {
  const list = partList(record, rollup);

  it('sums to the group, and groups with the car as a whole to all', () => {
    for (const { items, charged, time } of list.groups) {
      expect(sum(items.map((item) => cents(item.charged)))).toBe(cents(charged));
      expect(sum(items.map((item) => minutes(item.time)))).toBe(minutes(time));
    }
    const rows = [...list.groups, ...(list.whole ? [list.whole] : [])];
    expect(sum(rows.map(({ charged }) => cents(charged)))).toBe(cents(list.all.charged));
    expect(sum(rows.map(({ time }) => minutes(time)))).toBe(minutes(list.all.time));
    expect(cents(list.all.charged)).toBe(rollup.total.charged);
  });

  it('says the state in words', () => {
    expect(
      list.groups.flatMap(({ group, items }) => items.map((item) => [group, item.found, item.state])),
    ).toEqual([
      ['Body panels', 'damaged', 'in hand'],
      ['Chassis', 'not said', 'in hand'],
    ]);
  });
});

describe('the planned work of a part', () => {
  const { rows, ticks } = plannedTable(cowl, record, rollup);

  it('has the range as written, hours so far and what is left', () => {
    expect(rows.map(({ hours, soFar, left }) => [hours, soFar, left.text, left.note])).toEqual([
      ['2 – 5 h, most likely 3', '3 h 30 m', 'finished', 'March 3, 2025'],
      ['4 – 9 h, most likely 6', '2 h 00 m', '2 – 5 h, most likely 3', 'written April 7, 2025'],
      ['4 h', '', 'not begun', undefined],
    ]);
    expect(rows.map(({ left }) => left.estimate)).toEqual([false, true, false]);
  });

  it('names what comes first and what can hurt', () => {
    expect(rows[0]?.notes).toEqual(['metal', 'care: lead']);
    expect(rows[1]?.notes).toEqual(['metal', 'after strip, Frame: level']);
    const [first, ...others] = cowl.planned ?? [];
    const priced = first && { ...cowl, planned: [{ ...first, 'fixed-price': 18000 }, ...others] };
    expect(priced && plannedTable(priced, record, rollup).rows[0]?.notes).toEqual([
      'metal',
      'at a fixed price of $180.00',
      'care: lead',
    ]);
    expect(rows[1]?.spend).toEqual(['to buy $20 – 45, most likely 30']);
  });

  it('draws every line to one scale that holds the longest', () => {
    // Nine hours at most: ticks every two hours, up to ten.
    expect(ticks.map(({ text }) => text)).toEqual(['0', '2', '4', '6', '8', '10']);
    const at = (hours: number) => 4 + (hours / 10) * 192;
    expect(rows[1]?.bar?.low).toBeCloseTo(at(4), 1);
    expect(rows[1]?.bar?.high).toBeCloseTo(at(9), 1);
    expect(rows[0]?.bar?.done).toBeCloseTo(at(3.5), 1);
  });

  it('keeps a bar inside its scale when the work has run over', () => {
    const over = viewed({
      'log/2025-04-08.md': '---\nhours:\n  - { part: cowl, line: lead, work: metal, time: 700 }\n---\n',
    });
    const table = plannedTable(partOf(over.record, 'cowl'), over.record, over.rollup);
    expect(Math.max(...table.rows.map(({ bar }) => bar?.done ?? 0))).toBeLessThanOrEqual(196);
    expect(table.ticks.length).toBeLessThanOrEqual(8);
  });
});

describe('a part so far', () => {
  it('comes to its row, kind by kind', () => {
    const sums = kindSums('part', rowOf('cowl'), record);
    expect(sum((sums?.rows ?? []).map(({ charged }) => cents(charged)))).toBe(rowOf('cowl')?.charged);
    expect(sums?.rows[0]).toMatchObject({
      name: 'Labor',
      time: '5 h 30 m',
      charged: '467.50',
      from: 'from 2 lines',
      to: 'lines/part/cowl.html#labour',
    });
  });

  it('is nothing for a part without a line', () => {
    expect(kindSums('part', undefined, record)).toBeUndefined();
  });

  it('has the days that name it, with what they took of it', () => {
    const days = daysOfPart(cowl, record, rollup);
    expect(days.map(({ day, time }) => [day, time])).toEqual([
      ['March 3, 2025', '3 h 30 m'],
      ['April 7, 2025', '2 h 00 m'],
      ['May 2, 2025', ''],
    ]);
    expect(sum(days.map(({ charged }) => cents(charged)))).toBe(rowOf('cowl')?.charged);
  });

  it('has its readings and its tags', () => {
    expect(readingsOfPart(cowl, record)).toMatchObject([
      { day: 'May 2, 2025', kind: 'thickness', state: 'after' },
    ]);
    expect(marksOfPart(cowl, record)).toMatchObject([{ mark: 'CW 1', what: 'Bolts (4)', as: 'refit' }]);
  });

  it('is made of what the log says, else of what was decided', () => {
    expect(fabricNow(cowl, record)).toBe('new made');
    const logged = viewed({
      'log/2025-06-01.md': '---\nfabric:\n  - { part: cowl, now: original, note: two corners new }\n---\n',
    });
    expect(fabricNow(partOf(logged.record, 'cowl'), logged.record)).toBe('original (two corners new)');
  });
});

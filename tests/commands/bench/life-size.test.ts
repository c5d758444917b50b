import { describe, expect, it } from 'vitest';
import { countsOver } from '../../../src/commands/bench/life-size/calendar.ts';
import { lifeSize } from '../../../src/commands/bench/life-size/record.ts';
import { openRecord } from '../../../src/record/open.ts';
import { forecastOf } from '../../../src/rollup/ahead/forecast.ts';
import { rollUp } from '../../../src/rollup/roll-up.ts';

describe('a record of life size', () => {
  const size = { entries: 100, photos: 40 };
  const { files, photos } = lifeSize(size);
  const { record, problems, read } = openRecord({ files, photos, today: '2026-01-01' });

  it('has nothing wrong in it, and holds what it is asked for', () => {
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(read).toMatchObject({ entries: 100, parts: 250, choices: 60, bills: 250, photos: 40 });
    expect(problems.filter(({ rule }) => rule === 'photo-never-named')).toEqual([]);
  });

  it('has every kind of thing in it that a log has', () => {
    if (!record) throw new Error('It didn’t open');
    const fields = [
      'hours',
      'bought',
      'outside',
      'ordered',
      'received',
      'returned',
      'measured',
      'pads',
      'marks',
    ];
    const more = [
      'sought',
      'finishes',
      'tested',
      'photos',
      'finished',
      'left',
      'agreed',
      'paid',
      'shop-only',
    ];
    for (const field of [...fields, ...more])
      expect(record.entries.filter((entry) => field in entry).length, field).toBeGreaterThan(0);
    expect(record.statements).toHaveLength(4);
    expect(
      new Set(record.choices.map(({ decided, withdrawn }) => Boolean(decided) || Boolean(withdrawn))),
    ).toEqual(new Set([true, false]));
    expect(forecastOf(record, rollUp(record)).lines.length).toBeGreaterThan(50);
  });

  it('is the same at every run', () => {
    expect(lifeSize(size)).toEqual({ files, photos });
  });

  it('spreads things unevenly over its days, and loses none', () => {
    const counts = countsOver(1500, 600);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(1500);
    expect(new Set(counts.slice(0, 4))).toEqual(new Set([1, 0, 3, 6]));
    expect(countsOver(7, 101).reduce((sum, count) => sum + count, 0)).toBe(7);
  });
});

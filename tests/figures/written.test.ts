// Every reader with writings that it knows and writings that it refuses. Conversions: an inch is exactly 25.4 mm
// (NIST SP 811, app. B); sheet gauges: shared/gauges.json names its sources.
import { describe, expect, it } from 'vitest';
import { readAngle } from '../../src/figures/angles.ts';
import {
  addDays,
  daysBetween,
  dayText,
  isDay,
  monthOf,
  monthText,
  readDay,
  shortDayText,
  weekday,
} from '../../src/figures/days.ts';
import { minutesText, readMinutes, writtenTime } from '../../src/figures/hours.ts';
import { inchText, lengthText, workedText } from '../../src/figures/length-text.ts';
import { type Length, millimetres, readLength } from '../../src/figures/lengths.ts';
import { certain, inOrder } from '../../src/figures/ranges.ts';
import type { Reading } from '../../src/figures/reading.ts';
import { readCount, readShare, shareText } from '../../src/figures/shares.ts';
import { readThickness } from '../../src/figures/thickness.ts';

const got = <T>(reading: Reading<T>): T | string => (reading.ok ? reading.value : reading.expected);
const length = (text: string) => got(readLength(text)) as Length;

describe('time', () => {
  it.each([
    ['3.5', 210],
    ['.5', 30],
    ['3h 30m', 210],
    ['3h30m', 210],
    ['3H', 180],
    ['3:30', 210],
    ['0:05', 5],
    ['210m', 210],
    ['0', 0],
    ['6.25', 375],
  ])('`%s` is %i minutes', (text, minutes) => {
    expect(got(readMinutes(text))).toBe(minutes);
  });

  it.each(['', 'abc', '3:60', '3:3', '-1', '3h 30', '1,5', '3h-30m'])('`%s` is refused', (text) => {
    expect(got(readMinutes(text))).toContain('a time such as');
  });

  it('that is no whole minute is refused with the nearest that is', () => {
    // 0.33 h is 19.8 min, 1.99 h is 119.4 min
    expect(got(readMinutes('0.33'))).toContain('`0h 20m`');
    expect(got(readMinutes('1.99'))).toContain('`1h 59m`');
  });

  it('beyond ten thousand hours is a slip', () => {
    expect(got(readMinutes('10000'))).toBe(600_000);
    expect(got(readMinutes('10001'))).toContain('below ten thousand hours');
  });

  it.each([
    [200, '3 h 20 m'],
    [0, '0 h 00 m'],
    [5, '0 h 05 m'],
    [-65, '−1 h 05 m'],
  ])('%i minutes are shown as %s', (minutes, text) => {
    expect(minutesText(minutes)).toBe(text);
  });

  it.each([
    [255, '4h 15m'],
    [180, '3h'],
    [45, '45m'],
    [0, '0h'],
  ])('%i minutes are written as %s, which reads back', (minutes, text) => {
    expect(writtenTime(minutes)).toBe(text);
    expect(readMinutes(text)).toEqual({ ok: true, value: minutes });
  });
});

describe('days', () => {
  it.each(['2025-04-16', '2024-02-29', '2000-02-29', ' 2025-12-31 '])('`%s` is a day', (text) => {
    expect(got(readDay(text))).toBe(text.trim());
  });

  // Gregorian rule: 1900 and 2025 are no leap years
  it.each([
    '2025-02-29',
    '1900-02-29',
    '2025-13-01',
    '2025-00-10',
    '2025-04-31',
    '2025-4-1',
    '16.4.2025',
    '',
    '2025-04-16T00:00',
  ])('`%s` is none', (text) => {
    expect(got(readDay(text))).toContain('a date such as');
    expect(isDay(text)).toBe(false);
  });

  it('are counted over months, leap days and the change of clocks', () => {
    expect([
      daysBetween('2024-02-28', '2024-03-01'),
      daysBetween('2025-02-28', '2025-03-01'),
      daysBetween('2025-03-01', '2025-02-28'),
      daysBetween('2025-03-29', '2025-03-31'),
    ]).toEqual([2, 1, -1, 2]);
    expect([addDays('2025-12-31', 1), addDays('2025-03-01', -1), addDays('2025-01-31', 0)]).toEqual([
      '2026-01-01',
      '2025-02-28',
      '2025-01-31',
    ]);
  });

  // January 1, 1970 was a Thursday; July 4, 1776 too
  it('know their day of the week, before 1970 as well', () => {
    expect(['1970-01-01', '1969-12-31', '1776-07-04', '2025-04-16'].map(weekday)).toEqual([
      'Thursday',
      'Wednesday',
      'Thursday',
      'Wednesday',
    ]);
  });

  it('are shown in words', () => {
    expect(dayText('2025-04-06')).toBe('Sunday, April 6, 2025');
    expect(shortDayText('2025-04-16')).toBe('April 16');
    expect([monthOf('2025-04-16'), monthText('2025-04'), monthText('2025-12-24')]).toEqual([
      '2025-04',
      'April 2025',
      'December 2025',
    ]);
  });
});

describe('lengths', () => {
  it.each([
    ['1 5/16 in', 21, 16, 'in'],
    ['1-5/16"', 21, 16, 'in'],
    ['5/16 inch', 5, 16, 'in'],
    ['-3/64 in', -3, 64, 'in'],
    ['33mm', 33, 1, 'mm'],
    ['−3/64 in', -3, 64, 'in'],
    ['2\' 3 1/2"', 55, 2, 'in'],
    ['2’ 3 1/2”', 55, 2, 'in'],
    ['2 ft', 24, 1, 'in'],
    ['1.25 in', 5, 4, 'in'],
    ['33 mm', 33, 1, 'mm'],
    ['3.2 cm', 32, 1, 'mm'],
    ['1.5 m', 1500, 1, 'mm'],
    ['0 in', 0, 1, 'in'],
  ])('`%s` is %i/%i %s', (text, n, d, unit) => {
    expect(length(text)).toEqual({ n, d, unit });
  });

  it.each(['', 'abc', '1/0 in', '1 5/0 in', '1 5/16 yards', '1..5 mm', '5/ in', '2000001 in', '1 mm 2'])(
    '`%s` is refused',
    (text) => {
      expect(got(readLength(text, 'mm'))).toContain('a length such as');
    },
  );

  it('without a unit are in the record’s, and refused where it has none', () => {
    expect(got(readLength('1 1/2', 'inch'))).toEqual({ n: 3, d: 2, unit: 'in' });
    expect(got(readLength('12', 'mm'))).toEqual({ n: 12, d: 1, unit: 'mm' });
    expect(got(readLength('12'))).toContain('the record says no units');
  });

  it('come to millimetres exactly', () => {
    expect(['1 in', '1 5/16 in', '10 mm'].map((text) => millimetres(length(text)))).toEqual([
      25.4, 33.3375, 10,
    ]);
  });

  it('are shown in the record’s units first', () => {
    const written = length('1 5/16 in');
    expect(lengthText(written, 'inch')).toBe('1 5/16 in (33.3 mm)');
    expect(lengthText(written, 'mm')).toBe('33.3 mm (1 5/16 in)');
    // 33 / 25.4 x 64 = 83.15 sixty-fourths
    expect(lengthText(length('33 mm'), 'inch')).toBe('about 1 19/64 in (33 mm)');
    expect(inchText(length('-3/64 in'))).toBe('−3/64 in');
    expect(inchText(length('0.048 in'))).toBe('0.048 in');
  });
});

describe('lengths worked out', () => {
  // 1/64 in is 0.396875 mm: 7.9375 mm is 20 of them, 4.38 mm is 11.04, 0.31 mm is 0.012205 in
  it.each([
    [7.9375, '5/16 in (7.9 mm)'],
    [-7.9375, '−5/16 in (−7.9 mm)'],
    [4.38, 'about 11/64 in (4.4 mm)'],
    [0.31, '0.012 in (0.3 mm)'],
    [0.05, '0.002 in (0.05 mm)'],
    [-0.05, '−0.002 in (−0.05 mm)'],
    [0, '0 in (0 mm)'],
    [1e-13, '0 in (0 mm)'],
    [2235.2, '88 in (2235.2 mm)'],
  ])('%f mm are %s', (mm, text) => {
    expect(workedText(mm, 'inch')).toBe(text);
  });

  it('of sheet are in thousandths of an inch and hundredths of a millimeter', () => {
    expect(workedText(1.1887, 'inch', 'fine')).toBe('0.0468 in (1.19 mm)');
    expect(workedText(7.9375, 'inch', 'fine')).toBe('0.3125 in (7.94 mm)');
    expect(workedText(1.2192, 'mm', 'fine')).toBe('1.22 mm (0.048 in)');
  });
});

describe('angles', () => {
  it.each([
    ['1.5 deg', 1.5],
    ['1.5°', 1.5],
    ['-1.5°', -1.5],
    ['−1.5°', -1.5],
    ['+1.5 degrees', 1.5],
    ['0°', 0],
  ])('`%s` is %f degrees', (text, degrees) => {
    expect(got(readAngle(text))).toEqual({ degrees, written: text });
  });

  // arctan 0.026 = 1.489355 degrees; arctan ((5/16)/12) = 1.491740 degrees, by bc -l
  it.each([
    ['26 mm/m', 1.489355],
    ['5/16 in/ft', 1.49174],
    ['-26 mm/m', -1.489355],
  ])('`%s` is the arctangent %f', (text, degrees) => {
    expect((got(readAngle(text)) as { degrees: number }).degrees).toBeCloseTo(degrees, 6);
  });

  it.each(['', '1.5', '1.5 deg C', '1.5 mm', '5/16 in/m', '26 mm/ft', 'abc°'])('`%s` is refused', (text) => {
    expect(got(readAngle(text))).toContain('an angle such as');
  });
});

describe('shares and counts', () => {
  it.each([
    ['15%', '0.15'],
    ['0.15', '0.15'],
    ['7.25 %', '0.0725'],
    ['.5', '0.5'],
    ['100%', '1'],
    ['0', '0'],
  ])('`%s` is %s', (text, share) => {
    expect(got(readShare(text))).toBe(share);
  });

  it.each(['101%', '15', '-1%', 'abc', '', '1,5%'])('`%s` is refused', (text) => {
    expect(got(readShare(text))).toContain('a share between 0% and 100%');
  });

  it('may be more than the whole where a rate may', () => {
    expect(got(readShare('250%', 10))).toBe('2.5');
    expect(got(readShare('1001%', 10))).toContain('between 0% and 1000%');
  });

  it('are shown in percent', () => {
    expect(['0.0725', '0.1', '1', '0'].map(shareText)).toEqual(['7.25%', '10%', '100%', '0%']);
  });

  it.each([
    ['3', '3'],
    ['12.50', '12.5'],
    ['007', '7'],
  ])('a count of `%s` is %s', (text, count) => {
    expect(got(readCount(text))).toBe(count);
  });

  it.each(['0', '0.0', '-1', 'three', '', '1,000', '1e3'])('a count of `%s` is refused', (text) => {
    expect(got(readCount(text))).toContain('a count above zero');
  });
});

describe('sheet', () => {
  it('has a length, or a gauge that its metal gives a meaning', () => {
    expect(got(readThickness('0.048 in'))).toEqual({ length: { n: 6, d: 125, unit: 'in' } });
    expect(got(readThickness('1.2', 'mm'))).toEqual({ length: { n: 6, d: 5, unit: 'mm' } });
    // 18 gauge by the manufacturers' standard gauge for sheet steel: 0.0478 in
    expect(got(readThickness('18 ga steel'))).toMatchObject({
      length: { n: 239, d: 5000, unit: 'in' },
      gauge: { number: 18 },
    });
  });

  it.each(['18 ga', '18 ga cheese', '99 ga steel', 'thick', ''])('`%s` is refused', (text) => {
    expect(readThickness(text).ok).toBe(false);
  });
});

describe('ranges', () => {
  it('are in order from low to high, and one value is certain', () => {
    expect(certain(9)).toEqual({ low: 9, likely: 9, high: 9 });
    expect(
      [
        certain(9),
        { low: 1, likely: 2, high: 3 },
        { low: 2, likely: 1, high: 3 },
        { low: 1, likely: 4, high: 3 },
      ].map(inOrder),
    ).toEqual([true, true, false, false]);
  });
});

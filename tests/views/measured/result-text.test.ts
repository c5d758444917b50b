// What is said beside a reading. The figures are those of tests/rollup/measured.test.ts and, in inches, by hand.
import { describe, expect, test } from 'vitest';
import { measurementsOf } from '../../../src/rollup/measured.ts';
import { asidesOf } from '../../../src/views/day.ts';
import { placeText } from '../../../src/views/measured/figure-text.ts';
import { resultText } from '../../../src/views/measured/result-text.ts';
import { readingsOfPart } from '../../../src/views/part.ts';
import { recordOf } from '../../rollup/records.ts';
import { partOf } from '../records.ts';

const day = (line: string) => ({
  'log/2025-03-03.md': `---\nmeasured:\n  - { part: frame, state: before, ${line} }\n---\n`,
});
const said = (line: string, units: 'inch' | 'mm' = 'inch') => {
  const [only] = measurementsOf(recordOf(day(line))).readings;
  if (!only) throw new Error('one reading');
  return resultText(only, units);
};

describe('what follows from a reading', () => {
  test.each([
    [
      'kind: level, reading: 1.5°, over: 300 mm, within: 0.5°',
      'mm',
      'off by 1.5°, 7.9 mm (about 5/16 in) over 300 mm; not passed: beyond 0.5°',
    ],
    [
      'kind: level, reading: -0.2°, over: 3 1/2 in, within: 0.5°',
      'inch',
      'off by 0.2°, 0.012 in (0.3 mm) over 3 1/2 in; passed: within 0.5°',
    ],
    [
      'kind: level, reading: 0.5°, within: 0.5°, plus-minus: 0.1°',
      'inch',
      'off by 0.5 ± 0.1°; can’t be told: 0.5° lies inside the ±',
    ],
    ['kind: level, reading: 0°', 'inch', 'level'],
    ['kind: level, reading: 2°, target: 2°', 'inch', 'as it should be'],
    [
      'kind: diagonals, a: 1200 mm, b: 900 mm, a2: 1200 mm, b2: 900 mm, d1: 1502 mm, d2: 1498 mm, within: 3 mm',
      'mm',
      'diagonals differ by 4.0 mm (about 5/32 in); out of square by 0.16°, 2.5 mm (about 3/32 in) over 900 mm; not passed: beyond 3 mm (about 1/8 in)',
    ],
    [
      'kind: diagonals, a: 27 in, b: 31 in, d1: 41 in, d2: 41 in, within: 1/8 in',
      'inch',
      'diagonals the same; can’t be told: opposite sides weren’t read, and a trapezoid has equal diagonals too',
    ],
    [
      'kind: heights, corners: [0 mm, 0 mm, 0 mm, 8 mm], within: 3 mm',
      'mm',
      'no height further than 2.0 mm (about 5/64 in) from one plane; twist 8.0 mm (about 5/16 in); passed: within 3 mm (about 1/8 in)',
    ],
    [
      'kind: straight, length: 57 in, offsets: [0 in, 1/64 in, 1/32 in, 1/64 in, 0 in], within: 1/16 in, plus-minus: 1/64 in',
      'inch',
      'straight within 1/32 ± 1/32 in (0.8 ± 0.8 mm), furthest at 28 1/2 in (724 mm); passed: within 1/16 in (1.6 mm)',
    ],
    [
      'kind: gaps, where: rear edge, readings: [5/32 in, 5/32 in, 3/16 in, 5/32 in], target: 5/32 in, within: 1/32 in',
      'inch',
      'mean about 11/64 in (4.2 mm), from 5/32 in (4.0 mm) to 3/16 in (4.8 mm); off by 1/32 in (0.8 mm) at most; passed: within 1/32 in (0.8 mm)',
    ],
    [
      'kind: gaps, where: rear edge, readings: [5/32 in, 5/32 in], target: 5/32 in',
      'inch',
      '5/32 in (4.0 mm) throughout',
    ],
    [
      'kind: thickness, readings: [0.044 in], target: 18 ga steel, within: 0.003 in',
      'inch',
      'off by 0.0038 in (0.10 mm); not passed: beyond 0.003 in (0.08 mm)',
    ],
    ['kind: length, of: wood lost, readings: [27 in]', 'inch', '27 in (685.8 mm)'],
    ['kind: length, of: drop, readings: [0 in], target: 0 in', 'inch', 'as it should be'],
  ] as const)('%s', (line, units, text) => {
    expect(said(line, units)).toBe(text);
  });

  test('of timber says which way it moves, and warns where the figure is rougher', () => {
    const ash = (from: string, to: string) =>
      said(
        `kind: timber, species: white ash, width: 4 1/2 in, grain: tangential, moisture-from: ${from}, moisture-to: ${to}`,
      );
    // 4.5 in x 0.00274 x 3 points = 0.03699 in (Wood Handbook, table 13-5)
    expect(ash('12%', '9%')).toBe('shrinks by 0.037 in (0.9 mm)');
    expect(ash('9%', '12%')).toBe('swells by 0.037 in (0.9 mm)');
    expect(ash('9%', '9%')).toBe('stays as wide');
    expect(ash('20%', '9%')).toMatch(/^shrinks by .* mm\)\. The coefficient holds from 6% to 14%/);
  });

  test('that can’t be worked out says why', () => {
    expect(
      said('kind: timber, species: lignum, width: 5 in, grain: radial, moisture-from: 12%, moisture-to: 8%'),
    ).toBe('There are no movement figures for “lignum” here.');
  });

  test('stands beside the reading on the day’s page and the part’s', () => {
    const record = recordOf(day('kind: level, at: L3, reading: 1.4°, within: 0.5°, plus-minus: 0.1°'));
    const [entry] = record.entries;
    if (!entry) throw new Error('one entry');
    const row = ['L3: 1.4°, within 0.5°, ± 0.1°', 'off by 1.4 ± 0.1°; not passed: beyond 0.5°'];
    const [aside] = asidesOf(entry, record);
    expect(aside?.heads).toEqual(['Part', 'State', 'Reading', 'Comes to']);
    expect(aside?.rows).toEqual([['Frame', 'before', ...row]]);
    expect(readingsOfPart(partOf(record, 'frame'), record)).toMatchObject([
      { text: row[0], result: row[1], day: 'March 3, 2025' },
    ]);
  });
});

describe('a place along a length', () => {
  // 549 mm is 21.61 in, nearest eighth 21 5/8
  test.each([
    [723.9, '28 1/2 in (724 mm)'],
    [548.64, 'about 21 5/8 in (549 mm)'],
    [0, '0 in (0 mm)'],
  ])('%f mm is %s', (mm, text) => {
    expect(placeText(mm, 'inch')).toBe(text);
  });
});

// Readings as a shop writes them: what is read exactly, and the one sentence for what can't be read.
import { describe, expect, it } from 'vitest';
import { millimetres } from '../../src/figures/lengths.ts';
import { problemText } from '../../src/views/problem-text.ts';
import { openSmall, SMALL } from './small.ts';

const day = (line: string) => ({
  'log/2025-03-04.md': `---\nmeasured:\n  - { part: cowl, state: before, ${line} }\n---\n`,
});
const readingOf = (line: string) => {
  const { record, problems } = openSmall(day(line));
  expect(problems).toEqual([]);
  return record?.entries.flatMap(({ measured = [] }) => measured)[0];
};
/** What is said of the day’s file. */
const saidOf = (line: string, car?: string) =>
  openSmall({ ...(car && { 'car.md': car }), ...day(line) })
    .problems.filter(({ place }) => place.file.startsWith('log/2025-03-04'))
    .map(problemText);

describe('a reading', () => {
  it.each([
    ['1 5/16 in', 21 / 16],
    [`'1-5/16"'`, 21 / 16],
    [`"2' 3 1/2\\""`, 27.5],
    ['33mm', 33 / 25.4],
    ['33', 33],
  ])('of %s is read exactly', (written, inches) => {
    const reading = readingOf(`kind: length, readings: [${written}]`);
    const [length] = reading?.kind === 'length' ? reading.readings : [];
    expect(length && millimetres(length) / 25.4).toBeCloseTo(inches, 12);
  });

  // arctan ((5/16)/12) = 1.491740 degrees, by bc -l
  it.each([
    ['1.5°', 1.5],
    ['5/16 in/ft', 1.49174],
  ])('of %s is read as an angle', (written, degrees) => {
    const reading = readingOf(`kind: level, reading: ${written}`);
    expect(reading?.kind === 'level' && reading.reading.degrees).toBeCloseTo(degrees, 6);
  });

  it('carries its ± in the unit of its kind', () => {
    expect(readingOf('kind: level, reading: 1.5°, plus-minus: 0.1°')).toMatchObject({
      'plus-minus': { degrees: 0.1 },
    });
    expect(readingOf('kind: gaps, where: rear edge, readings: [4 mm], plus-minus: 1/64 in')).toMatchObject({
      'plus-minus': { n: 1, d: 64, unit: 'in' },
    });
  });

  it.each([
    ['kind: length, readings: [1 5/0 in]', '`1 5/0 in`', 'a length such as'],
    ['kind: level, reading: 1.5 deg C', '`1.5 deg C`', 'an angle such as'],
    ['kind: straight, length: 57 in, offsets: [0 in, 0 in], plus-minus: 0.1°', '`0.1°`', 'a length such as'],
    ['kind: level, reading: 1.5°, plus-minus: 1/64 in', '`1/64 in`', 'an angle such as'],
  ])(
    '{ %s } gets one sentence, with what was written and what would be understood',
    (line, written, expected) => {
      const said = saidOf(line);
      expect(said).toHaveLength(1);
      expect(said[0]).toContain(written);
      expect(said[0]).toContain(expected);
      expect(said[0]).toMatch(/^log\/2025-03-04\.md:3:\d+ {2}error {2}/);
    },
  );

  it('without a unit is refused where the record has none', () => {
    const said = saidOf('kind: length, readings: [33]', SMALL['car.md'].replace('units: inch\n', ''));
    expect(said).toHaveLength(1);
    expect(said[0]).toContain('`33`');
    expect(said[0]).toContain('the record says no units');
  });
});

// What came off last goes on first; what can't be found or placed is told. Common practice in taking a car apart.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { marksOf } from '../../src/rollup/marks.ts';
import { recordOf } from './records.ts';

const log = (...marks: string[]) => `---\nmarks:\n${marks.map((mark) => `  - { ${mark} }\n`).join('')}---\n`;
const full = (mark: string, part: string, as = 'refit') =>
  `mark: ${mark}, what: Bolts, part: ${part}, from-where: left, count: 4, kept: bag 1, as: ${as}`;

describe('the list to put back by', () => {
  const record = recordOf({
    'log/2025-03-03.md': log(full('A', 'cowl'), full('B', 'frame'), full('P', 'cowl', 'pattern')),
    'log/2025-03-04.md': log(full('C', 'cowl')),
    'log/2025-03-04-b.md': log(full('D', 'frame'), 'mark: E, what: Pins, as: refit, photo: IMG_1.jpg'),
  });

  test('turns the order of taking off round: parts, and what came off each', () => {
    expect(
      marksOf(record).reassembly.map(({ part, marks }) => [part, marks.map(({ mark }) => mark)]),
    ).toEqual([
      [undefined, ['E']],
      ['frame', ['D', 'B']],
      ['cowl', ['C', 'A']],
    ]);
  });

  test('keeps the day, the entry and the picture of each tag', () => {
    expect(marksOf(record).all.at(-1)).toMatchObject({
      mark: 'E',
      day: '2025-03-04',
      entry: '2025-03-04-b',
      photo: 'photos/2025-03-04/IMG_1.jpg',
      place: { file: 'log/2025-03-04-b.md', line: 4 },
    });
  });

  test('holds everything that goes back, once', () => {
    const tag = fc.record({
      part: fc.constantFrom('cowl', 'frame'),
      as: fc.constantFrom('refit', 'pattern', 'spare', 'scrap'),
    });
    fc.assert(
      fc.property(fc.array(tag, { minLength: 1, maxLength: 12 }), (tags) => {
        const texts = { 'log/2025-03-03.md': log(...tags.map(({ part, as }, i) => full(`T${i}`, part, as))) };
        const { reassembly } = marksOf(recordOf(texts));
        const back = reassembly.flatMap(({ marks }) => marks.map(({ mark }) => mark));
        expect(back.toSorted()).toEqual(
          tags.flatMap(({ as }, i) => (as === 'refit' ? [`T${i}`] : [])).toSorted(),
        );
      }),
      { numRuns: 25 },
    );
  });
});

describe('what has no home', () => {
  test.each([
    ['a thing to refit that nobody says where from', 'as: refit, kept: bag 2', ['from-where']],
    ['a thing to refit that is kept nowhere', 'as: refit, from-where: left', ['kept']],
    ['a thing to refit with neither', 'as: refit', ['kept', 'from-where']],
    ['a pattern that is kept nowhere', 'as: pattern', ['kept']],
  ])('%s', (_, more, lacks) => {
    const record = recordOf({ 'log/2025-03-03.md': log(`mark: A, what: Bolts, ${more}`) });
    expect(marksOf(record).homeless.map((each) => each.lacks)).toEqual([lacks]);
  });

  test.each([
    ['scrap needs none', 'as: scrap'],
    ['a spare needs only its shelf', 'as: spare, kept: shelf 2'],
  ])('%s', (_, more) => {
    const record = recordOf({ 'log/2025-03-03.md': log(`mark: A, what: Bolts, ${more}`) });
    expect(marksOf(record).homeless).toEqual([]);
  });
});

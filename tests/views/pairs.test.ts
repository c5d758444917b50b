import { describe, expect, it } from 'vitest';
import { pairsOf } from '../../src/views/pairs.ts';
import { allShots } from '../../src/views/timeline.ts';
import { pictured, type Taken } from './pictured.ts';

const pairs = (days: Record<string, readonly Taken[]>) => {
  const { record, photos } = pictured(days);
  return pairsOf(allShots(record, photos)).map(({ before, after, ...pair }) => ({
    ...pair,
    sides: [before, after].map(({ shot, label }) => `${label}: ${shot.caption}`),
  }));
};

describe('pairs of pictures', () => {
  it('hold the state before against the state after', () => {
    expect(
      pairs({
        '2025-06-02': [
          { file: 'a.jpg', caption: 'a', part: 'cowl', shows: 'before', pair: 'cowl-side', ratio: 1.5 },
        ],
        '2025-06-09': [{ file: 'b.jpg', caption: 'b', shows: 'after', pair: 'cowl-side', ratio: 1.5 }],
      }),
    ).toEqual([
      {
        name: 'cowl-side',
        title: 'Cowl side',
        parts: ['cowl'],
        sides: ['Before: a', 'After: b'],
        frame: 1.5,
        note: '',
      },
    ]);
  });

  it('take the first and the last of more than two, and say so', () => {
    const shows = ['before', 'during', 'during', 'after'];
    const days = shows.map((word, i) => [
      `2025-06-0${i + 1}`,
      [{ file: `${i}.jpg`, caption: String(i), shows: word, pair: 'sill' }],
    ]);
    expect(pairs(Object.fromEntries(days))).toMatchObject([
      { sides: ['Before: 0', 'After: 3'], note: 'The first and the last of 4 pictures.' },
    ]);
  });

  it('go by the writer’s words where a camera’s clock was wrong', () => {
    expect(
      pairs({
        '2025-06-02': [
          { file: 'a.jpg', caption: 'a', shows: 'before', pair: 'x', taken: '2025-07-02T10:00:00' },
        ],
        '2025-06-09': [{ file: 'b.jpg', caption: 'b', shows: 'after', pair: 'x' }],
      }),
    ).toMatchObject([{ sides: ['Before: a', 'After: b'] }]);
  });

  it('say earlier and later where the words are the same or missing', () => {
    expect(
      pairs({
        '2025-06-02': [
          { file: 'a.jpg', caption: 'a', shows: 'during', pair: 'x' },
          { file: 'b.jpg', caption: 'b', shows: 'during', pair: 'x' },
        ],
        '2025-06-03': [
          { file: 'c.jpg', caption: 'c', pair: 'y' },
          { file: 'd.jpg', caption: 'd', shows: 'after', pair: 'y' },
        ],
      }),
    ).toMatchObject([{ sides: ['Earlier: a', 'Later: b'] }, { sides: ['Earlier: c', 'After: d'] }]);
  });

  it('stand a portrait and a landscape at the same height in a frame as wide as the wider', () => {
    expect(
      pairs({
        '2025-06-02': [
          { file: 'a.jpg', pair: 'x', ratio: 0.75 },
          { file: 'b.jpg', pair: 'x', ratio: 1.5 },
        ],
      }),
    ).toMatchObject([{ frame: 1.5 }]);
  });

  it('aren’t made of one picture, and come in the order of their second', () => {
    expect(
      pairs({
        '2025-06-02': [
          { file: 'a.jpg', pair: 'long' },
          { file: 'b.jpg', pair: 'short' },
          { file: 'c.jpg', pair: 'alone' },
        ],
        '2025-06-03': [{ file: 'd.jpg', pair: 'short' }],
        '2025-06-04': [{ file: 'e.jpg', pair: 'long' }],
      }).map(({ name }) => name),
    ).toEqual(['short', 'long']);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shot } from '../../src/views/photos.ts';
import { shotsByPart, shotsByWord } from '../../src/views/shot-filters.ts';
import { photographsOnDays, takenText } from '../../src/views/shot-words.ts';
import { allShots, daysOfShots, MOST, shotMonths } from '../../src/views/timeline.ts';
import { pictured, type Taken } from './pictured.ts';

const named = (shots: readonly Shot[]) =>
  shots.map(({ file }) => file.replace(/^pictures\/|-large\.webp$/g, ''));
const many = (count: number, of: Partial<Taken> = {}): Taken[] =>
  Array.from({ length: count }, (_, i) => ({ file: `P${i}.jpg`, ...of }));

describe('the order of pictures', () => {
  it('is that of the camera’s clock, then of the entry, then of the writer', () => {
    const { record, photos } = pictured({
      '2025-06-02': [
        { file: 'late.jpg', taken: '2025-06-02T16:00:00' },
        { file: 'early.jpg', taken: '2025-06-02T08:00:00' },
        { file: 'undated-2.jpg' },
        { file: 'undated-1.jpg' },
      ],
      '2025-06-03': [
        { file: 'day-before.jpg', taken: '2025-06-02T12:00:00' },
        { file: 'same-second.jpg', taken: '2025-06-02T16:00:00' },
      ],
    });
    expect(named(allShots(record, photos))).toEqual([
      'undated-2.jpg',
      'undated-1.jpg',
      'early.jpg',
      'day-before.jpg',
      'late.jpg',
      'same-second.jpg',
    ]);
  });

  it('goes by the entry where the camera’s clock was never set', () => {
    const { record, photos } = pictured({
      '2025-06-02': [
        { file: 'unset.jpg', taken: '2000-01-01T00:04:00' },
        { file: 'a-month-late.jpg', taken: '2025-05-02T10:00:00' },
        { file: 'later-still.jpg', taken: '2025-05-01T10:00:00' },
      ],
    });
    expect(allShots(record, photos).map(({ when }) => when)).toEqual([
      '2025-05-02T10:00:00',
      '2025-06-02',
      '2025-06-02',
    ]);
  });

  it('goes by the wall’s time: an offset moves nothing', () => {
    const { record, photos } = pictured({
      '2025-06-02': [
        { file: 'ten.jpg', taken: '2025-06-02T10:00:00-08:00' },
        { file: 'nine.jpg', taken: '2025-06-02T09:00:00.5Z' },
        { file: 'eleven.jpg', taken: '2025-06-02T11:00:00' },
      ],
    });
    expect(named(allShots(record, photos))).toEqual(['nine.jpg', 'ten.jpg', 'eleven.jpg']);
  });
});

describe('the months', () => {
  it('hold each picture once, on pages of at most 60, each turning to the next', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(150), { minLength: 1, maxLength: 4 }), (counts) => {
        const days = counts.map((count, i) => [`2025-0${i + 1}-10`, many(count)] as const);
        const { record, photos } = pictured(Object.fromEntries(days.filter(([, shots]) => shots.length > 0)));
        const months = shotMonths(record, photos);
        const pages = months.flatMap((month) => month.pages);
        expect(months.map(({ shots }) => shots.length)).toEqual(counts.filter((count) => count > 0));
        for (const { shots, pages: own } of months) {
          expect(own.flatMap((page) => page.shots)).toEqual(shots);
          expect(own.length).toBe(Math.ceil(shots.length / MOST));
          expect(own.every((page) => page.of === own.length && page.shots.length <= MOST)).toBe(true);
        }
        expect(pages.map(({ after }) => after?.path)).toEqual(pages.map((_, i) => pages[i + 1]?.path));
        expect(pages.slice(1).map(({ before }) => before?.path)).toEqual(
          pages.slice(0, -1).map(({ path }) => path),
        );
        expect(new Set(pages.map(({ path }) => path)).size).toBe(pages.length);
      }),
      { numRuns: 25 },
    );
  });

  it('split a month with more into pages with a number', () => {
    const { record, photos } = pictured({ '2025-06-02': many(61) });
    const [june] = shotMonths(record, photos);
    expect(june?.pages.map(({ path, title, shots }) => [path, title, shots.length])).toEqual([
      ['photos/2025-06.html', 'June 2025', 60],
      ['photos/2025-06-2.html', 'June 2025, page 2', 1],
    ]);
  });

  it('name the days in them, and a day of the camera’s that isn’t its entry’s', () => {
    const { record, photos } = pictured({
      '2025-06-02': [{ file: 'a.jpg' }, { file: 'b.jpg', taken: '2025-06-01T10:00:00' }],
      '2025-06-04': [{ file: 'd.jpg' }],
      '2025-01-04': [{ file: 'c.jpg', taken: '2024-12-31T10:00:00' }],
    });
    const months = shotMonths(record, photos);
    expect(months.map(({ title, shots }) => [title, photographsOnDays(shots)])).toEqual([
      ['December 2024', '1 photograph, 1 day'],
      ['June 2025', '3 photographs, 3 days'],
    ]);
    expect(months.flatMap(({ shots }) => shots.map((shot) => takenText(shot)))).toEqual([
      'December 31, 2024, in the entry of January 4, 2025',
      'June 1, in the entry of June 2',
      'June 2',
      'June 4',
    ]);
    expect([...daysOfShots(months[1]?.shots ?? []).values()].map(({ id }) => id)).toEqual([
      'on-2025-06-01',
      'on-2025-06-02',
      'on-2025-06-04',
    ]);
  });
});

describe('the filters', () => {
  const { record, photos } = pictured({
    '2025-06-02': [
      { file: 'f.jpg', part: 'frame', shows: 'during' },
      { file: 'c.jpg', part: 'cowl', shows: 'before' },
      { file: 'whole.jpg' },
    ],
    '2025-06-05': [{ file: 'c2.jpg', part: 'cowl', shows: 'after' }, ...many(60, { part: 'cowl' })],
  });

  it('hold the pictures of a part, in the order of the parts, and those of the whole car last', () => {
    expect(shotsByPart(record, photos).map(({ name, shots, about }) => [name, shots.length, about])).toEqual([
      ['Cowl', 62, 'part/cowl.html'],
      ['Frame', 1, 'part/frame.html'],
      ['The car as a whole', 1, undefined],
    ]);
    expect(shotsByPart(record, photos).map(({ pages }) => pages.map(({ path }) => path))).toEqual([
      ['photos/part/cowl.html', 'photos/part/cowl/2.html'],
      ['photos/part/frame.html'],
      ['photos/part/none.html'],
    ]);
  });

  it('hold the pictures before, during and after the work', () => {
    expect(
      shotsByWord(record, photos).map(({ name, shots, pages }) => [name, named(shots), pages[0]?.path]),
    ).toEqual([
      ['Before the work', ['c.jpg'], 'photos/shows/before.html'],
      ['During the work', ['f.jpg'], 'photos/shows/during.html'],
      ['After the work', ['c2.jpg'], 'photos/shows/after.html'],
    ]);
  });
});

// The page of marks, word for word.
import { describe, expect, test } from 'vitest';
import { marksPage } from '../../src/views/marks.ts';
import type { Photos, WebPhoto } from '../../src/views/photos.ts';
import { recordOf } from '../rollup/records.ts';

const web = (name: string): WebPhoto => ({
  file: `pictures/${name}-large.webp`,
  width: 1600,
  height: 1200,
  small: { file: `pictures/${name}-small.webp`, width: 480, height: 360 },
});
const PHOTOS: Photos = new Map([
  ['photos/2025-03-03/IMG_1.jpg', web('one')],
  ['photos/2025-03-03/IMG_2.jpg', web('two')],
]);
const page = (log: string) => marksPage(recordOf({ 'log/2025-03-03.md': `---\n${log}---\n` }), PHOTOS);
const tag = (more: string) => `  - { ${more} }\n`;

describe('the page of marks', () => {
  const told = page(
    `marks:\n${tag('mark: CW 1, what: Bolts, part: cowl, from-where: left foot, count: 4, kept: bag 12, as: refit, photo: IMG_1.jpg')}${tag('mark: CW 2, what: Shims, part: cowl, as: refit, photo: IMG_2.jpg')}${tag('mark: P 1, what: Old patch, part: cowl, kept: loft, as: pattern')}photos:\n${tag('file: IMG_1.jpg, alt: Four bolts on a bench.')}`,
  );

  test('opens with how many tags there are, and how many go back', () => {
    expect(told.opening).toBe('3 tags, 2 of them to go back on the car.');
  });

  test('lists what goes back under its part, last off first, each with what was written', () => {
    expect(told.back).toHaveLength(1);
    expect(told.back[0]).toMatchObject({ id: 'part-cowl', part: 'Cowl', to: 'part/cowl.html' });
    expect(told.back[0]?.rows.map(({ mark }) => mark)).toEqual(['CW 2', 'CW 1']);
    expect(told.back[0]?.rows[1]).toMatchObject({
      what: 'Bolts',
      where: 'left foot',
      count: '4',
      kept: 'bag 12',
      day: 'March 3, 2025',
      page: 'day/2025-03-03.html',
    });
  });

  test('shows the picture of a tag with the words that the day has for it, or the tag’s own', () => {
    expect(told.back[0]?.rows.map(({ photo }) => photo?.alt)).toEqual([
      'CW 2: Shims',
      'Four bolts on a bench.',
    ]);
  });

  test('says what a tag lacks', () => {
    expect(told.homeless.map(({ mark, lacks }) => [mark, lacks])).toEqual([
      ['CW 2', 'nobody wrote where it is kept; nobody wrote where it came from'],
    ]);
  });

  test('keeps patterns apart from what goes back', () => {
    expect(told.kept.map(({ title, rows }) => [title, rows.map(({ mark }) => mark)])).toEqual([
      ['Kept as patterns', ['P 1']],
    ]);
  });

  test.each([
    ['by: tobias\n', 'Nothing has been tagged yet.'],
    [`marks:\n${tag('mark: A, what: Bolts, as: refit')}`, '1 tag, all to go back on the car.'],
    [`marks:\n${tag('mark: A, what: Bolts, as: scrap')}`, '1 tag, and nothing of it goes back on the car.'],
  ])('%s', (log, opening) => {
    expect(page(log).opening).toBe(opening);
  });
});

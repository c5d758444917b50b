import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryWith, withPhotos } from '../../src/photos/coming-in/entry-text.ts';
import { entryFileOf } from '../../src/record/writing/entry-file.ts';
import { openSmall } from '../record/small.ts';

const ITEM = '  - file: b.jpg\n    caption:\n    alt:\n';

/** Each case: an entry, and the same entry with `b.jpg` added, written out by hand. */
const CASES: Record<string, [before: string, after: string]> = {
  'without a list': ['---\nby: tobias\n---\n\nWords.\n', `---\nby: tobias\nphotos:\n${ITEM}---\n\nWords.\n`],
  'with a list': [
    '---\nphotos:\n  - file: a.jpg\n    caption: One.\nby: tobias\n---\n',
    `---\nphotos:\n  - file: a.jpg\n    caption: One.\n${ITEM}by: tobias\n---\n`,
  ],
  'with comments and odd spacing': [
    '---\n# The day.\n\nphotos:   # all of them\n  -   file:  a.jpg   # blurred\n      caption:   "One."\n  # - file: c.jpg\n\n# Next.\nby:    tobias\n---\nWords.',
    `---\n# The day.\n\nphotos:   # all of them\n  -   file:  a.jpg   # blurred\n      caption:   "One."\n  # - file: c.jpg\n${ITEM}\n# Next.\nby:    tobias\n---\nWords.`,
  ],
  'with a list that isn’t set in': [
    '---\nphotos:\n- { file: a.jpg }\n# Next.\nby: tobias\n---\n',
    '---\nphotos:\n- { file: a.jpg }\n- file: b.jpg\n  caption:\n  alt:\n# Next.\nby: tobias\n---\n',
  ],
  'with a list in brackets': [
    '---\nphotos: [{ file: a.jpg, caption: One. } ] # two\n---\n',
    '---\nphotos: [{ file: a.jpg, caption: One. }, { file: b.jpg } ] # two\n---\n',
  ],
  'with empty brackets': ['---\nphotos: []\n---\n', '---\nphotos: [{ file: b.jpg }]\n---\n'],
  'with a key alone': [
    '---\nphotos: # none yet\nby: tobias\n---\n',
    `---\nphotos: # none yet\n${ITEM}by: tobias\n---\n`,
  ],
  'with a caption of several lines': [
    '---\nphotos:\n  - file: a.jpg\n    caption: |\n      One.\n      Two.\n\nby: tobias\n---\n',
    `---\nphotos:\n  - file: a.jpg\n    caption: |\n      One.\n      Two.\n${ITEM}\nby: tobias\n---\n`,
  ],
  'of words alone': ['Words.\n\n---\n\nMore.\n', `---\nphotos:\n${ITEM}---\n\nWords.\n\n---\n\nMore.\n`],
  'with empty front matter': ['---\n---\nWords.\n', `---\nphotos:\n${ITEM}---\nWords.\n`],
  'of comments alone': ['---\n# by: tobias\n---\n', `---\n# by: tobias\nphotos:\n${ITEM}---\n`],
  'from Windows, with its mark': [
    '\uFEFF---\r\nphotos:\r\n  - file: a.jpg\r\nby: tobias\r\n---\r\n\r\nWords.\r\n',
    `\uFEFF---\r\nphotos:\r\n  - file: a.jpg\r\n${ITEM.replaceAll('\n', '\r\n')}by: tobias\r\n---\r\n\r\nWords.\r\n`,
  ],
  'without a last line end': ['---\nby: tobias\n---', `---\nby: tobias\nphotos:\n${ITEM}---`],
};

describe('an entry', () => {
  it.each(Object.keys(CASES))('%s gets a picture, and every other line stays as it was', (name) => {
    const [before = '', after] = CASES[name] ?? [];
    expect(withPhotos(before, ['b.jpg'])).toBe(after);
  });

  it('that lists a picture already stays as it is', () => {
    const text = '---\nphotos: [{ file: b.jpg }]\n---\n';
    expect(withPhotos(text, ['b.jpg'])).toBe(text);
    expect(withPhotos(text, ['b.jpg', 'c.jpg'])).toBe(
      '---\nphotos: [{ file: b.jpg }, { file: c.jpg }]\n---\n',
    );
  });

  it.each([
    ['a list that is none', '---\nphotos: all of them\n---\n'],
    ['a list of keys', '---\nphotos:\n  first: a.jpg\n---\n'],
    ['front matter never closed', '---\nby: tobias\n'],
    ['front matter that can’t be read', '---\nby: "tobias\n---\n'],
    ['front matter in braces', '---\n{ by: tobias }\n---\n'],
    ['front matter of code', '---js\n{}\n---\n'],
    ['a value for another', '---\na: &a [{ file: a.jpg }]\nphotos: *a\n---\n'],
  ])('with %s isn’t touched', (_, text) => {
    expect(withPhotos(text, ['b.jpg'])).toBeUndefined();
  });

  it('with empty keys is read as one without words, which check then tells', () => {
    const { problems } = openSmall({ 'log/2025-03-04.md': entryWith(['a.jpg', 'b.jpg']) });
    expect(problems.map(({ rule }) => rule).sort()).toEqual([
      'photo-missing',
      'photo-missing',
      'photo-without-words',
    ]);
    expect(problems.find(({ rule }) => rule === 'photo-without-words')?.reason).toBe(
      '`a.jpg` and 1 other have no `caption` and no `alt`.',
    );
  });

  it('can name any file', () => {
    const odd = [
      'IMG 1 (2).jpg',
      '#1.jpg',
      "it's: odd.jpg",
      '- x.jpg',
      'Türe “links”.jpg',
      '007.jpg',
      'a, b.jpg',
    ];
    const { record } = openSmall({ 'log/2025-03-04.md': entryWith(odd) });
    expect(record?.entries[1]?.photos?.map(({ file }) => file)).toEqual(odd);
    const flow = withPhotos('---\nphotos: []\n---\n', odd) ?? '';
    const again = openSmall({ 'log/2025-03-04.md': flow });
    expect(again.record?.entries[1]?.photos?.map(({ file }) => file)).toEqual(odd);
  });

  it('keeps every line it had, in order, whatever it holds', () => {
    const line = fc.constantFrom(
      'by: tobias',
      '# a comment',
      '',
      'photos:',
      '  - file: a.jpg',
      '    caption: One.',
      '  # set in',
      'hours:',
      '  - { work: shop, time: 1h }',
      'shop-only: |',
      '  words',
      '---',
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 14 }), fc.constantFrom('\n', '\r\n'), (lines, eol) => {
        const before = ['---', ...lines, '---', 'Words.', ''].join(eol);
        const after = withPhotos(before, ['b.jpg', 'c.jpg']);
        if (after === undefined) return;
        const left = after.split('\n');
        for (const kept of before.split('\n')) {
          const at = left.indexOf(kept);
          expect(at).toBeGreaterThanOrEqual(0);
          left.splice(0, at + 1);
        }
        expect(after.length - before.length).toBeLessThan(120);
      }),
      { numRuns: 500 },
    );
  });
});

describe('the entry of a day', () => {
  const files = [
    'log/2025-02/2025-02-03.md',
    'log/2025-04/2025-04-16-b.md',
    'log/2025-04/2025-04-16.md',
    'car.md',
  ];
  it.each([
    ['2025-04-16', files, 'log/2025-04/2025-04-16.md'],
    ['2025-04-17', files, 'log/2025-04/2025-04-17.md'],
    ['2025-06-01', files, 'log/2025-06/2025-06-01.md'],
    ['2025-06-01', ['log/2025-05-30.md'], 'log/2025-06-01.md'],
    ['2026-01-02', ['log/2025/12/2025-12-30.md'], 'log/2026/01/2026-01-02.md'],
    ['2025-06-01', ['log/frame/2025-05-30.md'], 'log/frame/2025-06-01.md'],
    ['2025-06-01', [], 'log/2025-06-01.md'],
    ['2025-04-16', ['log/2025-04-16-b.md'], 'log/2025-04-16-b.md'],
  ])('%s lies beside its neighbors', (day, there, file) => {
    expect(entryFileOf(day, there)).toEqual({ file, isNew: !there.includes(file) });
  });
});

import { describe, expect, it } from 'vitest';
import { handedTexts } from '../../src/handover/texts/texts.ts';
import { forAudience } from '../../src/record/audience.ts';
import { openRecord } from '../../src/record/open.ts';
import { OWNER_AMOUNTS, OWNER_WORD, openPrivate, PRIVATE, SHOP_WORD } from '../record/private.ts';

const filesOf = (texts: Record<string, string>) =>
  Object.entries(texts).map(([file, text]) => ({ file, text }));
const handed = (
  texts: Record<string, string>,
  nameOf: (photo: string) => string | undefined = () => undefined,
) => new Map(handedTexts(filesOf(texts), nameOf).map(({ file, text }) => [file, text]));

/** What a value says, wherever it was written. */
function said(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(said);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, one]) => {
      const about = ['place', 'body', 'placeAt', 'sure', 'position'].includes(key);
      return about ? [] : [[key, said(one)]];
    }),
  );
}

describe('the texts of a hand-over', () => {
  const texts = handed(PRIVATE);

  it('hold no word and no amount of a private field', () => {
    const all = [...texts.values()].join('\n');
    for (const word of [SHOP_WORD, OWNER_WORD, ...OWNER_AMOUNTS]) expect(all).not.toContain(word);
  });

  it('make a record without errors, which says what a later reader may see and no more', () => {
    const { record: whole } = openPrivate();
    const { record, problems } = openRecord({
      files: [...texts].map(([file, text]) => ({ file, text })),
      photos: whole?.photos ?? [],
      today: '2025-12-31',
    });
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    if (!record || !whole) throw new Error('both open');
    const seen = forAudience(whole, 'history');
    for (const kind of ['car', 'shop', 'parts', 'entries'] as const)
      expect([kind, said(record[kind])]).toEqual([kind, said(seen[kind])]);
    // Of a choice the lines must say more than that: see the next.
    const withoutLines = (choices: typeof seen.choices) =>
      choices.map((choice) => ({ ...choice, options: choice.options.map(({ lines, ...option }) => option) }));
    expect(said(withoutLines(record.choices))).toEqual(said(withoutLines(seen.choices)));
  });

  it('say that an amount isn’t told where one must stand, and keep the name of a thing to buy', () => {
    expect(texts.get('choices/corners.md')).toContain(
      [
        '---',
        '# Amounts and estimates were not handed over: 0 stands where one must be written.',
        'question: New corners, or patches?',
      ].join('\n'),
    );
    expect(texts.get('choices/corners.md')).toContain(
      [
        '    lines:',
        '      - { do: Shape two corners, work: metal, hours: 0, spend: 0, outside: 0 }',
        '      - { buy: Sheet steel, price: 0, from: millrace }',
        '    keeps: 60%',
      ].join('\n'),
    );
    expect(texts.get('log/2025-03-03.md')).toContain(
      '  - { what: Soft iron wire, from: millrace, part: cowl, price: 0, count: 2 }\n',
    );
    expect(texts.get('parts/cowl.md')).not.toContain('#');
  });

  it('keep what is kept as it was written, in its order', () => {
    const entry = [
      '---',
      'by: "tobias"',
      'hours:',
      '  - part: cowl',
      '    work: metal',
      '    time: 2:30',
      "    note: 'a # is no comment here: 007'",
      'tested:',
      '  - what: >-',
      '      a long',
      '      word',
      '    result: holds',
      '---',
      '',
      'The day, *as told*.',
      '',
    ].join('\n');
    expect(handed({ 'log/2025-03-03.md': entry }).get('log/2025-03-03.md')).toBe(
      entry.replace(/>-\n {6}a long\n {6}word/, '>-\n      a long word'),
    );
  });

  it('leave out every comment, wherever one may stand', () => {
    const entry = `---
# ${SHOP_WORD} first
by: tobias # ${SHOP_WORD} behind a value
# ${SHOP_WORD} between
hours: # ${SHOP_WORD} behind a key
  # ${SHOP_WORD} before a line
  - { part: cowl, work: metal, # ${SHOP_WORD} in braces
      time: 1h } # ${SHOP_WORD} behind braces
  - &${SHOP_WORD} { part: cowl, work: metal, time: 2h }
tested:
  - what: | # ${SHOP_WORD} behind a sign
      a # that stays
    result: holds
finished: [ # ${SHOP_WORD} in brackets
  cowl/strip
  # ${SHOP_WORD} at the end of a list
]
shop-only: no
# ${SHOP_WORD} last
---

<!-- ${SHOP_WORD} a remark -->
Words <!-- ${SHOP_WORD} within --> of the day.

- a list <!-- ${SHOP_WORD}
  over lines -->

> <!-- ${SHOP_WORD} in a quote -->

[//]: # (${SHOP_WORD} written as a link that nothing uses)
[far]: https://example.org "the register"

\`<!-- that stays -->\` and [a register][far].
`;
    const text = handed({ 'log/2025-03-03.md': entry }).get('log/2025-03-03.md') ?? '';
    expect(text).not.toContain(SHOP_WORD);
    for (const kept of [
      'a # that stays',
      '<!-- that stays -->',
      'Words  of the day.',
      '[far]: https://example.org',
    ])
      expect(text).toContain(kept);
  });

  it('name pictures by their new names, and no file of the shop', () => {
    const names = new Map([
      ['photos/2025-03-03/IMG_1.jpg', 'photos/2025-03-03/2025-03-03-1.jpg'],
      ['photos/other/IMG_2.tif', 'photos/2025-03-04/2025-03-04-1.png'],
    ]);
    const texts = handed(
      {
        'log/2025-03-03.md': `---
photos:
  - { file: IMG_1.jpg, alt: one }
  - { file: other/IMG_2.tif, alt: two }
marks:
  - { mark: A, what: bolts, as: refit, photo: IMG_1.jpg }
---

![The cowl](IMG_1.jpg) and ![](IMG_3.jpg)[the *plan* of ![it](IMG_4.jpg)](../IMG_5.md) in [words](https://example.org/a).
`,
        'choices/corners.md': `---
photos: [photos/2025-03-03/IMG_1.jpg]
---
`,
      },
      (photo) => names.get(photo),
    );
    expect(texts.get('log/2025-03-03.md')).toBe(`---
photos:
  - { file: 2025-03-03-1.jpg, alt: one }
  - { file: photos/2025-03-04/2025-03-04-1.png, alt: two }
marks:
  - { mark: A, what: bolts, as: refit, photo: 2025-03-03-1.jpg }
---

(picture: The cowl) and the *plan* of (picture: it) in [words](https://example.org/a).
`);
    expect(texts.get('choices/corners.md')).toContain('photos: [ photos/2025-03-03/2025-03-03-1.jpg ]\n');
  });

  it('say “the owner” where the owner’s name stood, however its words were broken', () => {
    const car = PRIVATE['car.md'].replace(/owner: \{ name: [^,]+,/, 'owner: { name: Ada Thornbury,');
    const texts = handed({
      'car.md': car.replace('Found in a barn.', '> Found in the barn of Ada\n> Thornbury.'),
      'log/2025-03-03.md':
        '---\ntested:\n  - { what: "seat, by Miss Thornbury", result: holds }\n---\n\nAda Thornbury came.\n',
    });
    expect([...texts.values()].join('')).not.toMatch(/Ada|Thornbury/);
    expect(texts.get('car.md')).toContain('> Found in the barn of the owner.');
    expect(texts.get('log/2025-03-03.md')).toContain('what: "seat, by the owner"');
    expect(texts.get('log/2025-03-03.md')).toContain('\nThe owner came.\n');
  });

  it('are without the owner’s statements, and without what stands below the shop’s rules', () => {
    const texts = handed({ ...PRIVATE, 'statements/001.md': '---\nnumber: 1\n---\n' });
    expect([...texts.keys()]).not.toContain('statements/001.md');
    expect(texts.get('shop.md')?.endsWith('town: Lower Millrace }\n---\n')).toBe(true);
  });
});

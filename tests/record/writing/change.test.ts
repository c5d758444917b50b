import { describe, expect, it } from 'vitest';
import { sheets } from '../../../src/record/schema/sheets.ts';
import { changedText } from '../../../src/record/writing/change.ts';
import type { Edit } from '../../../src/record/writing/edit.ts';
import { openSmall } from '../small.ts';

const change = (text: string, ...edits: Edit[]) => changedText(text, edits, sheets.entry);
const cowl = { part: 'cowl', work: 'metal', time: '2h 30m' };
const wire = { what: 'Soft iron wire, 1/8 in', from: 'millrace', price: '4.90', count: '3', bill: '20817' };

/** Each case: an entry, an edit, and the entry as a person would have changed it, written out by hand. */
const CASES: Record<string, [before: string, edit: Edit, after: string]> = {
  'a first line of hours': [
    '',
    { set: ['hours'], value: [cowl] },
    '---\nhours:\n  - { part: cowl, work: metal, time: 2h 30m }\n---\n',
  ],
  'a bill whose number is no figure and whose words hold a comma': [
    '---\nby: tobias\n---\n',
    { set: ['bought'], value: [wire] },
    '---\nby: tobias\nbought:\n  - { what: "Soft iron wire, 1/8 in", from: millrace, price: 4.90, count: 3, bill: "20817" }\n---\n',
  ],
  'keys in the order of the schema, whatever order they came in': [
    '---\n---\n',
    { set: ['hours'], value: [{ note: 'left corner', time: '2h', part: 'cowl', work: 'metal' }] },
    '---\nhours:\n  - { part: cowl, work: metal, time: 2h, note: left corner }\n---\n',
  ],
  'a reading, with its note last': [
    '---\n---\n',
    {
      set: ['measured'],
      value: [{ note: 'read cold', kind: 'level', part: 'frame', state: 'after', reading: '0.2°', at: 'L3' }],
    },
    '---\nmeasured:\n  - { kind: level, part: frame, state: after, at: L3, reading: 0.2°, note: read cold }\n---\n',
  ],
  'lines that are too long for braces, key by key': [
    '---\n---\n',
    {
      set: ['photos'],
      value: [
        {
          file: 'IMG_1028.jpg',
          caption: 'Lower lip of the left rear fender, before the lead came off: "soft" all along.',
          alt: 'A rusty fender edge with ragged holes.',
        },
      ],
    },
    '---\nphotos:\n  - file: IMG_1028.jpg\n    caption: \'Lower lip of the left rear fender, before the lead came off: "soft" all along.\'\n    alt: A rusty fender edge with ragged holes.\n---\n',
  ],
  'a line behind others that are written key by key': [
    '---\nhours:\n  - part: springs\n    work: mechanical\n    time: 5h # four pairs\n---\n',
    { add: ['hours'], item: cowl },
    '---\nhours:\n  - part: springs\n    work: mechanical\n    time: 5h # four pairs\n  - part: cowl\n    work: metal\n    time: 2h 30m\n---\n',
  ],
  'a line behind others in braces': [
    '---\nhours:\n  -  { part: springs, time: 5h}   # all\n\n# Bills.\nbought: []\n---\n',
    { add: ['hours'], item: cowl },
    '---\nhours:\n  -  { part: springs, time: 5h}   # all\n  - { part: cowl, work: metal, time: 2h 30m }\n\n# Bills.\nbought: []\n---\n',
  ],
  'a list between its neighbors, with the comment left to whom it belongs': [
    '---\nhours:\n  - { work: shop, time: 1h }\n# The owner knows.\nfinished: [cowl/strip]\n---\n',
    { add: ['bought'], item: wire },
    '---\nhours:\n  - { work: shop, time: 1h }\nbought:\n  - { what: "Soft iron wire, 1/8 in", from: millrace, price: 4.90, count: 3, bill: "20817" }\n# The owner knows.\nfinished: [cowl/strip]\n---\n',
  ],
  'a key before the first, above its comment': [
    '---\n# Hours of both.\nhours:\n- { work: shop, time: 1h }\n---\n',
    { set: ['by'], value: 'tobias' },
    '---\nby: tobias\n# Hours of both.\nhours:\n- { work: shop, time: 1h }\n---\n',
  ],
  'a list set in as the others are': [
    '---\nhours:\n- { work: shop, time: 1h }\n---\n',
    { add: ['pads'], item: { mount: 'L1', stack: ['1/8 in', '1/16 in'], state: 'before' } },
    '---\nhours:\n- { work: shop, time: 1h }\npads:\n- { mount: L1, stack: [1/8 in, 1/16 in], state: before }\n---\n',
  ],
  'a name in a row': [
    '---\nfinished: [ cowl/strip ] # at last\n---\n',
    { add: ['finished'], item: 'cowl/patch' },
    '---\nfinished: [ cowl/strip, cowl/patch ] # at last\n---\n',
  ],
  'a first finished line': [
    '---\nby: ines\n---\n',
    { add: ['finished'], item: 'cowl/patch' },
    '---\nby: ines\nfinished: [cowl/patch]\n---\n',
  ],
  'a second note where one stands alone': [
    '---\nshop-only: quote higher\n---\n',
    { add: ['shop-only'], item: 'ask for the yard in the morning' },
    '---\nshop-only:\n  - quote higher\n  - ask for the yard in the morning\n---\n',
  ],
  'one value of a line in braces': [
    '---\nhours:\n  - {part: cowl,   time: 2h,work: metal} # ?\n---\n',
    { set: ['hours', 0, 'time'], value: '2h 15m' },
    '---\nhours:\n  - {part: cowl,   time: 2h 15m,work: metal} # ?\n---\n',
  ],
  'one value of a line written key by key': [
    '---\nhours:\n  - part: cowl\n    time:    2h   # ?\n    work: metal\n---\n',
    { set: ['hours', 0, 'time'], value: '2h 15m' },
    '---\nhours:\n  - part: cowl\n    time:    2h 15m   # ?\n    work: metal\n---\n',
  ],
  'a value where its key stands empty': [
    '---\nphotos:\n  - file: a.jpg\n    caption:   # still to say\n    alt:\n---\n',
    { set: ['photos', 0, 'caption'], value: 'Lip: gone.' },
    '---\nphotos:\n  - file: a.jpg\n    caption: "Lip: gone."   # still to say\n    alt:\n---\n',
  ],
  'a new key of a line, in its place': [
    '---\nhours:\n  - part: cowl\n    time: 2h\n    choice: wheels\n---\n',
    { set: ['hours', 0, 'note'], value: 'again' },
    '---\nhours:\n  - part: cowl\n    time: 2h\n    note: again\n    choice: wheels\n---\n',
  ],
  'a new key before the first of a line': [
    '---\nhours:\n  - work: metal\n    time: 2h\n---\n',
    { set: ['hours', 0, 'part'], value: 'cowl' },
    '---\nhours:\n  - part: cowl\n    work: metal\n    time: 2h\n---\n',
  ],
  'a value of several lines for one': [
    '---\nshop-only: |\n  quote higher\n  next time\n\nphotos: []\n---\n',
    { set: ['shop-only'], value: 'quote higher' },
    '---\nshop-only: quote higher\n\nphotos: []\n---\n',
  ],
  'a line taken out with what hangs on it': [
    '---\nhours:\n  - part: cowl # one\n    time: 2h\n  # Two.\n  - part: springs\n    time: 3h\n---\n',
    { remove: ['hours', 0] },
    '---\nhours:\n  # Two.\n  - part: springs\n    time: 3h\n---\n',
  ],
  'the last line taken out, and its key': [
    '---\nby: tobias\nhours:\n  - { part: cowl, time: 2h }\n# Done.\nfinished: [cowl/strip]\n---\n',
    { remove: ['hours', 0] },
    '---\nby: tobias\n# Done.\nfinished: [cowl/strip]\n---\n',
  ],
  'the first key of a line taken out': [
    '---\nhours:\n  - part: cowl\n    work: metal\n    time: 2h\n---\n',
    { remove: ['hours', 0, 'part'] },
    '---\nhours:\n  - work: metal\n    time: 2h\n---\n',
  ],
  'a name taken out of a row': [
    '---\nfinished: [cowl/strip,  cowl/patch, cowl/lead]\n---\n',
    { remove: ['finished', 1] },
    '---\nfinished: [cowl/strip,  cowl/lead]\n---\n',
  ],
  'the last name of a row': [
    '---\nfinished: [cowl/strip,  cowl/patch ]\n---\n',
    { remove: ['finished', 1] },
    '---\nfinished: [cowl/strip ]\n---\n',
  ],
  'words for an entry that has none': [
    '---\nby: ines\n---\n',
    { append: 'Stripped it.' },
    '---\nby: ines\n---\n\nStripped it.\n',
  ],
  'words behind words, without a last line end': [
    '---\nby: ines\n---\nStripped it.',
    { append: 'It thins toward the foot.\n' },
    '---\nby: ines\n---\nStripped it.\n\nIt thins toward the foot.',
  ],
  'words behind words, before the empty lines of the end': [
    'Stripped it.  \n\n\n',
    { append: 'It thins toward the foot.' },
    'Stripped it.  \n\nIt thins toward the foot.\n\n\n',
  ],
  'words alone': ['', { append: 'A day off.' }, 'A day off.\n'],
  'words that begin with dashes': [
    '',
    { append: '--- said the level.' },
    '---\n---\n\n--- said the level.\n',
  ],
  'other words': [
    '---\nby: ines\n---\n\nStripped it.\n',
    { words: 'Not stripped yet.\n\nTomorrow.' },
    '---\nby: ines\n---\n\nNot stripped yet.\n\nTomorrow.\n',
  ],
  'a line in a file from Windows': [
    '\uFEFF---\r\nhours:\r\n  - { part: cowl, time: 2h }\r\n---\r\n\r\nStripped.\r\n',
    { add: ['finished'], item: 'cowl/strip' },
    '\uFEFF---\r\nhours:\r\n  - { part: cowl, time: 2h }\r\nfinished: [cowl/strip]\r\n---\r\n\r\nStripped.\r\n',
  ],
  'a line behind comments alone': [
    '---\n# hours:\n#   - { part: cowl }\n---\n\nWords.\n',
    { add: ['hours'], item: cowl },
    '---\n# hours:\n#   - { part: cowl }\nhours:\n  - { part: cowl, work: metal, time: 2h 30m }\n---\n\nWords.\n',
  ],
  'a line behind a key that nobody knows': [
    '---\nweather:   wet   # all day\n---\n',
    { add: ['finished'], item: 'cowl/strip' },
    '---\nweather:   wet   # all day\nfinished: [cowl/strip]\n---\n',
  ],
};

describe('an entry', () => {
  it.each(Object.keys(CASES))('gets %s', (name) => {
    const [before, edit, after] = CASES[name] ?? ['', { append: '' }, ''];
    expect(change(before, edit)).toBe(after);
  });

  it.each<[string, string, Edit]>([
    ['never closed', '---\nby: tobias\n', { set: ['by'], value: 'ines' }],
    ['that can’t be read', '---\nby: "tobias\n---\n', { set: ['by'], value: 'ines' }],
    ['in braces', '---\n{ by: tobias }\n---\n', { set: ['by'], value: 'ines' }],
    ['of code', '---js\n{}\n---\n', { set: ['by'], value: 'ines' }],
    ['whose list is none', '---\nphotos: all\n---\n', { add: ['photos'], item: { file: 'a.jpg' } }],
    ['whose list is a set', '---\nphotos:\n  a: b\n---\n', { add: ['photos'], item: { file: 'a.jpg' } }],
    ['that stands for another', '---\na: &a [x]\nphotos: *a\n---\n', { append: 'Words.' }],
    ['without the line that is meant', '---\nby: ines\n---\n', { set: ['hours', 0, 'time'], value: '2h' }],
    ['without the key that is to go', '---\nby: ines\n---\n', { remove: ['hours'] }],
    [
      'with empty lines that count',
      '---\nby: |+\n  a\n\n\nweather: wet\n---\n',
      { set: ['hours'], value: [cowl] },
    ],
  ])('with front matter %s stays as it is', (_, before, edit) => {
    expect(change(before, edit)).toBeUndefined();
  });

  it('is written so that the record reads it', () => {
    const hours = [{ ...cowl, line: 'lead', note: 'tinned, "wiped": 1 5/16"' }];
    const text = change('', { set: ['hours'], value: hours }, { append: 'Leaded.' }) ?? '';
    const { problems, record } = openSmall({ 'log/2025-03-04.md': text });
    expect(problems).toEqual([]);
    expect(record?.entries[1]?.hours?.[0]).toMatchObject({ time: 150, note: 'tinned, "wiped": 1 5/16"' });
  });
});

describe('a text of a line', () => {
  // YAML 1.2.2, 7.3.3: what a plain scalar may not begin with or hold, and what it may not hold between braces.
  it.each<[text: string, alone: string, braces: string]>([
    ['1 5/16 in', '1 5/16 in', '1 5/16 in'],
    ['1-5/16"', '1-5/16"', '1-5/16"'],
    [`2' 3 1/2"`, `2' 3 1/2"`, `2' 3 1/2"`],
    ['Lip: gone', '"Lip: gone"', '"Lip: gone"'],
    ['Bill #3', '"Bill #3"', '"Bill #3"'],
    ['a#3', 'a#3', 'a#3'],
    ['#3', '"#3"', '"#3"'],
    ['"soft" steel', `'"soft" steel'`, `'"soft" steel'`],
    [`"it's"`, `'"it''s"'`, `'"it''s"'`],
    ['[bag 12]', '"[bag 12]"', '"[bag 12]"'],
    ['{bag}', '"{bag}"', '"{bag}"'],
    ['18 ga, cut', '18 ga, cut', '"18 ga, cut"'],
    ['- three', '"- three"', '"- three"'],
    ['20817', '"20817"', '"20817"'],
    ['true', '"true"', '"true"'],
    ['null', '"null"', '"null"'],
    ['~', '"~"', '"~"'],
    [' set in', '" set in"', '" set in"'],
    ['two\nlines', '"two\\nlines"', '"two\\nlines"'],
    ['a tab\there', '"a tab\\there"', '"a tab\\there"'],
    ['*star', '"*star"', '"*star"'],
    ['!', '"!"', '"!"'],
    ['bay\\2: one', `'bay\\2: one'`, `'bay\\2: one'`],
    ['2025-03-03', '2025-03-03', '2025-03-03'],
    ['Türe “links”', 'Türe “links”', 'Türe “links”'],
  ])('%j is quoted where YAML needs it', (text, alone, braces) => {
    const marks = [{ mark: text }];
    expect(change('---\nmarks:\n  - what: x\n---\n', { set: ['marks', 0, 'mark'], value: text })).toBe(
      `---\nmarks:\n  - mark: ${alone}\n    what: x\n---\n`,
    );
    expect(change('---\n---\n', { set: ['marks'], value: marks })).toBe(
      `---\nmarks:\n  - { mark: ${braces} }\n---\n`,
    );
  });

  it('is left bare where it is a figure', () => {
    const line = { what: 'Bolts', from: 'keld', price: '1.10', count: '007', tax: '1,084.50', bill: '0310' };
    expect(change('---\n---\n', { set: ['bought'], value: [line] })).toBe(
      '---\nbought:\n  - { what: Bolts, from: keld, price: 1.10, count: 007, tax: "1,084.50", bill: "0310" }\n---\n',
    );
  });
});

import { describe, expect, it } from 'vitest';
import { openRecord } from '../../src/record/open.ts';
import { placeText } from '../../src/record/place.ts';
import { openSmall, SMALL } from './small.ts';

const said = ({ problems }: ReturnType<typeof openSmall>) =>
  problems.map(({ place, reason, mend }) => `${placeText(place)} ${reason}${mend ? ` ${mend}` : ''}`);

describe('a record that is right', () => {
  const { record, problems, read } = openSmall();

  it('opens without a problem and counts what was read', () => {
    expect(problems).toEqual([]);
    expect(read).toEqual({ entries: 1, parts: 1, choices: 0, vendors: 1, bills: 1, photos: 0 });
  });

  it('keeps time in minutes, money in cents, and text as it was typed', () => {
    const [entry] = record?.entries ?? [];
    expect(entry?.hours?.[0]).toMatchObject({ part: 'cowl', time: 210 });
    expect(entry?.bought?.[0]).toMatchObject({ price: 110, count: '7', bill: '0310', what: '1/4 in bolts' });
  });

  it('gives each line the place where it was written', () => {
    const [entry] = record?.entries ?? [];
    expect(entry?.hours?.[0]?.place).toEqual({ file: 'log/2025-03-03.md', line: 3, column: 5 });
    expect(entry?.bought?.[0]?.place).toEqual({ file: 'log/2025-03-03.md', line: 8, column: 5 });
    expect(entry?.placeAt(['hours', 0, 'time'])).toEqual({ file: 'log/2025-03-03.md', line: 6, column: 11 });
  });

  it('keeps a range, and one figure as certain', () => {
    const [part] = record?.parts ?? [];
    expect(part?.planned?.map(({ hours }) => hours)).toEqual([
      { low: 120, likely: 180, high: 300 },
      { low: 360, likely: 360, high: 360 },
    ]);
  });

  it('is the same whatever order its files come in', () => {
    const files = Object.entries(SMALL).map(([file, text]) => ({ file, text }));
    const turned = openRecord({ files: files.reverse(), photos: [], today: '2025-12-31' });
    expect(JSON.stringify(turned.record)).toBe(JSON.stringify(record));
  });

  it('reads Windows line ends and a byte order mark as any other file', () => {
    const text = `\uFEFF${SMALL['log/2025-03-03.md'].replaceAll('\n', '\r\n')}`;
    const { problems: found, record: same } = openSmall({ 'log/2025-03-03.md': text });
    expect(found).toEqual([]);
    expect(same?.entries[0]?.hours?.[0]?.place.line).toBe(3);
  });
});

describe('a record with mistakes', () => {
  it('tells all of them at once, in order of file and line', () => {
    const opened = openSmall({
      'car.md': SMALL['car.md'].replace('opened: 2025-02-03', 'opened: 2025-02-30'),
      'log/2025-03-03.md': SMALL['log/2025-03-03.md']
        .replace('3h 30m', '3.5x')
        .replace('price: 1.10', 'prise: 1.10'),
    });
    expect(said(opened)).toEqual([
      'car.md:4:9 Unexpected `2025-02-30`, expected a date such as `2025-04-16`.',
      'log/2025-03-03.md:6:11 Unexpected `3.5x`, expected a time such as `3h 30m`, `3:30` or `3.5`.',
      'log/2025-03-03.md:8:55 Unknown key `prise` in this line of `bought`. Did you mean `price`?',
    ]);
  });

  it('keeps the right lines of a file with a wrong one, with their places', () => {
    const text = SMALL['log/2025-03-03.md'].replace(
      'hours:\n',
      'hours:\n  - { part: cowl, work: metal, time: soon }\n',
    );
    const { record } = openSmall({ 'log/2025-03-03.md': text });
    const [entry] = record?.entries ?? [];
    expect(entry?.hours?.map(({ time }) => time)).toEqual([210]);
    expect(entry?.placeAt(['hours', 0, 'time'])).toMatchObject({ line: 7 });
    expect(entry?.whole).toBe(false);
  });

  it('tells a list that is wrong as a whole and in one of its lines', () => {
    const choice = [
      '---',
      'question: New corners?',
      'part: cowl',
      'asked: 2025-12-01',
      'options:',
      '  - { option: leave, way: leave }',
      '---',
      '',
    ];
    expect(said(openSmall({ 'choices/corners.md': choice.join('\n') }))).toEqual([
      'choices/corners.md:6:3 Unexpected `- { option: leave, way: leave }`, expected two options or more. Write for example `options: [{ option: repair, way: repair, lines: […] }, …]`.',
      'choices/corners.md:6:5 Missing `lines` in this line of `options`. What the option would take. Write it, for example `lines: [{ do: Weld in a new lower edge, work: metal, hours: [12, 18, 30] }]`.',
    ]);
  });

  it('says when a value was cut by a comment', () => {
    const text = SMALL['log/2025-03-03.md'].replace(', bill: 0310', '').replace('hours:', 'by: #3\nhours:');
    expect(said(openSmall({ 'log/2025-03-03.md': text }))[0]).toBe(
      'log/2025-03-03.md:2:1 `by` has no value: a `#` begins a comment. Put quotes round the value: `by: "#…"`.',
    );
  });

  it('names a file that is no file of a record', () => {
    expect(said(openSmall({ 'log/3 March.md': 'Hello.' }))).toEqual([
      'log/3 March.md:1:1 `log/3 March.md` is no file of a record. Name a day’s entry by its date, such as `log/2025-04-16.md`, a second one that day `log/2025-04-16-b.md`.',
    ]);
  });

  it('doesn’t call a part unknown whose file is there and can’t be read', () => {
    const found = said(openSmall({ 'parts/cowl.md': '---\nname: [Cowl\n---\n' }));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^parts\/cowl\.md:/);
  });
});

it('doesn’t let a comma in braces cut an amount in two', () => {
  const text = SMALL['car.md'].replace('amount: 10000 }', 'amount: 10,000 }');
  expect(said(openSmall({ 'car.md': text }))).toEqual([
    'car.md:8:34 `000` stands alone between `{` and `}`: a comma there ends a value. Put quotes round an amount or a text with a comma: `"1,084.50"`; or take the key out.',
  ]);
});

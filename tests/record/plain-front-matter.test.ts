// What is read plainly is what the parser that knows all of YAML reads: yaml 2 is the reference, at every path.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Path, splitFrontMatter } from '../../src/record/front-matter.ts';
import { plainFrontMatter } from '../../src/record/plain-front-matter.ts';
import { PATIENCE, tries } from '../bad-input/size.ts';

/** Every path into values, and beside each one that isn't there. */
function paths(value: unknown, at: Path = []): Path[] {
  const within = typeof value === 'object' && value !== null ? Object.entries(value) : [];
  const steps = within.filter(([key]) => key !== 'place');
  const own = Array.isArray(value) ? steps.map(([key, one]) => [Number(key), one] as const) : steps;
  return [
    at,
    [...at, 'none'],
    [...at, 9, 'none'],
    ...own.flatMap(([step, one]) => paths(one, [...at, step])),
  ];
}

/** Holds one reading against the other; true where the text was read plainly. */
function alike(text: string): boolean {
  const whole = splitFrontMatter('a.md', text, true);
  const read = splitFrontMatter('a.md', text);
  const { at, atKey, written, ...said } = read;
  const { at: wholeAt, atKey: wholeAtKey, written: wholeWritten, ...wholeSaid } = whole;
  expect(said).toEqual(wholeSaid);
  for (const path of paths(whole.values)) {
    expect(at(path), path.join()).toEqual(wholeAt(path));
    expect(atKey(path), path.join()).toEqual(wholeAtKey(path));
  }
  const [last = []] = paths(whole.values).reverse();
  expect(written(last)).toBe(wholeWritten(last));
  const [, raw] = /^---(\n[\s\S]*?)\n---/.exec(text) ?? [];
  return raw !== undefined && plainFrontMatter(raw) !== undefined;
}

const fenced = (front: string) => `---\n${front}\n---\n\nWords.\n`;

describe('front matter that is plainly written', () => {
  it.each<[string, string]>([
    ['keys', 'part: cowl\nname: "The cowl"\ntime: 3h 30m\nprice: 0.10\non: 2025-03-04\nsure: true\nat: 0x10'],
    [
      'lists',
      'after: [a, b]\nhours:\n  - part: cowl\n    time: 2h\n  - { part: sill, time: "1h" }\nfinished:\n- a/b\n-   c/d',
    ],
    ['figures in keys', 'd1: 88 in\nd2: 41 in\ne1: 2\na-0x1: 3'],
    [
      'sets in sets',
      'decided:\n  on: 2025-03-04\n  by:\n    who: the owner\n    how: {a: [b, {c: d}], e: []}\nlast: {}',
    ],
    ['lists in lists', 'a:\n  - - b\n    - c\n  - [d, [e]]\n  -\n    f: g\n    h: i'],
    [
      'signs within words',
      'a: b&c*d!e|f>g%h@i`j?k#l\nb: x:y\nc: "a: b, c"\nd: \'it is, so\'\ne: -5\nf: 12:30',
    ],
    ['odd spaces', 'a:    b   \nb :  c\n\n\nc:\n\n    d\ne: {  f :   g  ,h: "i"  }'],
    ['other alphabets', 'a: Türschweller — “links”\nb: "日本"'],
  ])('has its values and places: %s', (_, front) => {
    expect(alike(fenced(front))).toBe(true);
  });

  it.each([
    'a: &x b\nc: *x',
    'a: !!int 5',
    'a: |\n  b',
    'a: >-\n  b\n  c',
    'a: # b\n  c',
    'a: b # c',
    '# a\nb: c',
    'a: b\n  c',
    'a: "b\n  c"',
    'a: "b\\tc"',
    "a: 'b''c'",
    'a:',
    'a: ~',
    'a: null',
    'a: ""\nb: \'\'',
    'a: {b}',
    'a: [b: c]',
    'a: [b,\n  c]',
    'a: {b: c,\nd: e}',
    'a: b\na: c',
    'true: a',
    '1: a\n01: b',
    'place: a',
    '__proto__: a',
    'hours:\n  - place: b',
    '? a\n: b',
    '[a]: b',
    '{a: b}: c',
    '- a\n- b',
    'a',
    'a: b: c',
    'a: [b',
    'a: b]',
    'a: {b: c}}',
    '"a" b: c',
    'a: "b" c',
    'a: "b", c',
    'a\n: b',
    'a:\n\tb',
    '\ta: b',
    'a: b\n--- \nc: d',
    'a: b\n...\nc: d',
    '%YAML 1.2',
    'a: @b',
    'a: `b`',
    '<<: {a: b}',
    'a: b\u00a0\n\u00a0c: d',
    'a: \ud83d\ude00',
    'a: b\u2028c: d',
    'a: b\u0085c: d',
    'a: {b: {c: {d: {e: {f: {g: {h: {i: {j: k}}}}}}}}}',
    `${'a'.repeat(1100)}: b`,
    'a:\n- b\n -c',
    'a:\n  b: c\n d: e',
    ' a: b\nc: d',
    'a: - b',
    'a: [,]',
    'a: {,}',
    'a: [b,,c]',
    'a: [b,]',
    'a: {"b":c}',
    'a: {b:c}',
    'a: {b: }',
    'a: {b:}',
    'a: [b c: d]',
    "a: 'b",
    'a: b:',
    'a: b :c',
    'a: b,c',
    'a: -',
    'a: - ',
    '-: a',
    'a: "b"#c',
    'a: .inf',
    'a: {b: c} d',
    'a: [b] [c]',
    'a: b\n\n\n',
    '\n\na: b',
    'a: "b": c',
    'a: 1_000',
    'a: 010',
    'a: 0o10',
    'a: yes',
  ])('has them or its mistakes, whoever reads it: %j', (front) => {
    alike(fenced(front));
    alike(fenced(`part: cowl\n${front}`));
    alike(fenced(`hours:\n  - part: cowl\n${front.replace(/^/gm, '    ')}\nlast: b`));
  });

  it('is read plainly in most files of the demonstration', () => {
    const files = readdirSync('content', { recursive: true, encoding: 'utf8' }).filter((file) =>
      file.endsWith('.md'),
    );
    const texts = files
      .map((file) => readFileSync(join('content', file), 'utf8'))
      .filter((text) => text.startsWith('---'));
    const plainly = texts.filter(alike);
    expect(texts.length).toBeGreaterThan(100);
    expect(plainly.length / texts.length).toBeGreaterThan(0.5);
  });

  const PIECES = [
    'a',
    'b',
    'time',
    'cowl',
    '2h 30m',
    '0.10',
    'true',
    '"',
    "'",
    ':',
    ': ',
    ':  ',
    '- ',
    '-',
    '[',
    ']',
    '{',
    '}',
    ', ',
    ',',
    '\n',
    '\n',
    '\n  ',
    '\n    ',
    '\n- ',
    '\n  - ',
    '\na: ',
    '\nb: ',
    '\n  c: ',
    '\n    d: ',
    ' ',
    '  ',
    '#',
    ' #',
    '&',
    '*',
    '!',
    '|',
    '>',
    '?',
    '? ',
    '%',
    '@',
    '`',
    '~',
    'null',
    '\\',
    '\t',
    '…',
    '\u00a0',
    '---',
    '<<',
    '"a: b"',
    "'c, d'",
    '{ a: b, c: "d" }',
    '[a, b]',
    '- { part: cowl, time: 2h }',
    '\n  - part: cowl\n    time: 2h',
  ];
  it('has them in whatever is made of such pieces', { timeout: PATIENCE }, () => {
    let plainly = 0;
    const runs = tries(5);
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...PIECES), { minLength: 1, maxLength: 14 }), (pieces) => {
        if (alike(fenced(`key: ${pieces.join('')}`))) plainly += 1;
      }),
      runs,
    );
    expect(plainly).toBeGreaterThan(runs.numRuns / 200);
  });
});

// Words that are read without a parser come out as with one, places and all. Reference: remark-parse with remark-gfm.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { plainWords } from '../../src/record/plain-words.ts';
import { filesIn } from '../house/files.ts';

const whole = unified().use(remarkParse).use(remarkGfm).freeze();
const asParsed = (markdown: string) => JSON.stringify(whole.parse(markdown));

describe('plain words', () => {
  it.each([
    ['nothing', ''],
    ['a line', 'Stripped it.'],
    ['a line with its end', 'Stripped it.\n'],
    ['blank lines about', '\n\nStripped it.\n\n\n'],
    ['two paragraphs', 'Stripped it.\nThen primed it.\n\nHome at six.\n'],
    ['numbers', '12 hours, 1/16 in proud.\n3.5 in at the rail, (two) at most: "done" – so it stays.'],
    ['words in another script', 'Ça va. Über Nacht.\nДень.\n日本'],
    ['a letter alone', 'a\n\nb'],
  ])('are %s', (_, markdown) => {
    expect(JSON.stringify(plainWords(markdown))).toBe(asParsed(markdown));
  });

  it.each([
    ['a list', '- one'],
    ['a list in numbers', '1. one'],
    ['a list in numbers with a bracket', 'So:\n12) one'],
    ['a number that opens an empty item', 'a\n\n7.\n\nb'],
    ['a heading', '# Day'],
    ['an underlined heading', 'Day\n==='],
    ['a rule', 'Day\n\n---'],
    ['emphasis', 'a *long* day'],
    ['code', 'a `b`'],
    ['code set in', 'a\n\n    b'],
    ['a forced line end', 'a  \nb'],
    ['a link', '[a](b)'],
    ['an address', 'see www.example.org'],
    ['a letter box', 'ask ines@example.org'],
    ['an entity', 'a &amp; b'],
    ['a tab', 'a\tb'],
    ['a NUL', 'a\u0000b'],
    ['HTML', '<b>a</b>'],
    ['a quotation', '> a'],
    ['a book', 'word '.repeat(1e6)],
    ['a table', 'a | b\n- | -\n1 | 2'],
  ])('aren’t %s', (_, markdown) => {
    expect(plainWords(markdown)).toBeUndefined();
  });

  it('come out as parsed, whatever they are made of', () => {
    const piece = fc.constantFrom(
      ...['a', 'Day', ' ', '  ', '\n', '\n\n', '\n\n\n', '1', '12', '.', ')', '(', ',', ':', ';', '-', '--'],
      ...[
        '+',
        '=',
        '!',
        '?',
        '$',
        '%',
        '^',
        '{',
        '}',
        '"',
        '’',
        '/',
        'é',
        '日',
        '\u00a0',
        '\u2028',
        '\ufeff',
        '😀',
      ],
    );
    let plain = 0;
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 16 }), (pieces) => {
        const markdown = pieces.join('');
        const tree = plainWords(markdown);
        if (!tree) return;
        plain += 1;
        expect(JSON.stringify(tree)).toBe(asParsed(markdown));
      }),
      { numRuns: 20_000, seed: 1934 },
    );
    expect(plain).toBeGreaterThan(500);
  });

  it('are most of the demonstration’s, and come out as parsed', () => {
    const bodies = filesIn('content')
      .filter((file) => file.endsWith('.md'))
      .map((file) => readFileSync(join(file), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, ''));
    const trees = bodies.flatMap((body) => {
      const tree = plainWords(body);
      return tree ? [{ body, tree }] : [];
    });
    expect(trees.length).toBeGreaterThan(bodies.length / 2);
    for (const { body, tree } of trees) expect(JSON.stringify(tree)).toBe(asParsed(body));
  });
});

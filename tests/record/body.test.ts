// Which reader a body gets makes no difference to what is read. Reference: remark-gfm, given every body.
import fc from 'fast-check';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { readBody } from '../../src/record/body.ts';

const whole = unified().use(remarkParse).use(remarkGfm).freeze();
const read = (markdown: string) => readBody('log/2025-03-05.md', markdown, 1).body.tree;

describe('words in GFM', () => {
  it.each([
    ['a table', '| a | b |\n| - | - |\n| 1 | 2 |', 'table'],
    ['a table of one column without bars', 'a\n:-\nb', 'table'],
    ['the same with its colon behind', 'a\n-:\nb', 'table'],
    ['struck words', 'A ~~long~~ day', 'delete'],
    ['a task', '- [x] done', 'listItem'],
    ['a footnote', 'A day.[^1]\n\n[^1]: Long.', 'footnoteDefinition'],
    ['an address', 'See HTTPS://example.org now', 'link'],
    ['an address without its scheme', 'See www.example.org now', 'link'],
    ['an address with its dot escaped', 'See www\\.example.org', 'link'],
    ['a letter box', 'Ask ines@example.org', 'link'],
    ['a letter box with an entity', 'Ask ines&#64;example.org', 'link'],
  ])('%s is read', (_, markdown, type) => {
    const tree = JSON.stringify(read(markdown));
    expect(tree).toContain(`"type":"${type}"`);
    expect(tree).toBe(JSON.stringify(whole.parse(markdown)));
  });

  it('whatever the words, both readers read the same', () => {
    const piece = fc.constantFrom(
      ...[
        'a',
        'day',
        ' ',
        '  ',
        '\n',
        '\n\n',
        '-',
        '--',
        ':',
        '|',
        '~',
        '@',
        '[',
        ']',
        '(',
        ')',
        '^',
        '1.',
        '*',
        '_',
      ],
      ...[
        '`',
        '```',
        '>',
        '#',
        '=',
        '\\',
        '\t',
        '+',
        '<',
        '!',
        '.',
        '/',
        'www',
        'http',
        'HTTPS',
        '://',
        'x',
        '&amp;',
      ],
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 24 }), (pieces) => {
        const markdown = pieces.join('');
        expect(JSON.stringify(read(markdown))).toBe(JSON.stringify(whole.parse(markdown)));
      }),
      { numRuns: 4000, seed: 1934 },
    );
  });
});

// The texts that are broken: the demo's own and those of every mistake that is known.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { filesIn } from '../house/files.ts';
import { problemFolders } from '../record/problem-folders.ts';

export type Text = { file: string; text: string };

const demo: Text[] = filesIn('content')
  .filter((path) => path.endsWith('.md') && path !== 'content/README.md')
  .map((path) => ({ file: path.slice('content/'.length), text: readFileSync(path, 'utf8') }));

const known: Text[] = problemFolders.flatMap((name) => {
  const pieces = readFileSync(join('tests/problems', name, 'record.txt'), 'utf8').split(/^=== (.+)\n/m);
  return pieces.flatMap((file, i) => (i % 2 === 1 ? [{ file, text: pieces[i + 1] ?? '' }] : []));
});

export const realTexts: readonly Text[] = [...demo, ...known].filter(({ file }) => file.endsWith('.md'));

/** Signs and pieces that YAML, Markdown, terminals and editors take for more than letters. */
const ODD = [
  ...['\t', '\r', '\r\n', '\u2028', '\u0085', '\ufeff', '\u202e', '\u2066', '\u200f', '\u001b[31m', '\u0007'],
  ...[
    ': ',
    '- ',
    '? ',
    '#',
    ' #',
    '---',
    '\n---\n',
    '...',
    '&a ',
    '*a',
    '!!js/function ',
    '<<: ',
    '| ',
    '>-',
  ],
  ...[
    '{',
    '}',
    '[',
    ']',
    '"',
    "'",
    '`',
    '%',
    '@',
    ',',
    '\\',
    '<b>',
    '<!--',
    '](',
    '![',
    '$',
    '\ud800',
    'e\u0301',
  ],
  ...['null', '~', 'true', 'NaN', '.inf', '-0', '1e309', '0x10', '2025-02-30', '99999999999999999999', '1/0'],
  ...['__proto__: 1', 'constructor: x', 'place: { line: 0 }', 'toString: y', 'hasOwnProperty: z'],
];

const piece = fc.oneof(fc.constantFrom(...ODD), fc.string({ unit: 'binary', maxLength: 12 }));

/** One change: a line is dropped, doubled, moved, indented, cut, or a piece is put into it or in place of its value. */
const change = fc.record({
  how: fc.constantFrom('drop', 'double', 'swap', 'indent', 'cut', 'insert', 'value', 'ends'),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  within: fc.double({ min: 0, max: 1, noNaN: true }),
  piece,
});

type Change = typeof change extends fc.Arbitrary<infer C> ? C : never;

/** A real text with some changes, under its own name. */
export const brokenText: fc.Arbitrary<Text> = fc
  .tuple(fc.constantFrom(...realTexts), fc.array(change, { minLength: 1, maxLength: 4 }))
  .map(([{ file, text }, changes]) => ({ file, text: changes.reduce(changed, text) }));

function changed(text: string, { how, at, within, piece: put }: Change): string {
  if (how === 'ends') return text.replaceAll('\n', within < 0.5 ? '\r\n' : '\r');
  const lines = text.split('\n');
  const i = Math.min(lines.length - 1, Math.floor(at * lines.length));
  const line = lines[i] ?? '';
  const cut = Math.floor(within * line.length);
  const other = Math.floor(within * lines.length);
  const instead: Record<string, string[]> = {
    drop: [],
    double: [line, line],
    swap: [lines[other] ?? ''],
    indent: [`${' '.repeat(1 + Math.floor(within * 5))}${line}`],
    cut: [line.slice(0, cut)],
    insert: [line.slice(0, cut) + put + line.slice(cut)],
    value: [line.replace(/: .*$/, () => `: ${put}`)],
  };
  lines.splice(i, 1, ...(instead[how] ?? [line]));
  return lines.join('\n');
}

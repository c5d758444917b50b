// The digest of a statement: what changes it, and what doesn't.
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { openRecord } from '../../src/record/open.ts';
import { statementDigest } from '../../src/record/statement-digest.ts';
import { statementFor } from '../../src/rollup/statement.ts';
import { statementFile } from '../../src/views/statement-file.ts';
import { SMALL } from './small.ts';

const rules = (changed: Record<string, string>) =>
  openRecord({
    files: Object.entries({ ...SMALL, ...changed }).map(([file, text]) => ({ file, text })),
    photos: [],
    today: '2025-12-31',
  });
const { record } = rules({});
if (!record) throw new Error('the small record opens');
const { file, text } = statementFile(
  statementFor(record, { from: '2025-03-01', to: '2025-03-31' }),
  { number: '001', issued: '2025-04-02' },
  record,
);
const found = (written: string) => rules({ [file]: written }).problems.map(({ rule }) => rule);

describe('an issued statement', () => {
  it('is right as it was written', () => {
    expect(found(text)).toEqual([]);
    expect(text).toMatch(/\ndigest: [0-9a-f]{64}\n---\n/);
  });

  it.each([
    ['a figure', 'labour: 280.00, ', 'labour: 208.00, '],
    ['a figure’s last digit', 'labour: 280.00', 'labour: 280.01'],
    ['a word', 'bill: "0310"', 'bill: "0311"'],
    ['its day', 'issued: 2025-04-02', 'issued: 2025-04-01'],
    ['its balance', 'balance: 287.70', 'balance: 0.00'],
    ['what is read below', '| **Balance due** | **287.70** |', '| **Balance due** | **0.00** |'],
    ['a line of it', /\n {2}- \{ day: 2025-03-03.*bill.*\}/, ''],
    ['the digest itself', /(?<=digest: )[0-9a-f]/, (sign: string) => (sign === '0' ? '1' : '0')],
  ] as [string, string | RegExp, string][])('shows a change by hand of %s', (_, right, wrong) => {
    const changed = text.replace(right, wrong);
    expect(changed).not.toBe(text);
    expect(found(changed)).toEqual(['statement-changed']);
  });

  it.each([
    ['the ends of its lines', text.replaceAll('\n', '\r\n')],
    ['the order of its keys', text.replace(/(from: .*\n)(to: .*\n)/, '$2$1')],
    ['spaces and quotes', text.replaceAll('{ day', '{   day').replace('kind: hours', 'kind: "hours"')],
    ['how an amount is written', text.replace('balance: 287.70', 'balance: $287.70')],
  ])('may have %s changed', (_, written) => {
    expect(written).not.toBe(text);
    expect(found(written)).toEqual([]);
  });
});

describe('the digest', () => {
  it('is SHA-256 over the values in order of their keys, and the words', () => {
    const place = { file: 'statements/1.md', line: 1, column: 1 };
    const sums = { labour: 8500, bills: 0, materials: 0, deposits: 0, corrections: 0, tax: 0, paid: 0 };
    const digest = statementDigest({
      number: '1',
      from: '2025-03-01',
      to: '2025-03-31',
      issued: '2025-04-01',
      'brought-forward': 100,
      lines: [
        {
          day: '2025-03-03',
          entry: '2025-03-03',
          kind: 'hours',
          what: 'filed – “flat”',
          labour: 8500,
          place,
        },
      ],
      sums,
      balance: 8600,
      digest: '',
      body: { markdown: '\nWords.\n' },
    } as Parameters<typeof statementDigest>[0]);
    // Written out by hand from the rule.
    const canonical =
      '{"balance":8600,"forward":100,"from":"2025-03-01","issued":"2025-04-01","lines":[{"day":"2025-03-03","entry":"2025-03-03","kind":"hours","labour":8500,"what":"filed – “flat”"}],"number":"1","sums":{"bills":0,"corrections":0,"deposits":0,"labour":8500,"materials":0,"paid":0,"tax":0},"to":"2025-03-31"}\nWords.\n';
    expect(digest).toBe(createHash('sha256').update(canonical, 'utf8').digest('hex'));
  });
});

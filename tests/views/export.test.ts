// What leaves as tables, read back by the grammar of RFC 4180.
import { describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { isDay } from '../../src/figures/days.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { csvText } from '../../src/views/csv.ts';
import { exportFiles } from '../../src/views/export/files.ts';
import { cents } from './records.ts';

const { record } = await openFolder('content');
if (!record) throw new Error('the demo record does not open');
const files = new Map(exportFiles(record).map(({ file, text }) => [file, text]));

/** RFC 4180, section 2: fields parted by commas, each bare or in quotes, records ended by CRLF. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy;
  while (field.lastIndex < text.length) {
    const at = field.lastIndex;
    const found = field.exec(text);
    if (!found) throw new Error(`no field of RFC 4180 at ${at}: ${text.slice(at, at + 40)}`);
    const [, quoted, bare = '', end] = found;
    rows.at(-1)?.push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (end === '\r\n' && field.lastIndex < text.length) rows.push([]);
  }
  return rows;
}

/** The rows of a file as objects. */
function rowsOf(file: string): Record<string, string>[] {
  const [heads = [], ...rows] = readCsv(files.get(file) ?? '');
  return rows.map((row) => Object.fromEntries(heads.map((head, i) => [head, row[i] ?? ''])));
}
const plainCents = (text: string | undefined) => cents((text ?? '').replace('-', '−'));
const total = (rows: Record<string, string>[], ...names: string[]) =>
  rows.reduce((sum, row) => names.reduce((all, name) => all + plainCents(row[name]), sum), 0);

describe('comma-separated values', () => {
  it('are quoted where they must be, and end each row with CRLF', () => {
    const rows = [
      ['plain', ''],
      ['a, b', 'says "so"'],
      ['two\nlines', ' spaces '],
    ];
    const text = csvText(['one', 'two'], rows);
    expect(text).toBe('one,two\r\nplain,\r\n"a, b","says ""so"""\r\n"two\nlines", spaces \r\n');
    expect(readCsv(text)).toEqual([['one', 'two'], ...rows]);
  });
});

describe('the export of the demo', () => {
  const { lines, tables } = rollUp(record);

  it('has every hour, and what was charged for it, as the roll-up has it', () => {
    const rows = rowsOf('hours.csv');
    const labour = lines.filter(({ kind }) => kind === 'labour');
    expect(rows).toHaveLength(labour.length);
    expect(rows.reduce((sum, row) => sum + Number(row.minutes_worked), 0)).toBe(tables.kind.total.minutes);
    expect(total(rows, 'labor')).toBe(tables.kind.total.kinds.labour?.charged);
    expect(total(rows, 'materials')).toBe(tables.kind.total.kinds.materials?.charged);
  });

  it('has every line of a bill, and what it came to', () => {
    const rows = rowsOf('bills.csv');
    const kinds = ['bought', 'outside', 'freight', 'paid-tax', 'handling', 'deposit'] as const;
    const charged = kinds.reduce((sum, kind) => sum + (tables.kind.total.kinds[kind]?.charged ?? 0), 0);
    expect(total(rows, 'price', 'freight', 'tax_paid', 'handling', 'deposit')).toBe(charged);
    expect(rows.filter((row) => row.paid_by_owner === 'true').length).toBeGreaterThan(0);
  });

  it('has the lines of each statement, and they add up to its balance', () => {
    const statements = Map.groupBy(rowsOf('statement-lines.csv'), ({ statement }) => statement);
    expect([...statements.keys()]).toEqual(record.statements.map(({ number }) => number));
    for (const { number, balance } of record.statements) {
      expect([number, total(statements.get(number) ?? [], 'comes_to')]).toEqual([number, balance]);
    }
    const rows = new Set([...statements.values()].flat().map(({ row }) => row));
    expect(rows).toEqual(new Set(['brought-forward', 'line', 'was', 'now', 'tax']));
  });

  it('carries nothing of the shop’s own', () => {
    const tables = [...files].filter(([file]) => file.endsWith('.csv'));
    const heads = tables.flatMap(([, csv]) => readCsv(csv)[0] ?? []);
    expect(heads.filter((head) => /pay|cost|contact/.test(head))).toEqual([]);
    const contacts = [...record.shop.people, ...(record.shop.vendors ?? [])].flatMap(
      ({ contact }) => contact ?? [],
    );
    const text = [...files.values()].join();
    expect(contacts.length).toBeGreaterThan(10);
    expect(contacts.filter((contact) => text.includes(contact))).toEqual([]);
  });
});

// F9: the profiles of specs.frictionlessdata.io, as npm datapackage 1.1.10 carries them: a resource has a name and a
// path, a tabular one also a schema and its profile; a name fits the pattern.
describe('the Data Package descriptor', () => {
  const text = files.get('datapackage.json') ?? '';
  const descriptor = JSON.parse(text) as {
    name: string;
    profile: string;
    resources: {
      name: string;
      path: string;
      profile: string;
      schema: { fields: { name: string; type: string }[] };
    }[];
  };
  const NAME = /^([-a-z0-9._/])+$/;

  it('F9: names its resources, each with its path, schema and profile', () => {
    expect(descriptor.name).toMatch(NAME);
    expect(descriptor.profile).toBe('tabular-data-package');
    expect(descriptor.resources.map(({ path }) => path)).toEqual([...files.keys()].slice(0, -1));
    for (const { name, profile, schema } of descriptor.resources) {
      expect(name).toMatch(NAME);
      expect(profile).toBe('tabular-data-resource');
      expect(schema.fields.length).toBeGreaterThan(10);
    }
    expect(new Set(descriptor.resources.map(({ name }) => name)).size).toBe(3);
  });

  it('says of each column what its values are', () => {
    const fits: Record<string, (value: string) => boolean> = {
      string: () => true,
      integer: (value) => /^-?\d+$/.test(value),
      number: (value) => /^-?\d+\.\d\d$/.test(value),
      date: isDay,
      boolean: (value) => value === 'true' || value === 'false',
    };
    for (const { path, schema } of descriptor.resources) {
      const rows = rowsOf(path);
      expect(Object.keys(rows[0] ?? {})).toEqual(schema.fields.map(({ name }) => name));
      for (const { name, type } of schema.fields) {
        const odd = rows
          .map((row) => row[name] ?? '')
          .filter((value) => value !== '' && !fits[type]?.(value));
        expect([path, name, odd]).toEqual([path, name, []]);
      }
    }
  });
});

// Every field of every file as tables for the writer's guide, read off the schemas.
import type { z } from 'zod';
import { sheets } from '../record/schema/sheets.ts';
import { bare, said } from '../record/schema-at.ts';

/** A heading and a table for each file. */
export function fieldTables(): string {
  const files: [file: string, sheet: z.ZodType][] = [
    ['car.md', sheets.car],
    ['shop.md', sheets.shop],
    ['parts/&lt;part&gt;.md', sheets.part],
    ['choices/&lt;choice&gt;.md', sheets.choice],
    ['log/&lt;date&gt;.md', sheets.entry],
    ['statements/&lt;number&gt;.md', sheets.statement],
  ];
  return files
    .map(([file, sheet]) =>
      [`### ${file}`, '', ...HEAD, ...rowsOf(shapeOf(sheet), '').filter(isShown).map(rowText)].join('\n'),
    )
    .join('\n\n');
}

const HEAD = ['| key | what it is | for example | | seen by |', '| --- | --- | --- | --- | --- |'];

/** What a correction holds are lines like those of its statement. */
const isShown = ({ key }: Row) => !/^corrections (was|now) /.test(key);

type Row = { key: string; schema: z.ZodType };
type Shape = Record<string, z.ZodType>;

/** A row for each key, and below it the keys of its lines. */
function rowsOf(shape: Shape, within: string): Row[] {
  return Object.entries(shape)
    .filter(([key]) => key !== 'place')
    .flatMap(([key, schema]) => {
      const name = within ? `${within} ${key}` : key;
      return [{ key: name, schema }, ...rowsWithin(schema, name)];
    });
}

function rowsWithin(schema: z.ZodType, name: string): Row[] {
  const { element, options = [] } = bare(schema);
  if (element) return rowsWithin(element, name);
  const shapes = options.map(shapeOf);
  const [first, ...others] = shapes;
  if (!first || Object.keys(first).length === 0) return rowsOf(shapeOf(schema), name);
  // Of lines of several kinds, the keys that all have stand once, the others under their kind.
  const shared = Object.keys(first).filter((key) => others.every((shape) => shape[key]));
  const common = Object.fromEntries(shared.map((key) => [key, first[key] as z.ZodType]));
  return [
    ...rowsOf(common, name),
    ...shapes.flatMap((shape) => {
      const own = Object.fromEntries(Object.entries(shape).filter(([key]) => !shared.includes(key)));
      return rowsOf(own, `${name} (${said(shape.kind).examples?.[0] ?? ''})`);
    }),
  ];
}

const shapeOf = (schema: z.ZodType): Shape => bare(schema).shape ?? {};

const SEEN = { history: 'everybody', owner: 'owner and shop', shop: 'shop' } as Record<string, string>;

function rowText({ key, schema }: Row): string {
  const { description = '', examples = [], audience = '' } = said(schema);
  const words = wordsOf(schema);
  const left = schema.def.type === 'optional' ? 'may be left out' : 'needed';
  const cells = [
    `\`${key}\``,
    `${description}${words}`,
    `\`${examples[0] ?? ''}\``,
    left,
    SEEN[audience] ?? '',
  ];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

/** The words a field may hold, where it holds one of a few. */
function wordsOf(schema: z.ZodType): string {
  const { type, element } = bare(schema);
  const holder = type === 'array' && element ? bare(element) : bare(schema);
  const { entries } = holder as { entries?: Record<string, string> };
  return entries
    ? ` One of ${Object.values(entries)
        .map((word) => `\`${word}\``)
        .join(', ')}.`
    : '';
}

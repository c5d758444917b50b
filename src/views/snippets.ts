// Snippets for an editor: the lines of an entry with their needed keys, to be filled in from place to place.
import type { z } from 'zod';
import { sheets } from '../record/schema/sheets.ts';
import { bare, said } from '../record/schema-at.ts';

/** In the form that several editors read: a prefix to type, the lines that come, what it is for. */
export type Snippets = { [name: string]: { prefix: string; description: string; body: string[] } };

/** Keys that are offered though a line can do without. */
const OFFERED = ['part', 'line', 'note', 'count', 'tax', 'bill', 'caption', 'alt', 'hours', 'within'];

/** A snippet for a whole day, and one for a line of each list, of readings one a kind. */
export function snippets(): Snippets {
  const lists = Object.entries(bare(sheets.entry).shape ?? {}).flatMap(([list, field]) => {
    const item = bare(field).element;
    const kinds = (item && bare(item).options) ?? [];
    const of = (shape: Shape, name: string) =>
      [name, lineSnippet(name, said(field).description ?? '', shape)] as const;
    const own = item && bare(item).shape;
    return own ? [of(own, list)] : kinds.map((kind) => of(bare(kind).shape ?? {}, kindOf(kind)));
  });
  return { day: DAY, ...Object.fromEntries(lists) };
}

type Shape = Record<string, z.ZodType>;

const DAY: Snippets[string] = {
  prefix: 'day',
  description: 'A day in the shop.',
  body: [
    '---',
    `by: ${place(1, 'tobias')}`,
    'hours:',
    `  - { part: ${place(2, 'cowl')}, work: ${place(3, 'metal')}, time: ${place(4, '2h 30m')}, note: ${place(5, 'what was done')} }`,
    '---',
    '',
    place(0, 'The day in words.'),
  ],
};

function lineSnippet(prefix: string, description: string, shape: Shape): Snippets[string] {
  const keys = Object.entries(shape).filter(
    ([key, field]) => key !== 'place' && (field.def.type !== 'optional' || OFFERED.includes(key)),
  );
  const pairs = keys.map(([key, field], i) => `${key}: ${placeOf(i + 1, key, field)}`);
  return { prefix, description, body: [`- { ${pairs.join(', ')} }`] };
}

/** A place to fill in: one of a few words, or the field’s example. */
function placeOf(n: number, key: string, field: z.ZodType): string {
  const { entries } = bare(field) as { entries?: Record<string, string> };
  const [example = ''] = said(field).examples ?? [];
  if (key === 'kind') return example;
  return entries ? `\${${n}|${Object.values(entries).join(',')}|}` : place(n, inBraces(example));
}

function place(n: number, words: string): string {
  return `\${${n}:${words}}`;
}

/** As it stands between braces: a comma needs quotes, and the snippet’s own signs a backslash. */
function inBraces(example: string): string {
  const quoted = /,/.test(example) && !/^["[{]/.test(example) ? `"${example}"` : example;
  return quoted.replace(/[\\$}]/g, (sign) => `\\${sign}`);
}

const kindOf = (kind: z.ZodType) => said(bare(kind).shape?.kind).examples?.[0] ?? '';

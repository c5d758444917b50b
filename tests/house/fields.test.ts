import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { splitFrontMatter } from '../../src/record/front-matter.ts';
import { sheets as byKind } from '../../src/record/schema/sheets.ts';
import { bare, said } from '../../src/record/schema-at.ts';

const sheets = {
  'car.md': byKind.car,
  'shop.md': byKind.shop,
  'parts/': byKind.part,
  'choices/': byKind.choice,
  'log/': byKind.entry,
  'statements/': byKind.statement,
};

type Field = { name: string; schema: z.ZodType };

/** Every key of a schema and of the sets and lists within it. */
function fieldsOf(schema: z.ZodType, name: string): Field[] {
  const inner = bare(schema);
  if (inner.shape) {
    return Object.entries(inner.shape)
      .filter(([key]) => key !== 'place')
      .flatMap(([key, value]) => [
        { name: `${name} ${key}`, schema: value },
        ...fieldsOf(value, `${name} ${key}`),
      ]);
  }
  const within = [inner.element, ...(inner.options ?? [])].filter((one) => one !== undefined);
  return within.flatMap((one) => fieldsOf(one, name));
}

/** An example put behind its key in front matter, as a writer would copy it. */
const asWritten = (example: string) => splitFrontMatter('log/2025-03-03.md', `---\nkey: ${example}\n---\n`);

const fields = Object.entries(sheets).flatMap(([file, sheet]) => fieldsOf(sheet, file));

describe('the fields of a record', () => {
  it('are all found by this walk', () => {
    // Counted by hand in the list of fields: one near the top of each file, one deep in each.
    expect(fields.map(({ name }) => name)).toEqual(
      expect.arrayContaining([
        'car.md agreed amount',
        'shop.md tax rounding',
        'parts/ planned hours',
        'choices/ options can-fail then',
        'log/ measured points z',
        'log/ shop-only',
      ]),
    );
    expect(fields.length).toBeGreaterThan(180);
  });

  it('each say in a sentence what they hold', () => {
    const silent = fields.filter(({ schema }) => !/^[A-Z].*\.$/.test(said(schema).description ?? ''));
    expect(silent.map(({ name }) => name)).toEqual([]);
  });

  it('each name who may see them', () => {
    const open = fields.filter(({ schema }) => !/^(history|owner|shop)$/.test(said(schema).audience ?? ''));
    expect(open.map(({ name }) => name)).toEqual([]);
  });

  it('each give an example that can be read', () => {
    const wrong = fields.flatMap(({ name, schema }) => {
      const [example] = said(schema).examples ?? [];
      if (example === undefined) return [`${name} has no example`];
      if (example.includes('…')) return [];
      const { values, problems } = asWritten(example);
      const read = schema.safeParse(values.key);
      if (read.success && problems.length === 0) return [];
      return [`${name}: ${example}: ${read.error?.issues[0]?.message ?? problems[0]?.reason}`];
    });
    expect(wrong).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { openFolder } from '../../src/disk/open-folder.ts';
import { currencyOf } from '../../src/figures/currency.ts';
import { carSheet } from '../../src/record/schema/car.ts';
import { choiceSheet } from '../../src/record/schema/choice.ts';
import { entrySheet } from '../../src/record/schema/entry.ts';
import { inRecord } from '../../src/record/schema/fields.ts';
import { partSheet } from '../../src/record/schema/part.ts';
import { shopSheet } from '../../src/record/schema/shop.ts';
import { statementSheet } from '../../src/record/schema/statement.ts';
import { bare } from '../../src/record/schema-at.ts';

const { record, problems, read } = await openFolder('content', '2026-01-01');
if (!record) throw new Error('the demo record does not open');
const { car, shop, parts, choices, entries, statements } = record;

describe('the demo record', () => {
  it('has no errors', () => {
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('is of the size of a real year', () => {
    expect(entries.length).toBeGreaterThanOrEqual(90);
    expect(parts.length).toBeGreaterThanOrEqual(40);
    expect(new Set(parts.map(({ group }) => group)).size).toBe(8);
    expect(shop.vendors?.length).toBeGreaterThanOrEqual(15);
    expect(read.bills).toBeGreaterThanOrEqual(150);
    expect(new Set(entries.flatMap(({ hours = [], by }) => hours.map((line) => line.by ?? by))).size).toBe(2);
  });

  it('has five choices decided, two open and one withdrawn', () => {
    expect(choices.filter(({ decided }) => decided)).toHaveLength(5);
    expect(choices.filter(({ withdrawn }) => withdrawn)).toHaveLength(1);
    expect(choices.filter(({ decided, withdrawn }) => !decided && !withdrawn)).toHaveLength(2);
  });

  it('has a statement for every month up to September, one after the other, with corrections to earlier ones', () => {
    expect(statements.map(({ number, to }) => `${number} ${to}`)).toEqual([
      '001 2025-02-28',
      '002 2025-03-31',
      '003 2025-04-30',
      '004 2025-05-31',
      '005 2025-06-30',
      '006 2025-07-31',
      '007 2025-08-31',
      '008 2025-09-30',
    ]);
    const changes = statements.flatMap(({ corrections = [] }) => corrections);
    const kinds = changes.map(({ was, now }) => `${was ? 'was' : ''}${now ? 'now' : ''}`);
    expect(new Set(kinds)).toEqual(new Set(['now', 'wasnow', 'was']));
  });

  it('names every picture in some entry', () => {
    const named = entries.flatMap(({ photos = [] }) => photos).length;
    expect(named).toBe(record.photos.length);
  });

  it('uses every field that can be written, but the day on which the car leaves', () => {
    const f = inRecord(currencyOf('USD') ?? { code: 'USD', digits: 2, sign: '$' }, 'inch');
    const used = [
      ...unused(carSheet(f), [car], 'car'),
      ...unused(shopSheet(f), [shop], 'shop'),
      ...unused(partSheet(f), parts, 'part'),
      ...unused(choiceSheet(f), choices, 'choice'),
      ...unused(entrySheet(f), entries, 'entry'),
      ...unused(statementSheet(f), statements, 'statement'),
    ];
    // A correction holds lines as its statement does, a few of them.
    const within = /^statement\.corrections\[\]\.(was|now)\./;
    expect(used.filter((name) => !within.test(name))).toEqual(['car.closed']);
  });
});

/** The fields of a schema that none of the values has. */
function unused(schema: z.ZodType, values: readonly unknown[], name: string): string[] {
  const { type, shape, element, options } = bare(schema);
  const there = values.filter((value) => value !== undefined);
  if (there.length === 0) return [name];
  if (type === 'array' && element) return unused(element, there.flat(), `${name}[]`);
  if (type === 'union' && options?.every((option) => bare(option).type === 'object')) {
    return options.flatMap((option) => {
      const kind = String(
        (bare(bare(option).shape?.kind as z.ZodType) as unknown as { values: string[] }).values[0],
      );
      return unused(
        option,
        there.filter((value) => (value as { kind: string }).kind === kind),
        `${name}(${kind})`,
      );
    });
  }
  if (type !== 'object' || !shape) return [];
  return Object.entries(shape).flatMap(([key, field]) =>
    key === 'place'
      ? []
      : unused(
          field,
          there.map((value) => (value as Record<string, unknown>)[key]),
          `${name}.${key}`,
        ),
  );
}

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
import { bare } from '../../src/record/schema-at.ts';

const { record, problems, read } = await openFolder('content', '2026-01-01');
if (!record) throw new Error('the demo record does not open');
const { car, shop, parts, choices, entries } = record;

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
    ];
    expect(used).toEqual(['car.closed']);
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

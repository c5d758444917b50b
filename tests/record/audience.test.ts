import { describe, expect, it } from 'vitest';
import { forAudience } from '../../src/record/audience.ts';
import { fieldsFor, fieldsIn, OWNER_AMOUNTS, OWNER_WORD, openPrivate, SHOP_WORD } from './private.ts';

const { record, problems } = openPrivate();
if (!record) throw new Error('the record opens');
const errors = problems.filter(({ severity }) => severity === 'error');

const written = (of: typeof record) =>
  new Set([
    ...fieldsIn(of.car, 'car'),
    ...fieldsIn(of.shop, 'shop'),
    ...of.parts.flatMap((part) => fieldsIn(part, 'part')),
    ...of.choices.flatMap((choice) => fieldsIn(choice, 'choice')),
    ...of.entries.flatMap((entry) => fieldsIn(entry, 'entry')),
  ]);
/** Statements come from a command and are the owner’s as a whole. */
const typed = (names: string[]) => names.filter((name) => !name.startsWith('statement '));

describe('the record for an audience', () => {
  it('is tried on a record that says something in every private field', () => {
    expect(errors).toEqual([]);
    const all = written(record);
    expect(typed([...fieldsFor('shop'), ...fieldsFor('owner')]).filter((name) => !all.has(name))).toEqual([]);
  });

  it('is the whole record for the shop', () => {
    expect(forAudience(record, 'shop')).toBe(record);
  });

  it('keeps pay, contacts, remarks and words for the shop alone from the owner', () => {
    const kept = forAudience(record, 'owner');
    const all = written(kept);
    expect(fieldsFor('shop').filter((name) => all.has(name))).toEqual([]);
    expect(typed(fieldsFor('owner')).filter((name) => !all.has(name))).toEqual([]);
    expect(JSON.stringify(kept)).not.toContain(SHOP_WORD);
    expect(kept.shop.pay).toBeUndefined();
  });

  it('keeps everything about money from the history', () => {
    const kept = forAudience(record, 'history');
    const all = written(kept);
    const left = typed([...fieldsFor('shop'), ...fieldsFor('owner')]).filter((name) => all.has(name));
    // These two must stand in their lines, and are nothing there.
    expect(left).toEqual(['entry bought price', 'entry outside price']);
    const text = JSON.stringify(kept);
    for (const word of [SHOP_WORD, OWNER_WORD]) expect(text).not.toContain(word);
    for (const amount of OWNER_AMOUNTS) expect(text).not.toContain(String(Math.round(Number(amount) * 100)));
    expect(
      kept.entries
        .flatMap(({ bought = [], outside = [] }) => [...bought, ...outside])
        .map(({ price }) => price),
    ).toEqual([0, 0, 0]);
  });

  it('keeps for the history what happened, by whom and why', () => {
    const { car, parts, choices, entries, shop } = forAudience(record, 'history');
    expect(car.body.markdown).toContain('Found in a barn.');
    expect(car.owner).toBeUndefined();
    expect(shop.people.map(({ name }) => name)).toEqual(['Tobias Reeve', 'Ines Marlow']);
    expect(parts[0]?.planned?.map((line) => line.do)).toEqual([
      'Strip it',
      'Paint it',
      'Make the corners good',
    ]);
    expect(choices[0]?.decided).toMatchObject({
      by: 'the owner, by letter',
      reason: 'The old metal is too thin.',
    });
    expect(entries[1]?.body.markdown).toContain('First coat. The owner came to see it.');
    expect(choices[0]?.options[0]?.keeps).toBeDefined();
    const [, bought] = choices[0]?.options[0]?.lines ?? [];
    expect(Object.keys(bought ?? {}).sort()).toEqual(['buy', 'from', 'place']);
    expect(entries[0]?.hours?.map(({ time }) => time)).toEqual([150, 60, 60]);
    expect(entries[0]?.bought?.[0]).toMatchObject({ what: 'Soft iron wire', from: 'millrace' });
    expect(entries[1]?.agreed).toBeUndefined();
    expect(entries[0]?.placeAt(['by']).file).toBe('log/2025-03-03.md');
  });

  it('keeps the words of a day of which it may see nothing else', () => {
    const { record: paidOnly } = openPrivate({
      'log/2025-05-01.md': '---\npaid:\n  - { amount: 1, how: cash }\n---\n\nThe owner came by.\n',
    });
    if (!paidOnly) throw new Error('the record opens');
    const [day] = forAudience(paidOnly, 'history').entries.slice(-1);
    expect(day?.paid).toBeUndefined();
    expect(day?.body.markdown).toContain('The owner came by.');
  });

  it('leaves the record itself as it was', () => {
    const before = JSON.stringify(record);
    forAudience(record, 'history');
    expect(JSON.stringify(record)).toBe(before);
  });
});

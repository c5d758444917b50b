import { describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { forAudience } from '../../src/record/audience.ts';
import { unnamed } from '../../src/record/unnamed.ts';

const names = [{ name: 'Miriam Castell', as: 'the owner' }];
const said = (text: string, others: string[] = []) => unnamed({ reason: text }, names, others).reason;

describe('a text without the owner’s name', () => {
  it.each([
    ['Miriam Castell came by.', 'The owner came by.'],
    ['We asked Miriam Castell.', 'We asked the owner.'],
    ['It stood dry. Miriam\nCastell bought it.', 'It stood dry. The owner bought it.'],
    ['Mrs. Castell’s word', 'The owner’s word'],
    ['said M. Castell, twice', 'said the owner, twice'],
    ['The owner, Miriam Castell, signed.', 'The owner signed.'],
    ['Then the owner Miriam Castell signed.', 'Then the owner signed.'],
    ['Castellated edges; Miriamite.', 'Castellated edges; Miriamite.'],
  ])('%j is %j', (written, is) => {
    expect(said(written)).toBe(is);
  });

  it('keeps a surname that is another’s too, but for the whole name', () => {
    expect(said('From Castell Metals, for Miriam Castell.', ['Castell Metals'])).toBe(
      'From Castell Metals, for the owner.',
    );
  });

  it('takes no word of a company’s name alone', () => {
    const trust = [{ name: 'The Quarry Trust', as: 'the owner' }];
    expect(unnamed(['Trust the scarf. The Quarry Trust agreed.'], trust, [])).toEqual([
      'Trust the scarf. The owner agreed.',
    ]);
  });

  it('begins no phrase with a capital: who decided is one', () => {
    expect(unnamed({ by: 'Miriam Castell, by letter' }, names, [])).toEqual({ by: 'the owner, by letter' });
  });

  it('leaves files, places and figures of their own kind as they are', () => {
    const held = { file: 'Miriam Castell.jpg', place: { file: 'Miriam Castell' }, day: new Date(0) };
    expect(unnamed(held, names, [])).toEqual(held);
  });
});

describe('the demo for the history', () => {
  it('says who decided, and nowhere the owner’s name', async () => {
    const { record } = await openFolder('content');
    if (!record) throw new Error('the demo opens');
    expect(JSON.stringify(forAudience(record, 'owner'))).toContain('Miriam Castell');
    const kept = forAudience(record, 'history');
    expect(JSON.stringify(kept)).not.toMatch(/Miriam|Castell/);
    const by = kept.choices.flatMap(({ decided }) => decided?.by ?? []);
    expect(by).toContain('the owner, standing beside it');
    expect(kept.shop.people.map(({ name }) => name)).toEqual(['Tobias Reeve', 'Ines Marlow']);
  });
});

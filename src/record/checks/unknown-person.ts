// Finds people that entries and rates name and that shop.md doesn’t list.
import type { Check } from './check.ts';
import { named, ofShop, unknownNames } from './unknown-name.ts';

export const unknownPerson: Check = {
  rule: 'unknown-person',
  severity: 'error',
  why: 'The rate of an hour depends on who worked it.',
  run: (record) => {
    const people = new Set(record.shop.people.map(({ id }) => id));
    return unknownNames(
      ofShop(record, 'person'),
      people,
      ({ name }) => `\`${name}\` is nobody in shop.md.`,
      () => `Write ${named(people)}, or add the person under \`people\`.`,
    );
  },
};

import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { named, unknownNames } from './unknown-name.ts';

export const unknownPerson: Check = {
  rule: 'unknown-person',
  severity: 'error',
  why: 'The rate of an hour depends on who worked it.',
  run: (record) => {
    const people = new Set(record.shop.people.map(({ id }) => id));
    return unknownNames(
      mentions(record).filter(({ refers }) => refers === 'person'),
      people,
      ({ name }) => `\`${name}\` is nobody in shop.md.`,
      () => `Write ${named(people)}, or add the person under \`people\`.`,
    );
  },
};

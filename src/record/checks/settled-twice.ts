// Finds planned lines that two open choices both claim to settle.
import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { twice } from './twice.ts';

export const settledTwice: Check = {
  rule: 'settled-twice',
  severity: 'error',
  why: 'The forecast would count the options of both choices in place of one line.',
  run: (record) => {
    const settled = mentions(record).filter(
      ({ refers, choice }) => refers === 'line' && choice && !choice.decided && !choice.withdrawn,
    );
    return twice(
      settled.map(({ name }) => name),
      (i) => settled[i]?.place ?? record.car.placeAt([]),
      (name) => `\`${name}\` is settled by an open choice already.`,
      'Name it in one of them.',
    );
  },
};

// Finds planned lines written as finished on two days.
import type { Check } from './check.ts';
import { finishedLines } from './finished-lines.ts';
import { twice } from './twice.ts';

export const finishedTwice: Check = {
  rule: 'finished-twice',
  severity: 'error',
  why: 'A line has one day on which it was done; the forecast needs to know which.',
  run: (record) => {
    const lines = finishedLines(record);
    return twice(
      lines.map(({ name }) => name),
      (i) => lines[i]?.place() ?? record.car.placeAt([]),
      (name) => `\`${name}\` is finished already.`,
      'Keep the later one if it was done again, else the first.',
    );
  },
};

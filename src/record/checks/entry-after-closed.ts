// Finds entries from after the car has left.
import type { Check } from './check.ts';

export const entryAfterClosed: Check = {
  rule: 'entry-after-closed',
  severity: 'error',
  why: 'Work after the car has left would be missing from the last statement.',
  run: ({ car, entries }) =>
    entries
      .filter(({ day }) => car.closed !== undefined && day > car.closed)
      .map(({ day, file }) => ({
        place: { file, line: 1, column: 1 },
        reason: `This entry is dated ${day}, and the record closes on ${car.closed}.`,
        mend: 'Mend the date of the file, or `closed` in car.md.',
        related: [car.placeAt(['closed'])],
      })),
};

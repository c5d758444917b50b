// Finds entries and payments from before the record begins.
import type { Check } from './check.ts';

export const entryBeforeOpened: Check = {
  rule: 'entry-before-opened',
  severity: 'error',
  why: 'Work or money from before the car came in belongs to no agreement.',
  run: ({ car, entries }) =>
    entries
      .filter(({ day }) => day < car.opened)
      .map(({ day, file, paid, placeAt }) => ({
        place: paid ? placeAt(['paid', 0]) : { file, line: 1, column: 1 },
        reason: `${paid ? 'This payment' : 'This entry'} is dated ${day}, and the record opens on ${car.opened}.`,
        mend: 'Mend the date of the file, or `opened` in car.md.',
        related: [car.placeAt(['opened'])],
      })),
};

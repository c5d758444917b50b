// Finds work left of a line on or after the day it was finished.
import { lineName } from '../record.ts';
import type { Check } from './check.ts';
import { firstFinished } from './finished-lines.ts';

export const leftOfFinishedLine: Check = {
  rule: 'left-of-finished-line',
  severity: 'error',
  why: 'A line can’t be finished and have work left; the forecast would have to guess which is meant.',
  run: (record) => {
    const finished = firstFinished(record);
    return record.entries.flatMap(({ day, left = [], placeAt }) =>
      left.flatMap(({ line }, i) => {
        const before = finished.get(lineName(line, undefined));
        if (!before || before.day > day) return [];
        return [
          {
            place: placeAt(['left', i, 'line']),
            reason: `\`${line}\` was finished on ${before.day}, so nothing is left of it.`,
            mend: 'Take it out of `finished`, or out of `left`.',
            related: [before.place()],
          },
        ];
      }),
    );
  },
};

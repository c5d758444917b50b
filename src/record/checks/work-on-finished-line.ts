// Finds hours on a line after the day on which it was last written as finished.
import { lineName } from '../record.ts';
import type { Check } from './check.ts';
import { finishedLines } from './finished-lines.ts';

export const workOnFinishedLine: Check = {
  rule: 'work-on-finished-line',
  severity: 'error',
  why: 'The forecast counts nothing more for a finished line, so hours on it come as a surprise.',
  run: (record) => {
    const last = new Map(finishedLines(record).map((line) => [line.name, line]));
    return record.entries.flatMap(({ day, hours = [], placeAt }) =>
      hours.flatMap(({ line, part }, i) => {
        const finished = line === undefined ? undefined : last.get(lineName(line, part));
        if (!finished || finished.day >= day) return [];
        return [
          {
            place: placeAt(['hours', i, 'line']),
            reason: `\`${finished.name}\` was finished on ${finished.day}, and this is work on it on ${day}.`,
            mend: 'Move `finished` to the day it was really done, or name the line that this work is for.',
            related: [finished.place()],
          },
        ];
      }),
    );
  },
};

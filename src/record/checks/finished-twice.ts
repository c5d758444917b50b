import type { Check } from './check.ts';
import { finishedLines, firstFinished } from './finished-lines.ts';

export const finishedTwice: Check = {
  rule: 'finished-twice',
  severity: 'error',
  why: 'A line has one day on which it was done; the forecast needs to know which.',
  run: (record) => {
    const first = firstFinished(record);
    return finishedLines(record).flatMap((line) => {
      const before = first.get(line.name);
      if (!before || before.place === line.place) return [];
      return [
        {
          place: line.place(),
          reason: `\`${line.name}\` is finished already, on ${before.day}.`,
          mend: 'Keep the later one if it was done again, else the first.',
          related: [before.place()],
        },
      ];
    });
  },
};

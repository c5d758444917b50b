// Holds the days of `finished` against the order of `after`.
import { lineName } from '../record.ts';
import type { Check } from './check.ts';
import { firstFinished } from './finished-lines.ts';
import { plannedLines } from './planned-lines.ts';

export const finishedBeforeForerunner: Check = {
  rule: 'finished-before-forerunner',
  severity: 'error',
  needsEveryEntry: true,
  why: 'When a line is done before the one it waits for, either the plan or the log is wrong.',
  run: (record) => {
    const planned = plannedLines(record);
    const finished = firstFinished(record);
    return [...finished.values()].flatMap(({ name, day, place }) => {
      const line = planned.get(name);
      return (line?.line.after ?? []).flatMap((written, i) => {
        const after = lineName(written, line?.part.id);
        const before = finished.get(after);
        if (!line || !planned.has(after) || (before && before.day <= day)) return [];
        const when = before ? `was finished later, on ${before.day}` : 'isn’t finished';
        return [
          {
            place: place(),
            reason: `\`${name}\` is finished, but \`${after}\`, which it waits for, ${when}.`,
            mend: `Write \`${after}\` under \`finished\` of the day it was done, or take it out of \`after\`.`,
            related: [line.part.placeAt(['planned', line.index, 'after', i])],
          },
        ];
      });
    });
  },
};

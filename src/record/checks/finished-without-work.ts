// Finds finished lines that no hours and no bill name.
import { lineName } from '../record.ts';
import type { Check } from './check.ts';
import { firstFinished } from './finished-lines.ts';
import { plannedLines } from './planned-lines.ts';

export const finishedWithoutWork: Check = {
  rule: 'finished-without-work',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A line that is done without an hour or a bill was worked under another name, and its estimate learns nothing.',
  run: (record) => {
    const worked = new Set<string>();
    for (const { hours = [], bought = [], outside = [] } of record.entries) {
      for (const { line, part } of [...hours, ...bought, ...outside]) {
        if (line !== undefined) worked.add(lineName(line, part));
      }
    }
    const planned = plannedLines(record);
    return [...firstFinished(record).values()]
      .filter(({ name }) => planned.has(name) && !worked.has(name))
      .map(({ name, place }) => ({
        place: place(),
        reason: `\`${name}\` is finished, but no hours and no bill name it.`,
        mend: `Write \`line: ${name.slice(name.indexOf('/') + 1)}\` with the hours that went into it.`,
      }));
  },
};

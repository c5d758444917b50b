// Holds the hours of the log against the order of `after`: work on a line while one that it stands on is open.
import { lineName } from '../record.ts';
import type { Check, Found } from './check.ts';
import { firstFinished } from './finished-lines.ts';
import { plannedLines } from './planned-lines.ts';

export const workBeforeForerunner: Check = {
  rule: 'work-before-forerunner',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'Work that stands on something unfinished is often done twice, and the second time counts as an overrun.',
  run: (record) => {
    const planned = plannedLines(record);
    const finished = firstFinished(record);
    const told = new Set<string>();
    const found: Found[] = [];
    for (const entry of record.entries) {
      for (const [i, hours] of (entry.hours ?? []).entries()) {
        const name = hours.line === undefined ? '' : lineName(hours.line, hours.part);
        const at = planned.get(name);
        for (const [j, written] of (at?.line.after ?? []).entries()) {
          const after = lineName(written, at?.part.id);
          const before = finished.get(after);
          const done = finished.get(name);
          // A line that is finished first is an error of its own, told at `finished`.
          const toldThere = done !== undefined && (before === undefined || before.day > done.day);
          const open = planned.has(after) && (before === undefined || before.day > entry.day);
          if (!at || !open || toldThere || told.has(`${name} ${after}`)) continue;
          told.add(`${name} ${after}`);
          const first = planned.get(after)?.line.do ?? '';
          found.push({
            place: entry.placeAt(['hours', i, 'line']),
            reason: `This is work on \`${name}\`, and \`${after}\` (${first}), which it stands on, ${
              before
                ? `was finished only on ${before.day}: what was done before then may have to be done again.`
                : 'isn’t finished: what is done now may have to be done again.'
            }`,
            mend: `Finish \`${after}\` first, or take it out of \`after\` when the order doesn’t matter here.`,
            related: [at.part.placeAt(['planned', at.index, 'after', j])],
          });
        }
      }
    }
    return found;
  },
};

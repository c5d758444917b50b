// Follows `after` through all parts and finds the circles.
import { lineName } from '../record.ts';
import type { Check } from './check.ts';
import { circles, circleText } from './circles.ts';
import { plannedLines } from './planned-lines.ts';

export const lineWaitsInACircle: Check = {
  rule: 'line-waits-in-a-circle',
  severity: 'error',
  why: 'Lines that wait for each other can never be begun.',
  run: (record) => {
    const planned = plannedLines(record);
    const next = new Map(
      [...planned].map(([name, { part, line }]) => [
        name,
        (line.after ?? []).map((after) => lineName(after, part.id)),
      ]),
    );
    return circles(next).flatMap((circle) => {
      const last = planned.get(circle.at(-1) ?? '');
      if (!last) return [];
      const closing = (next.get(circle.at(-1) ?? '') ?? []).indexOf(circle[0] ?? '');
      return [
        {
          place: last.part.placeAt(['planned', last.index, 'after', closing]),
          reason: `These lines wait for each other in a circle: ${circleText(circle)}.`,
          mend: 'Take one of them out of the other’s `after`.',
        },
      ];
    });
  },
};

// Finds lines of the log whose part and planned line belong to two parts.
import type { Check } from './check.ts';

export const lineOfAnotherPart: Check = {
  rule: 'line-of-another-part',
  severity: 'error',
  why: 'An hour stands in the total of one part, so its part and its line must agree.',
  run: ({ entries }) =>
    entries.flatMap((entry) =>
      (['hours', 'bought', 'outside', 'ordered'] as const).flatMap((list) =>
        (entry[list] ?? []).flatMap(({ part, line }, i) => {
          if (part === undefined || !line?.includes('/') || line.startsWith(`${part}/`)) return [];
          return [
            {
              place: entry.placeAt([list, i, 'line']),
              reason: `\`${line}\` is a line of another part than \`${part}\`.`,
              mend: `Write \`part: ${line.slice(0, line.indexOf('/'))}\`, or a line of \`${part}\`.`,
              related: [entry.placeAt([list, i, 'part'])],
            },
          ];
        }),
      ),
    ),
};

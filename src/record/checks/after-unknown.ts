// Finds lines that wait for a line that no part plans.
import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { plannedLines } from './planned-lines.ts';
import { unknownNames } from './unknown-name.ts';

export const afterUnknown: Check = {
  rule: 'after-unknown',
  severity: 'error',
  why: 'A line that waits for something that isn’t planned would wait for good.',
  run: (record) =>
    unknownNames(
      mentions(record).filter(({ refers, entry, choice }) => refers === 'line' && !entry && !choice),
      new Set(plannedLines(record).keys()),
      ({ name }) => `This line waits for \`${name}\`, which is no planned line of this record.`,
      () => 'Plan it, or take it out of `after`.',
    ),
};

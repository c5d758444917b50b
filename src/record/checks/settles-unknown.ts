// Finds choices that claim to settle a line that no part plans.
import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { plannedLines } from './planned-lines.ts';
import { unknownNames } from './unknown-name.ts';

export const settlesUnknown: Check = {
  rule: 'settles-unknown',
  severity: 'error',
  why: 'The forecast takes the options in place of the lines that a choice settles, and can’t find this one.',
  run: (record) =>
    unknownNames(
      mentions(record).filter(({ refers, choice }) => refers === 'line' && choice),
      new Set(plannedLines(record).keys()),
      ({ name }) => `This choice settles \`${name}\`, which is no planned line of this record.`,
      () => 'Write it as `part/line`, or take it out of `settles`.',
    ),
};

// Finds planned lines of one part, and lines of one option, that share a name.
import type { Check } from './check.ts';
import { twice } from './twice.ts';

export const lineNameTwice: Check = {
  rule: 'line-name-twice',
  severity: 'error',
  why: 'Hours on a line that has a namesake can’t be told apart.',
  run: ({ parts, choices }) => [
    ...parts.flatMap(({ planned = [], placeAt }) =>
      twice(
        planned.map(({ line }) => line),
        (i) => placeAt(['planned', i, 'line']),
        (name) => `Two planned lines of this part are named \`${name}\`.`,
        'Give one of them another name.',
      ),
    ),
    ...choices.flatMap(({ options, placeAt }) =>
      options.flatMap(({ lines }, i) =>
        twice(
          lines.map(({ line }) => line),
          (j) => placeAt(['options', i, 'lines', j, 'line']),
          (name) => `Two lines of this option are named \`${name}\`.`,
          'Give one of them another name.',
        ),
      ),
    ),
  ],
};

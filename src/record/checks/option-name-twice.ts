// Finds options of one choice that share a name.
import type { Check } from './check.ts';
import { twice } from './twice.ts';

export const optionNameTwice: Check = {
  rule: 'option-name-twice',
  severity: 'error',
  why: 'The decision names its option, so no two may share a name.',
  run: ({ choices }) =>
    choices.flatMap(({ options, placeAt }) =>
      twice(
        options.map(({ option }) => option),
        (i) => placeAt(['options', i, 'option']),
        (name) => `Two options are named \`${name}\`.`,
        'Give one of them another name.',
      ),
    ),
};

// Finds decisions for an option that the choice doesn’t have.
import { didYouMean } from '../nearest.ts';
import type { Check } from './check.ts';
import { named } from './unknown-name.ts';

export const decidedOptionMissing: Check = {
  rule: 'decided-option-missing',
  severity: 'error',
  why: 'A decision for an option that isn’t written down can’t be held against what it cost.',
  run: ({ choices }) =>
    choices.flatMap(({ decided, options, placeAt, whole }) => {
      const names = options.map(({ option }) => option);
      if (!whole || !decided || names.includes(decided.option)) return [];
      return [
        {
          place: placeAt(['decided', 'option']),
          reason: `\`${decided.option}\` is none of the options.`,
          mend: didYouMean(decided.option, names) ?? `Write ${named(names)}.`,
        },
      ];
    }),
};

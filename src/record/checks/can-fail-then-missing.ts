// Finds options that fall back on one that the choice doesn’t have.
import { didYouMean } from '../nearest.ts';
import type { Check } from './check.ts';
import { named } from './unknown-name.ts';

export const canFailThenMissing: Check = {
  rule: 'can-fail-then-missing',
  severity: 'error',
  why: 'What an option can cost includes the option that follows when it fails.',
  run: ({ choices }) =>
    choices.flatMap(({ options, placeAt, whole }) => {
      if (!whole) return [];
      const names = options.map(({ option }) => option);
      return options.flatMap(({ option, 'can-fail': fails }, i) => {
        if (!fails || names.includes(fails.then)) return [];
        const others = names.filter((name) => name !== option);
        return [
          {
            place: placeAt(['options', i, 'can-fail', 'then']),
            reason: `\`${option}\` falls back on \`${fails.then}\`, which is none of the options.`,
            mend: didYouMean(fails.then, others) ?? `Write ${named(others)}.`,
          },
        ];
      });
    }),
};

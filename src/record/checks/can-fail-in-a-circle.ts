// Follows `can-fail` through the options of a choice and finds the circles.
import type { Check } from './check.ts';
import { circles, circleText } from './circles.ts';

export const canFailInACircle: Check = {
  rule: 'can-fail-in-a-circle',
  severity: 'error',
  why: 'Options that fall back on each other never come to an end, so their cost can’t be worked out.',
  run: ({ choices }) =>
    choices.flatMap(({ options, placeAt }) =>
      circles(
        new Map(options.map(({ option, 'can-fail': fails }) => [option, fails ? [fails.then] : []])),
      ).map((circle) => {
        const last = options.findIndex(({ option }) => option === circle.at(-1));
        return {
          place: placeAt(['options', last, 'can-fail', 'then']),
          reason: `These options fall back on each other in a circle: ${circleText(circle)}.`,
          mend: 'Let one of them fall back on an option that can’t fail, or take its `can-fail` out.',
        };
      }),
    ),
};

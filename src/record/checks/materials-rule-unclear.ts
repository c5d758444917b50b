// Finds rules for shop materials that have both ways of charging, or neither.
import type { Check } from './check.ts';

export const materialsRuleUnclear: Check = {
  rule: 'materials-rule-unclear',
  severity: 'error',
  why: 'Shop materials are charged by the hour or as a share of the labor, never both.',
  run: ({ shop }) =>
    (shop.materials ?? []).flatMap(({ 'per-hour': perHour, 'of-labour': share, place }) => {
      if ((perHour === undefined) !== (share === undefined)) return [];
      return [
        {
          place,
          reason:
            perHour === undefined
              ? 'This rule has neither `per-hour` nor `of-labour`.'
              : 'This rule has `per-hour` and `of-labour`.',
          mend: 'Write one of the two.',
        },
      ];
    }),
};

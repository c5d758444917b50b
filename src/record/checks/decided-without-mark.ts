// Finds decisions for a new part that say no permanent mark.
import type { Check } from './check.ts';

export const decidedWithoutMark: Check = {
  rule: 'decided-without-mark',
  severity: 'warning',
  why: 'A new part without a permanent mark passes for an old one as soon as its paint has aged.',
  run: ({ choices }) =>
    choices.flatMap(({ options, decided, placeAt }) =>
      options.flatMap(({ option, way, mark }, i) => {
        if (decided?.option !== option || mark !== undefined || !NEW.includes(way)) return [];
        return [
          {
            place: placeAt(['options', i, 'way']),
            reason: `\`${option}\` was decided on, a part that is new, and no \`mark\` is said.`,
            mend: 'Write what is stamped into it and where, such as `mark: NB 2025, stamped inside the flange`.',
            related: [placeAt(['decided', 'option'])],
          },
        ];
      }),
    ),
};

const NEW: readonly string[] = ['reproduction', 'new-made'];

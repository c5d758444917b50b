// Finds people and vendors of shop.md that share an id.
import type { Check } from './check.ts';
import { twice } from './twice.ts';

export const idTwice: Check = {
  rule: 'id-twice',
  severity: 'error',
  why: 'The log names people and vendors by their id, so each id must mean one of them.',
  run: ({ shop }) =>
    (['people', 'vendors'] as const).flatMap((list) =>
      twice(
        (shop[list] ?? []).map(({ id }) => id),
        (i) => shop.placeAt([list, i, 'id']),
        (id) => `\`${id}\` stands twice under \`${list}\`.`,
        'Give one of them another id.',
      ),
    ),
};

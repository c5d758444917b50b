// Finds kinds of work that are neither built in nor added in shop.md.
import { WORK } from '../words.ts';
import type { Check } from './check.ts';
import { ofShop, unknownNames } from './unknown-name.ts';

export const unknownWork: Check = {
  rule: 'unknown-work',
  severity: 'error',
  why: 'Rates and totals go by the kind of work, so a mistyped kind is charged wrongly.',
  run: (record) =>
    unknownNames(
      ofShop(record, 'work'),
      new Set([...WORK, ...(record.shop.work ?? [])]),
      ({ name }) => `\`${name}\` is no kind of work here.`,
      ({ name }) =>
        `Write one of ${WORK.map((kind) => `\`${kind}\``).join(', ')}, or add \`${name}\` under \`work\` in shop.md.`,
    ),
};

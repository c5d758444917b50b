// Finds vendors that entries and options name and that shop.md doesn’t list.
import type { Check } from './check.ts';
import { ofShop, unknownNames } from './unknown-name.ts';

export const unknownVendor: Check = {
  rule: 'unknown-vendor',
  severity: 'error',
  why: 'One vendor under two names has two totals, and neither is right.',
  run: (record) =>
    unknownNames(
      ofShop(record, 'vendor'),
      new Set(record.shop.vendors?.map(({ id }) => id)),
      ({ name }) => `\`${name}\` is no vendor in shop.md.`,
      ({ name }) => `Add it under \`vendors\`, such as \`- { id: ${name}, name: … }\`.`,
    ),
};

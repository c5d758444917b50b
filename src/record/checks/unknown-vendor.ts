import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { unknownNames } from './unknown-name.ts';

export const unknownVendor: Check = {
  rule: 'unknown-vendor',
  severity: 'error',
  why: 'One vendor under two names has two totals, and neither is right.',
  run: (record) =>
    unknownNames(
      mentions(record).filter(({ refers }) => refers === 'vendor'),
      new Set(record.shop.vendors?.map(({ id }) => id)),
      ({ name }) => `\`${name}\` is no vendor in shop.md.`,
      ({ name }) => `Add it under \`vendors\`, such as \`- { id: ${name}, name: … }\`.`,
    ),
};

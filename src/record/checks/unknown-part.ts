// Finds parts that entries and choices name and that have no file in parts/.
import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { unknownNames } from './unknown-name.ts';

export const unknownPart: Check = {
  rule: 'unknown-part',
  severity: 'error',
  why: 'Hours and bills of a part that isn’t in the record would stand in no part’s total.',
  run: (record) =>
    unknownNames(
      mentions(record).filter(({ refers }) => refers === 'part'),
      new Set(record.parts.map(({ id }) => id)),
      ({ name }) => `\`${name}\` is no part of this record.`,
      ({ name }) => `Write parts/${name.replace(/[^a-z0-9]+/gi, '-').toLowerCase()}.md, or mend the name.`,
    ),
};

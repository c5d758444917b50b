// Finds choices that entries name and that have no file in choices/.
import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { unknownNames } from './unknown-name.ts';

export const unknownChoice: Check = {
  rule: 'unknown-choice',
  severity: 'error',
  why: 'What a decision has cost is the sum of the lines that name it.',
  run: (record) =>
    unknownNames(
      mentions(record).filter(({ refers }) => refers === 'choice'),
      new Set(record.choices.map(({ id }) => id)),
      ({ name }) => `\`${name}\` is no choice of this record.`,
      ({ name }) => `Write choices/${name.replace(/[^a-z0-9]+/gi, '-').toLowerCase()}.md, or leave it out.`,
    ),
};

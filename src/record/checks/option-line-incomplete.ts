// Finds lines of an option that say too little, or too much, to be summed.
import type { Choice } from '../record.ts';
import type { Check } from './check.ts';

export const optionLineIncomplete: Check = {
  rule: 'option-line-incomplete',
  severity: 'error',
  why: 'A line without hours or a price counts as nothing and makes its option look cheaper than it is.',
  run: ({ choices }) =>
    choices.flatMap(({ options, placeAt }) =>
      options.flatMap(({ lines }, i) =>
        lines.flatMap((line, j) => {
          const fault = faultOf(line);
          return fault ? [{ place: placeAt(['options', i, 'lines', j]), ...fault }] : [];
        }),
      ),
    ),
};

type Line = Choice['options'][number]['lines'][number];

function faultOf(line: Line): { reason: string; mend: string } | undefined {
  if (line.do === undefined && line.buy === undefined)
    return { reason: 'This line says neither what to do nor what to buy.', mend: 'Write `do` or `buy`.' };
  if (line.do !== undefined && line.buy !== undefined)
    return {
      reason: 'This line is work and a purchase at once.',
      mend: 'Write two lines, one with `do` and one with `buy`.',
    };
  if (line.buy !== undefined)
    return line.price ? undefined : { reason: `\`${line.buy}\` has no price.`, mend: 'Write `price`.' };
  if (line.hours && line.work === undefined)
    return { reason: `\`${line.do}\` has hours and no kind of work.`, mend: 'Write `work`.' };
  return line.hours || line.spend || line.outside
    ? undefined
    : {
        reason: `\`${line.do}\` takes no hours and no money.`,
        mend: 'Write `work` and `hours`, or `outside`.',
      };
}

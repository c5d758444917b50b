// What bringing a sheet in says when it is done.
import type { BringPlan } from '../../record/writing/sheet/bring-plan.ts';
import type { Refused } from '../../record/writing/sheet/rows.ts';
import { visibleMessage } from '../../views/visible.ts';

/** What became of the rows. */
export type Brought = {
  days: BringPlan['days'];
  there: number;
  refused: readonly Refused[];
  leftOut: readonly string[];
  dryRun: boolean;
};

/** The lines, rows that were refused last. */
export function broughtText({ days, there, refused, leftOut, dryRun }: Brought): string {
  const added = days.reduce((sum, { lines }) => sum + lines.length, 0);
  const lines = [
    ...(dryRun ? ['With --dry-run nothing is written; this is what would be done.'] : []),
    `${rows(added)} added to ${days.length} ${days.length === 1 ? 'entry' : 'entries'}, ${there} there already, ${refused.length} refused.`,
    ...days.map(
      ({ plan, lines }) =>
        `  ${plan.file}${plan.before === undefined ? ', which is new' : ''}: ${rows(lines.length)}.`,
    ),
    ...(leftOut.length > 0
      ? [`Columns left out: ${leftOut.map((heading) => `\`${heading}\``).join(', ')}.`]
      : []),
    ...refused.map(({ row, why }) => `Row ${row} was refused. ${why}`),
    ...(refused.length > 0
      ? ['Mend the rows in the sheet and bring it again: what is there already isn’t doubled.']
      : []),
  ];
  return lines.map(visibleMessage).join('\n');
}

const rows = (count: number) => (count === 1 ? '1 row' : `${count} rows`);

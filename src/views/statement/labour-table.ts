// Labor by day with what was done, and the shop materials that went with it.
import { minutesText } from '../../figures/hours.ts';
import type { Minor } from '../../figures/money.ts';
import type { CarRecord } from '../../record/record.ts';
import { accountOf } from '../../rollup/account.ts';
import type { Statement } from '../../rollup/issued.ts';
import type { FigureRow, FigureTable } from '../figure-table.ts';
import { hoursNotes } from './words.ts';
import { dayIn, figures, writing } from './writing.ts';

/** Each day with its sum, its lines within it. */
export function labourTable(statement: Statement, record: CarRecord): FigureTable {
  const dayText = dayIn(statement);
  const { days, labour } = accountOf(statement);
  const { money, opens } = writing(record);
  const shown = (amount: Minor | undefined) => (amount ? money(amount) : '');
  return {
    caption: 'Labor, by day',
    head: 'Day, and what was done',
    columns: ['Time', 'Rate', 'Labor', 'Materials'].map((head) => ({ head })),
    rows: days.flatMap((day): FigureRow[] => [
      {
        head: dayText(day.day),
        ...opens(day.lines),
        begins: true,
        cells: figures(minutesText(day.minutes), '', money(day.labour), shown(day.materials)),
      },
      ...day.lines.map((line) => ({
        head: line.what,
        within: true,
        notes: hoursNotes(line, record),
        cells: figures(
          line.timed ? minutesText(line.timed.minutes) : '',
          line.timed ? money(line.timed.rate) : '',
          money(line.amounts.labour ?? 0),
          shown(line.amounts.materials),
        ),
      })),
    ]),
    ...(labour && {
      foot: {
        head: labour.materials === 0 ? 'Labor' : 'Labor and shop materials',
        cells: figures(minutesText(labour.minutes), '', money(labour.labour), shown(labour.materials)),
      },
    }),
  };
}

// Spending month by month, without a gap, against what was agreed by then.
import { monthOf } from '../figures/days.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostLine, Rollup } from './cost-lines.ts';

/** Every month from the first line to the last. */
export function monthsOf(lines: readonly CostLine[], { car }: CarRecord): Rollup['months'] {
  const sums = new Map<string, { minutes: number; charged: number }>();
  for (const line of lines) {
    const month = monthOf(line.day);
    const sum = sums.get(month) ?? { minutes: 0, charged: 0 };
    sum.minutes += line.minutes ?? 0;
    sum.charged += line.charged;
    sums.set(month, sum);
  }
  const named = [...sums.keys()].sort();
  const last = named.at(-1) ?? '';
  const months: Rollup['months'] = [];
  let running = 0;
  for (let month = named[0]; month !== undefined && month <= last; month = next(month)) {
    const { minutes, charged } = sums.get(month) ?? { minutes: 0, charged: 0 };
    running += charged;
    const agreed = (car.agreed ?? [])
      .filter(({ on }) => monthOf(on) <= (month as string))
      .reduce((sum, { amount }) => sum + amount, 0);
    months.push({ month, minutes, charged, running, agreed });
  }
  return months;
}

function next(month: string): string {
  const [year = 0, number = 0] = month.split('-').map(Number);
  const after = number === 12 ? [year + 1, 1] : [year, number + 1];
  return `${String(after[0]).padStart(4, '0')}-${String(after[1]).padStart(2, '0')}`;
}

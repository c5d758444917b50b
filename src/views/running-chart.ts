// The running total against what was agreed, month by month, as a chart's configuration.
import type { Chart as Drawn } from 'chart.js';
import type { Currency } from '../figures/currency.ts';
import { monthText } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import { moneyText } from '../figures/money-text.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type Chart, FONT, GREEN, INK, INK_2, RULE, SIZE, STILL } from './live/pen.ts';
import { atFinish, atStep, type Ending, pen } from './running-end.ts';

/** What was spent and agreed by the end of each month and in all, in minor units. */
export type Running = {
  months: Pick<Rollup['months'][number], 'month' | 'running' | 'agreed'>[];
  total: { charged: Minor };
  agreed: Minor;
};

/** The running total of a record as plain values, without the lines behind it. */
export function runningTold({ months, total, agreed }: Rollup): Running {
  return {
    months: months.map((month) => ({ month: month.month, running: month.running, agreed: month.agreed })),
    total: { charged: total.charged },
    agreed,
  };
}

/**
 * A green line for what was spent, an ink step for what was agreed, each named at its end. With an ending, that stands
 * as a range behind the last month, and what was agreed is named where it last changed.
 */
export function runningOf(
  { months, total, agreed }: Running,
  currency: Currency,
  width: number,
  ending?: Ending,
): Chart {
  const narrow = width < 500;
  const whole = (amount: number) => moneyText(amount, currency).replace(/\.0+$/, '');
  const spent = {
    data: months.map(({ running }) => running),
    borderColor: GREEN,
    borderWidth: 2.5,
    pointRadius: narrow ? 2 : 2.5,
    pointBackgroundColor: GREEN,
  };
  const step = {
    data: [...months.map((month) => month.agreed), ...(ending ? [agreed, agreed] : [])],
    borderColor: INK,
    borderWidth: 1.5,
    pointRadius: 0,
    stepped: 'before' as const,
  };
  const words = [`spent ${moneyText(total.charged, currency)}`, `agreed ${whole(agreed)}`];
  return {
    width,
    height: narrow ? 250 : 330,
    config: {
      type: 'line',
      data: {
        labels: [...months.map(({ month }, i) => tick(month, i)), ...(ending ? ['', 'finish'] : [])],
        datasets: agreed > 0 ? [spent, step] : [spent],
      },
      options: {
        ...STILL,
        layout: { padding: { top: 22, right: narrow ? 12 : 16 } },
        scales: {
          x: {
            grid: { display: false },
            border: { color: INK_2 },
            ticks: { color: INK_2, maxRotation: 0, autoSkip: true, autoSkipPadding: 6, font: FONT },
          },
          y: {
            beginAtZero: true,
            // Room above for the name of the finish.
            ...(ending && { max: 1.2 * Math.max(ending.high, agreed) }),
            grid: { color: RULE },
            border: { display: false },
            ticks: {
              color: INK_2,
              maxTicksLimit: ending ? 7 : 6,
              includeBounds: ending === undefined,
              font: FONT,
              callback: (amount: number | string) => whole(Number(amount)),
            },
          },
        },
      },
      plugins: ending
        ? [atEnds(words.slice(0, 1)), atStep(words[1] ?? ''), atFinish(ending)]
        : [atEnds(words)],
    },
  };
}

/** `Feb`, with the year below the first month and each January. */
function tick(month: string, i: number): string | string[] {
  const name = monthText(month).slice(0, 3);
  return i === 0 || month.endsWith('-01') ? [name, month.slice(0, 4)] : name;
}

type At = { x: number; y: number };

/** Names each line at its last point: the upper one above it, the lower one below, clear of the line. */
function atEnds(words: readonly string[]) {
  return {
    id: 'at-ends',
    afterDatasetsDraw: (chart: Drawn) => {
      const { ctx } = chart;
      const lines = chart.data.datasets.map((_, i) =>
        chart.getDatasetMeta(i).data.map(({ x, y }) => ({ x, y })),
      );
      const end = (line: readonly At[] | undefined) => line?.at(-1)?.y ?? 0;
      pen(ctx);
      lines.forEach((line, i) => {
        const last = line.at(-1);
        const text = words[i] ?? '';
        if (!last || text === '') return;
        const upper = lines.length > 1 && end(line) <= end(lines[1 - i]);
        const wide = ctx.measureText(text).width;
        // After a month or two there is no room for the words before the point.
        ctx.textAlign = last.x - wide < chart.chartArea.left ? 'left' : 'right';
        const near = beside(line, last.x - wide - 4);
        ctx.fillText(text, last.x, upper ? Math.min(...near) - 8 : Math.max(...near) + SIZE + 6);
      });
    },
  };
}

/** Heights of a line from `x` to its end. */
function beside(line: readonly At[], x: number): number[] {
  const after = line.filter((point) => point.x >= x);
  const before = line.filter((point) => point.x < x).at(-1);
  const next = after[0];
  if (!before || !next) return after.map(({ y }) => y);
  const there = before.y + ((x - before.x) / (next.x - before.x)) * (next.y - before.y);
  return [there, ...after.map(({ y }) => y)];
}

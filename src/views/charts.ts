// Chart configurations: which bars and lines, with their words. Figures come from the rollup; drawing is elsewhere.
import type { ChartConfiguration } from 'chart.js';
import type { Currency } from '../figures/currency.ts';
import { monthText } from '../figures/days.ts';
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { Rollup, Table } from '../rollup/cost-lines.ts';

/** A chart ready to be drawn: the configuration, and its size in units for a desk or a phone. */
export type Chart = { config: ChartConfiguration; width: number; height: number };

const INK = '#1d1c18';
const INK_2 = '#575246';
const RULE = '#d3ccb9';
const GREEN = '#1f4434';
const FONT = 'Source Sans 3';

/** Bars lying down, one a row, the amount written at the end of each. */
export function barsOf(table: Table, value: 'charged' | 'minutes', currency: Currency, width: number): Chart {
  const rows = table.rows.filter((row) => row[value] > 0).sort((a, b) => b[value] - a[value]);
  const narrow = width < 500;
  const size = narrow ? 13 : 15;
  const text = value === 'charged' ? (amount: number) => moneyText(amount, currency) : minutesText;
  return {
    width,
    height: rows.length * (narrow ? 44 : 30) + 12,
    config: {
      type: 'bar',
      data: {
        labels: rows.map(({ label }) => label),
        datasets: [
          { data: rows.map((row) => row[value]), backgroundColor: GREEN, barThickness: narrow ? 14 : 16 },
        ],
      },
      options: {
        ...STILL,
        indexAxis: 'y' as const,
        layout: { padding: { right: narrow ? 8 : 110, left: narrow ? 0 : 4 } },
        scales: {
          x: { display: false, beginAtZero: true },
          y: {
            grid: { display: false },
            border: { display: false },
            ticks: { display: !narrow, color: INK, font: { family: FONT, size } },
          },
        },
      },
      plugins: [
        atBars(
          rows.map((row) => text(row[value])),
          rows.map(({ label }) => label),
          narrow,
          size,
        ),
      ],
    },
  };
}

/** Spent in each month as bars, and the running total as a line against what was agreed. */
export function runningOf(rollup: Rollup, currency: Currency, width: number): Chart {
  const narrow = width < 500;
  const size = narrow ? 13 : 15;
  const { months } = rollup;
  const short = (month: string) => monthText(month).slice(0, 3);
  return {
    width,
    height: narrow ? 260 : 400,
    config: {
      type: 'line',
      data: {
        labels: months.map(({ month }) => short(month)),
        datasets: [
          {
            data: months.map(({ running }) => running),
            borderColor: GREEN,
            borderWidth: 2.5,
            pointRadius: 2.5,
            pointBackgroundColor: GREEN,
          },
          {
            data: months.map(({ agreed }) => agreed),
            borderColor: INK,
            borderWidth: 1.5,
            pointRadius: 0,
            stepped: 'before' as const,
          },
        ],
      },
      options: {
        ...STILL,
        layout: { padding: { top: 24, right: narrow ? 10 : 24 } },
        scales: {
          x: {
            grid: { display: false },
            border: { color: INK_2 },
            ticks: { color: INK_2, maxRotation: 0, autoSkip: true, font: { family: FONT, size } },
          },
          y: {
            beginAtZero: true,
            grid: { color: RULE },
            border: { display: false },
            ticks: {
              color: INK_2,
              maxTicksLimit: 6,
              font: { family: FONT, size },
              callback: (amount: number | string) => moneyText(Number(amount), currency).replace(/\.0+$/, ''),
            },
          },
        },
      },
      plugins: [
        atEnds(
          [
            `spent ${moneyText(rollup.total.charged, currency)}`,
            `agreed ${moneyText(rollup.agreed, currency)}`,
          ],
          size,
        ),
      ],
    },
  };
}

const STILL = {
  animation: false as const,
  responsive: false,
  devicePixelRatio: 1,
  events: [] as [],
  plugins: { legend: { display: false }, tooltip: { enabled: false }, title: { display: false } },
};

/** Writes each amount behind its bar; on a phone the name stands above the bar and the amount beside it. */
function atBars(amounts: string[], names: string[], narrow: boolean, size: number) {
  return {
    id: 'at-bars',
    afterDatasetsDraw: (chart: import('chart.js').Chart) => {
      const { ctx, chartArea } = chart;
      const bars = chart.getDatasetMeta(0).data;
      ctx.fillStyle = INK;
      ctx.textBaseline = 'middle';
      bars.forEach((bar, i) => {
        ctx.font = `${size}px "${FONT}"`;
        ctx.textAlign = 'left';
        const amount = amounts[i] ?? '';
        if (!narrow) ctx.fillText(amount, bar.x + 8, bar.y);
        else {
          ctx.fillText(names[i] ?? '', chartArea.left, bar.y - 17);
          ctx.textAlign = 'right';
          ctx.fillText(amount, chartArea.right, bar.y - 17);
        }
      });
    },
  };
}

/** Writes what each line is at its last point. */
function atEnds(texts: string[], size: number) {
  return {
    id: 'at-ends',
    afterDatasetsDraw: (chart: import('chart.js').Chart) => {
      const { ctx } = chart;
      texts.forEach((text, i) => {
        const last = chart.getDatasetMeta(i).data.at(-1);
        if (!last) return;
        ctx.font = `${size}px "${FONT}"`;
        ctx.fillStyle = INK;
        ctx.textAlign = 'right';
        ctx.textBaseline = i === 0 ? 'top' : 'bottom';
        ctx.fillText(text, last.x, last.y + (i === 0 ? 14 : -8));
      });
    },
  };
}

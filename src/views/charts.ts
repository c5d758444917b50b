// Bars lying down, one a row, as a chart's configuration: the words stand at the bars. Drawing is elsewhere.
import type { ChartConfiguration, Chart as Drawn } from 'chart.js';

/** A chart ready to be drawn: the configuration, and its size in units for a desk or a phone. */
export type Chart = { config: ChartConfiguration; width: number; height: number };

/** One bar: its name, its length in any unit, and the figure in words. */
export type BarRow = { label: string; value: number; text: string };

/** Widths in units: a desk's column, and a phone's of 328 px, where a unit is a pixel. */
export const WIDE = 720;
export const NARROW = 328;

export const INK = '#1d1c18';
export const INK_2 = '#575246';
export const RULE = '#d3ccb9';
export const GREEN = '#1f4434';
/** Thirteen units keep the words readable from 328 px to the width of a desk. */
export const SIZE = 13;
/** The family is quoted: a name with a number in it is no family without. */
export const FONT = { family: '"Source Sans 3"', size: SIZE };

/** What no figure of a page does: move, answer to a pointer, carry a legend. */
export const STILL = {
  animation: false as const,
  responsive: false,
  devicePixelRatio: 1,
  events: [] as [],
  plugins: { legend: { display: false }, tooltip: { enabled: false }, title: { display: false } },
};

/** Bars in the order given. On a phone the name stands above its bar, at a desk before it. */
export function barsOf(rows: readonly BarRow[], width: number): Chart {
  const narrow = width < 500;
  const thickness = narrow ? 12 : 14;
  const longest = Math.max(0, ...rows.map(({ text }) => text.length));
  return {
    width,
    height: rows.length * (narrow ? 40 : 24) + 8,
    config: {
      type: 'bar',
      data: {
        labels: rows.map(({ label }) => label),
        datasets: [{ data: rows.map(({ value }) => value), backgroundColor: GREEN, barThickness: thickness }],
      },
      options: {
        ...STILL,
        indexAxis: 'y' as const,
        layout: { padding: { left: 0, right: narrow ? 1 : 14 + longest * 7 } },
        scales: {
          x: { display: false, beginAtZero: true },
          y: {
            grid: { display: false },
            border: { display: false },
            afterFit: (axis) => {
              if (narrow) axis.width = 0;
            },
            ticks: {
              display: !narrow,
              crossAlign: 'far',
              autoSkip: false,
              padding: 10,
              color: INK,
              font: FONT,
            },
          },
        },
      },
      plugins: [narrow ? aboveBars(rows) : behindBars(rows)],
    },
  };
}

/** The figure behind the end of each bar; a bar below zero has it on the other side of the line. */
function behindBars(rows: readonly BarRow[]) {
  return {
    id: 'behind-bars',
    afterDatasetsDraw: (chart: Drawn) => {
      const { ctx, scales } = chart;
      const zero = scales.x?.getPixelForValue(0) ?? 0;
      write(ctx, 'left');
      chart.getDatasetMeta(0).data.forEach((bar, i) => {
        ctx.fillText(rows[i]?.text ?? '', Math.max(bar.x, zero) + 8, bar.y);
      });
    },
  };
}

/** Name and figure above each bar. */
function aboveBars(rows: readonly BarRow[]) {
  return {
    id: 'above-bars',
    afterDatasetsDraw: (chart: Drawn) => {
      const { ctx, chartArea } = chart;
      chart.getDatasetMeta(0).data.forEach((bar, i) => {
        const row = rows[i];
        if (!row) return;
        write(ctx, 'left');
        ctx.fillText(row.label, chartArea.left, bar.y - 16);
        write(ctx, 'right');
        ctx.fillText(row.text, chartArea.right, bar.y - 16);
      });
    },
  };
}

/** Sets the pen for words at a bar. */
function write(ctx: CanvasRenderingContext2D, align: 'left' | 'right'): void {
  ctx.font = `${SIZE}px ${FONT.family}`;
  ctx.fillStyle = INK;
  ctx.textBaseline = 'middle';
  ctx.textAlign = align;
}

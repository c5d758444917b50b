// Bars lying down, one a row, as a chart's configuration: the words stand at the bars. Drawing is elsewhere.
import type { Chart as Drawn } from 'chart.js';
import { type Chart, FONT, GREEN, INK, SIZE, STILL } from './live/pen.ts';

/** One bar: its name, its length in any unit, and the figure in words. */
export type BarRow = { label: string; value: number; text: string };

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

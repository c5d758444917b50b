// What stands behind the running total: where it is likely to end, and what was agreed named over its own step.
import type { Chart as Drawn } from 'chart.js';
import { FONT, INK, SIZE } from './live/pen.ts';

/** Where it is likely to end, low to high in minor units; `text` names it. */
export type Ending = { low: number; likely: number; high: number; text: string };

/** Names what was agreed over the last step of its line, from where that begins. */
export function atStep(text: string) {
  return {
    id: 'at-step',
    afterDatasetsDraw: (chart: Drawn) => {
      const { ctx } = chart;
      const line = chart.data.datasets.length > 1 ? chart.getDatasetMeta(1).data : [];
      const last = line.at(-1);
      const from = line.find((point) => point.y === last?.y);
      if (!last || !from) return;
      pen(ctx);
      const room = from.x + ctx.measureText(text).width < last.x;
      ctx.textAlign = room ? 'left' : 'right';
      ctx.fillText(text, room ? from.x : last.x, last.y - 8);
    },
  };
}

/** The range at the finish as a bar with its likely figure marked, and a broken line to it from what is spent. */
export function atFinish({ low, likely, high, text }: Ending) {
  return {
    id: 'at-finish',
    afterDatasetsDraw: (chart: Drawn) => {
      const { ctx, scales, chartArea } = chart;
      const { x, y } = scales;
      const spent = chart.getDatasetMeta(0).data.at(-1);
      if (!x || !y || !spent) return;
      const at = x.getPixelForValue((chart.data.labels?.length ?? 1) - 1);
      const [top, middle, foot] = [
        y.getPixelForValue(high),
        y.getPixelForValue(likely),
        y.getPixelForValue(low),
      ];
      ctx.strokeStyle = INK;
      ctx.lineWidth = 1;
      ctx.setLineDash([3, 5]);
      ctx.beginPath();
      ctx.moveTo(spent.x, spent.y);
      ctx.lineTo(at - 9, middle);
      ctx.stroke();
      ctx.setLineDash([]);
      ctx.fillStyle = RANGE;
      ctx.fillRect(at - 8, top, 16, Math.max(2, foot - top));
      ctx.lineWidth = 2;
      ctx.beginPath();
      ctx.moveTo(at - 12, middle);
      ctx.lineTo(at + 12, middle);
      ctx.stroke();
      ctx.lineWidth = 1;
      ctx.beginPath();
      ctx.moveTo(at, top - 3);
      ctx.lineTo(at, chartArea.top + 10);
      ctx.stroke();
      pen(ctx);
      ctx.textAlign = 'right';
      ctx.fillText(text, chartArea.right, chartArea.top + 4);
    },
  };
}

/** Sets the pen for words at a line. */
export function pen(ctx: CanvasRenderingContext2D): void {
  ctx.font = `600 ${SIZE}px ${FONT.family}`;
  ctx.fillStyle = INK;
  ctx.textBaseline = 'alphabetic';
}

/** The green of ranges: estimates are paler than what was spent. */
const RANGE = '#7f9887';

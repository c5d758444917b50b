// The chance of each finish as a rising curve, with what was agreed across it: a chart's configuration.
import type { Chart as Drawn } from 'chart.js';
import type { Currency } from '../figures/currency.ts';
import type { Minor } from '../figures/money.ts';
import type { Forecast } from '../rollup/ahead/forecast.ts';
import { spreadOf, wholeText } from './forecast-words.ts';
import { type Chart, FONT, GREEN, INK, INK_2, RULE, SIZE, STILL } from './live/pen.ts';
import { moneyAbout } from './live/rounded.ts';

/** The finish by chance, from 1 in a hundred on, and what was agreed, in minor units. */
export type FinishCurve = {
  quantiles: number[];
  money: { p10: number; p50: number; p80: number; p90: number };
  agreed: Minor;
};

/** The curve of a forecast as plain values; nothing where the finish is certain. */
export function finishCurve({ quantiles, finish, agreed }: Forecast): FinishCurve | undefined {
  const { p10, p50, p80, p90 } = finish.money;
  const { low, high } = endsOf(quantiles);
  return high - low < 1 ? undefined : { quantiles, money: { p10, p50, p80, p90 }, agreed };
}

const endsOf = (quantiles: readonly number[]) => ({ low: quantiles[0] ?? 0, high: quantiles.at(-1) ?? 0 });

export function finishChart(
  { quantiles, money, agreed }: FinishCurve,
  currency: Currency,
  width: number,
): Chart {
  const narrow = width < 500;
  const { low, high } = endsOf(quantiles);
  const wide = high - low;
  const near = agreed > low - wide && agreed < high + wide;
  const about = (amount: number) => moneyAbout(amount, spreadOf(money), currency);
  const marks: Mark[] = [
    { at: money.p50, chance: 50, text: `5 in 10: ${about(money.p50)}` },
    { at: money.p80, chance: 80, text: `8 in 10: ${about(money.p80)}` },
  ];
  const line = agreed > 0 ? { at: agreed, near, text: `agreed ${wholeText(agreed, currency)}` } : undefined;
  return {
    width,
    height: narrow ? 260 : 340,
    config: {
      type: 'line',
      data: {
        datasets: [
          {
            data: quantiles.map((x, i) => ({ x, y: i + 1 })),
            borderColor: GREEN,
            borderWidth: 2.5,
            pointRadius: 0,
          },
        ],
      },
      options: {
        ...STILL,
        layout: { padding: { top: 10, right: narrow ? 12 : 20 } },
        scales: {
          x: {
            type: 'linear',
            min: near && agreed > 0 ? Math.min(low, agreed) - wide / 12 : low - wide / 12,
            max: near ? Math.max(high, agreed) + wide / 12 : high + wide / 12,
            grid: { display: false },
            border: { color: INK_2 },
            ticks: {
              color: INK_2,
              includeBounds: false,
              maxRotation: 0,
              maxTicksLimit: narrow ? 6 : 8,
              font: FONT,
              callback: (amount: number | string) => wholeText(Number(amount), currency),
            },
          },
          y: {
            min: 0,
            max: 100,
            grid: { color: RULE },
            border: { display: false },
            ticks: { color: INK_2, stepSize: 20, font: FONT },
          },
        },
      },
      plugins: [marked(marks, line)],
    },
  };
}

type Mark = { at: number; chance: number; text: string };
type Agreed = { at: number; near: boolean; text: string };

/** Names two points of the curve in the free field on its right, and draws what was agreed from top to foot. */
function marked(marks: readonly Mark[], agreed: Agreed | undefined) {
  return {
    id: 'marked',
    afterDatasetsDraw: ({ ctx, scales, chartArea: area }: Drawn) => {
      const { x, y } = scales;
      if (!x || !y) return;
      ctx.fillStyle = INK;
      ctx.strokeStyle = INK;
      ctx.textBaseline = 'middle';
      for (const { at, chance, text } of marks) {
        const [left, top] = [x.getPixelForValue(at), y.getPixelForValue(chance)];
        ctx.beginPath();
        ctx.arc(left, top, 4, 0, 2 * Math.PI);
        ctx.fill();
        ctx.font = `${SIZE}px ${FONT.family}`;
        const room = left + 10 + ctx.measureText(text).width < area.right;
        ctx.textAlign = room ? 'left' : 'right';
        ctx.fillText(text, room ? left + 10 : left - 10, room ? top + SIZE : top - 8);
      }
      if (!agreed) return;
      ctx.font = `600 ${SIZE}px ${FONT.family}`;
      const width = ctx.measureText(agreed.text).width;
      const before = agreed.at < (marks[0]?.at ?? 0);
      if (!agreed.near) {
        ctx.textAlign = before ? 'left' : 'right';
        const text = before ? `← ${agreed.text}` : `${agreed.text} →`;
        ctx.fillText(text, before ? area.left + 6 : area.right, y.getPixelForValue(before ? 94 : 6));
        return;
      }
      const at = x.getPixelForValue(agreed.at);
      ctx.lineWidth = 1.5;
      ctx.beginPath();
      ctx.moveTo(at, area.top);
      ctx.lineTo(at, area.bottom);
      ctx.stroke();
      // The field above the curve is free on its left, the one below it on its right.
      const right = at + 8 + width < area.right;
      ctx.textAlign = right ? 'left' : 'right';
      ctx.fillText(agreed.text, right ? at + 8 : at - 8, y.getPixelForValue(before ? 94 : 6));
    },
  };
}

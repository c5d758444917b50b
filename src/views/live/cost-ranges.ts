// The cost of each option as a bar from P10 to P90 with a stroke at the middle, as a chart's configuration.
import type { Chart as Drawn } from 'chart.js';
import type { Comparison } from '../../estimate/uncertain/choice/compare.ts';
import type { Currency } from '../../figures/currency.ts';
import { moneyText } from '../../figures/money-text.ts';
import { type Chart, FONT, GREEN, INK, INK_2, RULE, SIZE, STILL } from './pen.ts';
import { moneyAbout } from './rounded.ts';
import type { Sheet } from './sheet.ts';

/** One option's bar in minor units, with the words at its ends and its middle. */
export type CostRange = {
  name: string;
  low: number;
  middle: number;
  high: number;
  lowText: string;
  middleText: string;
  highText: string;
};

export function costRanges({ names, currency }: Sheet, { options }: Comparison): CostRange[] {
  return options.map(({ id, cost }) => {
    const text = (amount: number) => moneyAbout(amount, cost.p90 - cost.p10, currency);
    return {
      name: names[id] ?? id,
      low: cost.p10,
      middle: cost.p50,
      high: cost.p90,
      lowText: text(cost.p10),
      middleText: text(cost.p50),
      highText: text(cost.p90),
    };
  });
}

/** The bars in words, for who can't see them. */
export function rangesTitle(ranges: readonly CostRange[]): string {
  return `What each may come to. ${ranges
    .map(
      ({ name, lowText, middleText, highText }) =>
        `${name}: ${lowText} to ${highText}, middle ${middleText}.`,
    )
    .join(' ')}`;
}

export function rangesChart(ranges: readonly CostRange[], currency: Currency, width: number): Chart {
  const narrow = width < 500;
  const scale = scaleOf(ranges, narrow ? 4 : 6);
  return {
    width,
    height: ranges.length * (narrow ? 52 : 46) + 26,
    config: {
      type: 'bar',
      data: {
        labels: ranges.map(({ name }) => name),
        datasets: [
          {
            data: ranges.map(({ low, high }): [number, number] => [low, high]),
            backgroundColor: RANGE,
            barThickness: 16,
            minBarLength: 2,
          },
        ],
      },
      options: {
        ...STILL,
        indexAxis: 'y' as const,
        layout: { padding: { left: narrow ? 44 : 60, right: narrow ? 44 : 60, top: 8 } },
        scales: {
          x: {
            ...scale,
            grid: { color: RULE },
            border: { display: false },
            ticks: {
              color: INK_2,
              font: FONT,
              maxRotation: 0,
              stepSize: scale.step,
              callback: (amount: number | string) => wholeText(Number(amount), currency),
            },
          },
          y: { display: false },
        },
      },
      plugins: [wordsAt(ranges)],
    },
  };
}

/** A step of the scale: `$2,000`. */
export function wholeText(amount: number, currency: Currency): string {
  return moneyText(Math.round(amount), currency).replace(/\.\d+$/, '');
}

const RANGE = '#7f9887';

/** From a round amount below all bars to one above them, in at most so many round steps, never below nothing. */
export function scaleOf(
  ranges: readonly CostRange[],
  most: number,
): { min: number; max: number; step: number } {
  const low = Math.min(...ranges.map((range) => range.low));
  const high = Math.max(...ranges.map((range) => range.high));
  const power = 10 ** Math.floor(Math.log10(Math.max(high - low, high / 10, 10) / most));
  const ends = (step: number) => ({
    min: Math.max(0, Math.floor(low / step) * step),
    // Of one amount that is round itself the two ends would be one, and nothing could be drawn between them.
    max: Math.max(Math.ceil(high / step), Math.floor(low / step) + 1) * step,
    step,
  });
  const scales = [1, 2, 5, 10, 20].map((times) => ends(times * power));
  return scales.find(({ min, max, step }) => (max - min) / step <= most) ?? ends(50 * power);
}

/** The stroke at each middle, figures at both ends, and above the bar its name and the middle. */
function wordsAt(ranges: readonly CostRange[]) {
  return {
    id: 'words-at-ranges',
    afterDatasetsDraw: (chart: Drawn) => {
      const { ctx, scales } = chart;
      const x = (amount: number) => scales.x?.getPixelForValue(amount) ?? 0;
      ctx.textBaseline = 'middle';
      chart.getDatasetMeta(0).data.forEach((bar, i) => {
        const range = ranges[i];
        if (!range) return;
        ctx.fillStyle = GREEN;
        ctx.fillRect(x(range.middle) - 1.25, bar.y - 12, 2.5, 24);
        ctx.fillStyle = INK;
        ctx.font = `${SIZE}px ${FONT.family}`;
        ctx.textAlign = 'right';
        ctx.fillText(range.lowText, x(range.low) - 6, bar.y);
        ctx.textAlign = 'left';
        if (range.high > range.low) ctx.fillText(range.highText, x(range.high) + 6, bar.y);
        ctx.font = `600 ${SIZE}px ${FONT.family}`;
        ctx.fillText(fitted(ctx, range, chart.width), 0, bar.y - 21);
      });
    },
  };
}

/** The name with the middle behind it; where that is too long the name alone, cut at a word. */
function fitted(ctx: CanvasRenderingContext2D, { name, middleText }: CostRange, width: number): string {
  const fits = (text: string) => ctx.measureText(text).width <= width;
  const whole = `${name}: middle ${middleText}`;
  if (fits(whole) || fits(name)) return fits(whole) ? whole : name;
  const words = name.split(' ');
  while (words.length > 1 && !fits(`${words.join(' ')} …`)) words.pop();
  return `${words.join(' ')} …`;
}

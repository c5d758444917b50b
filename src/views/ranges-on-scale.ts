// The bars of a choice sheet placed on their scale, so that print draws them without a sum of its own.
import type { Currency } from '../figures/currency.ts';
import { type CostRange, scaleOf, wholeText } from './live/cost-ranges.ts';

/** Places as shares of the scale, from 0 at its left to 1 at its right. */
export type Scaled = {
  bars: {
    label: string;
    low: number;
    middle: number;
    /** From low to high. */
    wide: number;
    high: number;
    lowText: string;
    /** Empty where the cost is certain: one figure says it. */
    highText: string;
  }[];
  steps: { at: number; text: string }[];
};

/** Bars from P10 to P90 with the middle, and the round steps under them. */
export function onScale(ranges: readonly CostRange[], currency: Currency): Scaled {
  const { min, max, step } = scaleOf(ranges, STEPS);
  const at = (amount: number) => (amount - min) / (max - min);
  return {
    bars: ranges.map(({ name, low, middle, high, lowText, middleText, highText }) => ({
      label: `${name}: middle ${middleText}`,
      low: at(low),
      middle: at(middle),
      wide: at(high) - at(low),
      high: at(high),
      lowText,
      highText: high > low ? highText : '',
    })),
    steps: Array.from({ length: Math.round((max - min) / step) + 1 }, (_, i) => {
      const amount = min + i * step;
      return { at: at(amount), text: wholeText(amount, currency) };
    }),
  };
}

/** Steps of the scale at most, in the width of a column. */
const STEPS = 4;

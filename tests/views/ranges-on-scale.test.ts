import { describe, expect, it } from 'vitest';
import { onScale } from '../../src/views/ranges-on-scale.ts';

const USD = { code: 'USD', digits: 2, sign: '$' };
const range = (name: string, low: number, middle: number, high: number) => ({
  name,
  low,
  middle,
  high,
  lowText: `low ${low}`,
  middleText: `middle ${middle}`,
  highText: `high ${high}`,
});

describe('bars on their scale', () => {
  it('stand at their shares of round steps, of which there are four at most', () => {
    // $1,100 to $2,900 in steps of $500 runs from $1,000 to $3,000: 100 of 2,000 is 0.05, 1,900 of them 0.95.
    const { bars, steps } = onScale([range('Repair', 110_000, 150_000, 290_000)], USD);
    expect(steps.map(({ text }) => text)).toEqual(['$1,000', '$1,500', '$2,000', '$2,500', '$3,000']);
    expect(steps.map(({ at }) => at)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    const [bar] = bars;
    expect(bar?.label).toBe('Repair: middle middle 150000');
    for (const [is, should] of [
      [bar?.low, 0.05],
      [bar?.middle, 0.25],
      [bar?.high, 0.95],
      [bar?.wide, 0.9],
    ])
      expect(is).toBeCloseTo(should ?? Number.NaN, 12);
  });

  it('say a certain cost once', () => {
    const { bars } = onScale([range('Leave it', 8135, 8135, 8135)], USD);
    expect(bars[0]).toMatchObject({ wide: 0, lowText: 'low 8135', highText: '' });
  });
});

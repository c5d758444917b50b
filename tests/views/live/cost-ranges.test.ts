import { describe, expect, it } from 'vitest';
import { chartSvg } from '../../../src/drawing/charts.ts';
import type { Comparison } from '../../../src/estimate/uncertain/choice/compare.ts';
import { costRanges, rangesChart, rangesTitle } from '../../../src/views/live/cost-ranges.ts';
import { NARROW, WIDE } from '../../../src/views/live/pen.ts';
import { comparisonOf, outlook, sheetWith, TWO } from './sheets.ts';

/** The comparison of two certain ways, with other figures for what each may cost. */
const COMPARISON: Comparison = {
  ...comparisonOf(TWO),
  options: comparisonOf(TWO).options.map((option, i) => ({
    ...option,
    cost: i === 0 ? outlook(451_234, 382_345, 448_000, 566_000) : outlook(480_000, 430_000, 478_000, 550_000),
  })),
};
const ranges = costRanges(TWO, COMPARISON);

describe('the bars of a choice', () => {
  it('run from P10 to P90, with words of two significant figures of their spread', () => {
    expect(ranges).toEqual([
      {
        name: 'Repair the original, by hand',
        low: 382_345,
        middle: 448_000,
        high: 566_000,
        lowText: '$3,800',
        middleText: '$4,500',
        highText: '$5,700',
      },
      {
        name: 'Reproduction fender',
        low: 430_000,
        middle: 478_000,
        high: 550_000,
        lowText: '$4,300',
        middleText: '$4,800',
        highText: '$5,500',
      },
    ]);
  });

  it('are told in words to who can’t see them', () => {
    expect(rangesTitle(ranges)).toBe(
      'What each may come to. Repair the original, by hand: $3,800 to $5,700, middle $4,500. Reproduction fender: $4,300 to $5,500, middle $4,800.',
    );
  });

  it('lie on one scale from a round amount below them to one above, at a desk as on a phone', () => {
    for (const width of [WIDE, NARROW]) {
      const { config } = rangesChart(ranges, TWO.currency, width);
      expect(config.data.datasets[0]?.data).toEqual([
        [382_345, 566_000],
        [430_000, 550_000],
      ]);
      const { min = 0, max = 0 } = (config.options?.scales?.x ?? {}) as { min?: number; max?: number };
      expect([min % 50_000, max % 50_000]).toEqual([0, 0]);
      expect(min).toBeLessThanOrEqual(382_345);
      expect(min).toBeGreaterThan(382_345 - 100_001);
      expect(max).toBeGreaterThanOrEqual(566_000);
      expect(max).toBeLessThan(566_000 + 100_001);
    }
  });

  it('carry their figures and names themselves', () => {
    const words = (width: number) =>
      [
        ...chartSvg(rangesChart(ranges, TWO.currency, width), 'title', 'id').matchAll(/<text[^>]*>([^<]*)/g),
      ].map(([, text]) => text);
    expect(words(WIDE)).toEqual(
      expect.arrayContaining([
        '$3,800',
        '$5,700',
        'Repair the original, by hand: middle $4,500',
        'Reproduction fender: middle $4,800',
      ]),
    );
    const long = ranges.map((range) => ({
      ...range,
      name: 'Repair the original by hand, with every old rivet put back where it was',
    }));
    const cut = [
      ...chartSvg(rangesChart(long, TWO.currency, NARROW), 'title', 'id').matchAll(/>([^<]* …)</g),
    ];
    expect(cut).toHaveLength(2);
  });

  it('keep every word within the drawing, where a canvas would cut it', () => {
    for (const width of [WIDE, NARROW]) {
      const chart = rangesChart(ranges, TWO.currency, width);
      const svg = chartSvg(chart, 'title', 'id');
      for (const [, foot, size] of svg.matchAll(/<text x="[^"]*" y="([^"]*)" font-size="([^"]*)"/g)) {
        // Letters of the face rise three quarters of their size above their line.
        expect(Number(foot) - 0.75 * Number(size)).toBeGreaterThanOrEqual(0);
        expect(Number(foot)).toBeLessThanOrEqual(chart.height);
      }
    }
  });

  it('can be drawn when nothing costs anything', () => {
    const free = sheetWith(TWO, { rate: 0, metal: 0, panel: 0 });
    const bars = costRanges(free, comparisonOf(free));
    expect(bars.map(({ low, high }) => [low, high])).toEqual([
      [0, 0],
      [0, 0],
    ]);
    expect(chartSvg(rangesChart(bars, free.currency, WIDE), 'title', 'id')).toContain('$0.00');
  });
});

import { describe, expect, it } from 'vitest';
import { chartSvg } from '../../src/drawing/charts.ts';
import { barsOf } from '../../src/views/charts.ts';
import { NARROW, WIDE } from '../../src/views/live/pen.ts';
import { runningOf } from '../../src/views/running-chart.ts';
import { viewed } from '../views/records.ts';

const BARS = [
  { label: 'Left rear fender', value: 400, text: '$4.00' },
  { label: 'Top & irons', value: 100, text: '$1.00' },
  { label: 'Returned', value: -50, text: '−$0.50' },
];
const { record, rollup } = viewed();

/** Words of a drawing with where they stand. */
const words = (svg: string) =>
  [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*>([^<]*)<\/text>/g)].map(([, x, y, text]) => ({
    x: Number(x),
    y: Number(y),
    text,
  }));

describe.each([WIDE, NARROW])('a chart of bars, %i units wide', (width) => {
  const svg = chartSvg(barsOf(BARS, width), 'Money by part', 'by-part');

  it('says each name and figure once, as text', () => {
    const said = words(svg).map(({ text }) => text);
    expect(said.toSorted()).toEqual(
      ['Left rear fender', '$4.00', 'Top &amp; irons', '$1.00', 'Returned', '−$0.50'].toSorted(),
    );
  });

  it('has all its words inside', () => {
    for (const { x, y } of words(svg)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeGreaterThan(0);
    }
  });

  it('writes every word in one size', () => {
    expect(new Set(svg.match(/font-size="[^"]*"/g))).toEqual(new Set(['font-size="13"']));
  });

  it('is named by its title', () => {
    expect(svg).toContain('role="img" aria-labelledby="by-part"><title id="by-part">Money by part</title>');
  });

  it('is the same at every drawing', () => {
    expect(chartSvg(barsOf(BARS, width), 'Money by part', 'by-part')).toBe(svg);
  });
});

describe.each([WIDE, NARROW])('the running total, %i units wide', (width) => {
  it('names both lines at their ends, the higher above and the lower below', () => {
    const said = words(chartSvg(runningOf(rollup, record.currency, width), 'Running', 'run'));
    const agreed = said.find(({ text }) => text === 'agreed $5,700');
    const spent = said.find(({ text }) => text?.startsWith('spent $'));
    expect(agreed?.y).toBeLessThan(spent?.y ?? 0);
    expect(said.map(({ text }) => text)).toEqual(expect.arrayContaining(['Mar', '2025', 'Apr']));
  });

  it('puts the spent line’s name above once it passes what was agreed', () => {
    const over = viewed({
      'log/2025-04-07.md': '---\nhours:\n  - { part: cowl, work: metal, time: 100 }\n---\n',
    });
    const said = words(chartSvg(runningOf(over.rollup, over.record.currency, width), 'Running', 'run'));
    const agreed = said.find(({ text }) => text === 'agreed $5,700');
    expect(said.find(({ text }) => text?.startsWith('spent $'))?.y).toBeLessThan(agreed?.y ?? 0);
  });
});

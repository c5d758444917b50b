import { describe, expect, it } from 'vitest';
import { chartSvg } from '../../src/drawing/charts.ts';
import { forecastOf } from '../../src/rollup/ahead/forecast.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { finishChart, finishCurve } from '../../src/views/finish-chart.ts';
import { endingOf } from '../../src/views/forecast-figures.ts';
import { NARROW, WIDE } from '../../src/views/live/pen.ts';
import { runningOf } from '../../src/views/running-chart.ts';
import { recordOf } from '../rollup/records.ts';

/** A car in hand for so many months, with much or little agreed. */
function ahead(months: number, agreed: number) {
  const logs = Array.from({ length: months }, (_, i) => [
    `log/2025-${String(i + 3).padStart(2, '0')}-04.md`,
    '---\nhours: [{ part: cowl, line: strip, work: metal, time: 9h }]\n---\n',
  ]);
  const record = recordOf({
    ...Object.fromEntries(logs),
    'car.md': `---\nname: Aldermere Fourteen\nbuilt: "1934"\nopened: 2025-02-03\nunits: inch\ncurrency: USD\nagreed: [{ on: 2025-02-03, amount: ${agreed} }]\n---\n`,
    'parts/cowl.md':
      '---\nname: Cowl\ngroup: Body panels\nplanned: [{ line: strip, do: Strip it, work: metal, hours: [90, 120, 210] }]\n---\n',
  });
  const rollup = rollUp(record);
  return { record, rollup, forecast: forecastOf(record, rollup, { draws: 4_000 }) };
}

/** A word with the box that it takes: a letter of the chart's size is 8 units wide at the most in the mean. */
function boxes(svg: string) {
  return [
    ...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*?(?:text-anchor="(\w+)")?>([^<]*)<\/text>/g),
  ].map(([, x, y, anchor, text = '']) => {
    const width = text.length * 7;
    const left = Number(x) - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0);
    return { text, left, right: left + width, y: Number(y) };
  });
}
const NAMED = /^(agreed|spent|likely|5 in|8 in)/;

describe.each([WIDE, NARROW])('the figures of the forecast, %i units wide', (width) => {
  it.each([
    [1, 12_000],
    [2, 9_000],
    [9, 15_000],
    [9, 9_000],
    [9, 90_000],
  ])(
    'with %i months and %i agreed, name each thing once, inside and clear of each other',
    (months, agreed) => {
      const { record, rollup, forecast } = ahead(months, agreed);
      const told = finishCurve(forecast);
      if (!told) throw new Error('the finish is uncertain');
      const curve = finishChart(told, record.currency, width);
      const run = runningOf(rollup, record.currency, width, endingOf(forecast, record));
      for (const [chart, names] of [
        [curve, 3],
        [run, 3],
      ] as const) {
        const named = boxes(chartSvg(chart, 'Forecast', 'forecast')).filter(({ text }) =>
          NAMED.test(text.replace('← ', '')),
        );
        expect(named.map(({ text }) => text)).toHaveLength(names);
        for (const { text, left, right, y } of named) {
          expect([text, left >= -1 && right <= width + 1 && y > 8 && y < chart.height]).toEqual([text, true]);
        }
        for (const a of named) {
          for (const b of named) {
            const apart = a === b || a.right < b.left || b.right < a.left || Math.abs(a.y - b.y) >= 12;
            expect([a.text, b.text, apart]).toEqual([a.text, b.text, true]);
          }
        }
      }
    },
  );
});

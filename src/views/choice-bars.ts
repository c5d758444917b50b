// The bars of a choice sheet as a picture, which is drawn once for what they show.
import type { CarRecord } from '../record/record.ts';
import { drawnOnce } from '../rollup/ahead/drawn-before.ts';
import type { ChoiceSheet } from './choice-sheet.ts';
import { rangesChart } from './live/cost-ranges.ts';
import type { Chart } from './live/pen.ts';

/** The picture that `draw` makes of the bars, `width` units wide; `id` is its own on the page. */
export function choiceBars(
  { ranges, sheet, title }: ChoiceSheet,
  record: CarRecord,
  { width, id }: { width: number; id: string },
  draw: (chart: Chart, title: string, id: string) => string,
): string {
  const { currency } = sheet;
  return drawnOnce(record, 'bars', [ranges, currency, width, title, id], () =>
    draw(rangesChart(ranges, currency, width), title, id),
  );
}

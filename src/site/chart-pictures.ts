// The two pictures of a chart for a page. What draws them is loaded only where one wasn't drawn before.
import { type ChartTold, chartPicture } from '../views/chart-told.ts';
import { book } from './record.ts';

/** SVG markup of the chart for a desk and for a phone. */
export async function chartPictures(told: ChartTold): Promise<{ wide: string; narrow: string }> {
  const { record } = await book();
  const drawing = async () => (await import('../drawing/charts.ts')).chartSvg;
  return {
    wide: await chartPicture(told, 'wide', record, drawing),
    narrow: await chartPicture(told, 'narrow', record, drawing),
  };
}

// What a choice's page says that follows from its figures, and what the sums say that it should.
import type { Page } from 'playwright-core';
import { compareOptions } from '../../src/estimate/uncertain/choice/compare.ts';
import { costRanges, rangesTitle } from '../../src/views/live/cost-ranges.ts';
import { movedSheet } from '../../src/views/live/moved.ts';
import { plain } from '../../src/views/live/said.ts';
import type { Sheet } from '../../src/views/live/sheet.ts';
import { sheetWords } from '../../src/views/live/sheet-words.ts';
import { turnRows } from '../../src/views/live/turning-words.ts';

/** All that follows from the figures, as the page says it. */
export const said = (page: Page) =>
  page.evaluate(() => {
    const texts = (places: string) =>
      [...document.querySelectorAll(places)].map(({ textContent }) => textContent?.trim() ?? '');
    return {
      figures: Object.fromEntries(
        [...document.querySelectorAll<HTMLElement>('[data-said]')].map(({ dataset, textContent }) => [
          dataset.said,
          textContent,
        ]),
      ),
      sentences: texts('#said p:not(.with)'),
      turns: texts('#turns tbody td:last-child'),
      middles: texts('#ranges-table tbody td:nth-child(3)'),
    };
  });

/** The same, worked out here from the sheet that the page carries. */
export async function expected(page: Page, moves: Readonly<Record<string, number>>) {
  const carried = JSON.parse((await page.locator('#sheet').textContent()) ?? '') as Sheet;
  const sheet = movedSheet(carried, new Map(Object.entries(moves)));
  const compared = compareOptions(sheet.sums, { seed: sheet.seed });
  if (!compared.sound) throw new Error(JSON.stringify(compared.troubles));
  const { options, sentences } = sheetWords(sheet, compared.comparison);
  const ranges = costRanges(sheet, compared.comparison);
  return {
    title: rangesTitle(ranges),
    said: {
      figures: Object.fromEntries(
        options.flatMap(({ id, cost, span, hours, cheapest }) => [
          [`${id}.cost`, cost],
          [`${id}.span`, span],
          [`${id}.hours`, hours],
          [`${id}.cheapest`, cheapest],
        ]),
      ),
      sentences: sentences.map(({ head, text }) => `${head} ${plain(text)}`),
      turns: turnRows(sheet, compared.comparison).map(({ turns }) => turns),
      middles: ranges.map(({ middleText }) => middleText),
    },
  };
}

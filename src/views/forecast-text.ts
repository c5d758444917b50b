// The forecast as `npm run forecast` prints it: what the page says, in the order of the page.
import type { ForecastPage } from './forecast.ts';
import { plain, type Said } from './live/said.ts';
import { plainTable, WIDTH, wrapped } from './plain-text.ts';

export function forecastText(told: ForecastPage, car: string): string {
  const { percents, against, missing, widest, left, waits, unplanned, experience, earned, fine } = told;
  const sections = [
    heading(`${car}: forecast to ${told.asOf}`, '='),
    said(told.lead),
    plainTable(percents.money),
    ...against.map(said),
    plainTable(percents.hours),
    ...(missing.length > 0 ? [heading('What the forecast misses'), ...missing.map(words)] : []),
    ...(widest.rows.length > 0 ? [heading('What makes the finish uncertain'), plainTable(widest)] : []),
    heading('What is left, line by line'),
    ...(left.rows.length > 0 ? [plainTable(left), plainTable(waits)] : [words(told.noneLeft)]),
    heading('Work that was never planned'),
    said(unplanned.text),
    ...(unplanned.lines.length > 0 ? [plainTable(unplanned.table)] : []),
    heading('What finished lines teach'),
    ...experience.map(words),
    ...(earned.length > 0 ? [said(earned)] : []),
    heading('How it is worked out'),
    ...fine.map(words),
  ];
  return `${sections.join('\n\n')}\n`;
}

const words = (text: string): string => wrapped(text, WIDTH).join('\n');
const said = (text: Said): string => words(plain(text));
const heading = (text: string, line = '-'): string => `${text}\n${line.repeat(text.length)}`;

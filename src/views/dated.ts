// A day with its year in running words and tables: a record lasts longer than a year.
import { type Day, shortDayText } from '../figures/days.ts';

/** `April 16, 2025`. */
export function datedText(day: Day): string {
  return `${shortDayText(day)}, ${day.slice(0, 4)}`;
}

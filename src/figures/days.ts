// Days are written `2025-04-16` and stay text: a day has no time and no zone. Calendar sums count days from
// a fixed day, so no clock and no time zone comes into it.
import { type Reading, read, unread } from './reading.ts';

/** A day of the calendar, `YYYY-MM-DD`. */
export type Day = string;

/** Reads `2025-04-16`; a day that the calendar doesn't have is refused. */
export function readDay(text: string): Reading<Day> {
  const bare = text.trim();
  return isDay(bare) ? read(bare) : unread('a date such as `2025-04-16`');
}

export function isDay(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && dayAt(numberOf(text)) === text;
}

/** Whole days from one day to another; negative when the second is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return numberOf(to) - numberOf(from);
}

export function addDays(day: Day, count: number): Day {
  return dayAt(numberOf(day) + count);
}

/** `2025-04` of `2025-04-16`. */
export function monthOf(day: Day): string {
  return day.slice(0, 7);
}

/** `2025` of `2025-04-16`. */
export function yearOf(day: Day): string {
  return day.slice(0, 4);
}

/** `Wednesday, April 16, 2025`. */
export function dayText(day: Day): string {
  return `${weekday(day)}, ${shortDayText(day)}, ${day.slice(0, 4)}`;
}

/** `April 16`. */
export function shortDayText(day: Day): string {
  return `${MONTHS[Number(day.slice(5, 7)) - 1] ?? ''} ${Number(day.slice(8, 10))}`;
}

/** `April 2025` of `2025-04` or of any day in it. */
export function monthText(month: string): string {
  return `${MONTHS[Number(month.slice(5, 7)) - 1] ?? ''} ${month.slice(0, 4)}`;
}

export function weekday(day: Day): string {
  return WEEKDAYS[(((numberOf(day) + 4) % 7) + 7) % 7] ?? '';
}

function numberOf(day: Day): number {
  return Math.round(
    Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / 86_400_000,
  );
}

function dayAt(count: number): Day {
  const at = new Date(count * 86_400_000);
  return Number.isNaN(at.getTime()) ? '' : at.toISOString().slice(0, 10);
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
